import { LARGEST_TEXT } from '../host/host.ts'
import { textOf } from '../host/read-text.ts'
import { resolveInclude } from '../job/include-path.ts'
import { isRoot } from '../job/includes.ts'
import { parse } from '../language/parse.ts'
import { below, canonical, folderOf, nameOf } from './addresses.ts'
import { fromClient } from './client-files.ts'
import type { Sources } from './job-texts.ts'

/** More files than this are not looked through for the jobs that include an open one. */
export const MOST_FILES = 4000
/** So many are read at a time. */
const AT_ONCE = 16

/** What the others need to know of a file that is not looked at: nothing else of it is kept. */
interface Outline {
  readonly isRead: boolean
  readonly isRoot: boolean
  /** The paths as typed. */
  readonly includes: readonly string[]
}

const UNREAD: Outline = { isRead: false, isRoot: false, includes: [] }

/** The `.floor` files of the folders that are open in the editor, and which of them are whose parts. */
export class Workspace {
  readonly #sources: Sources
  readonly #find: () => Promise<readonly string[]>
  #listed: Promise<Set<string>> | null = null
  readonly #outlines = new Map<
    string,
    { readonly text: string | null; readonly outline: Outline }
  >()

  /** `find` gives the addresses of the files, once. */
  constructor(sources: Sources, find: () => Promise<readonly string[]>) {
    this.#sources = sources
    this.#find = find
  }

  /** Every file there is, open ones first. */
  async files(): Promise<readonly string[]> {
    this.#listed ??= this.#find().then((uris) => new Set(uris.slice(0, MOST_FILES).map(canonical)))
    return [...new Set([...this.#sources.documents.uris, ...(await this.#listed)])]
  }

  /** The jobs that a file is part of: itself if it has a `job` line, else those that include it. */
  async rootsOf(uri: string): Promise<readonly string[]> {
    if ((await this.#outline(uri)).isRoot) return [uri]
    const above = (await this.files()).filter((one) => uri.startsWith(folderOf(one)) && one !== uri)
    const roots = await this.#pick(above, async (one) => (await this.#outline(one)).isRoot)
    return await this.#pick(roots, async (root) => (await this.filesOf(root)).has(uri))
  }

  /** Every job of the folders. */
  async roots(): Promise<readonly string[]> {
    return await this.#pick(await this.files(), async (uri) => (await this.#outline(uri)).isRoot)
  }

  /** Files that may be jobs, and that cannot be read. */
  async unread(): Promise<readonly string[]> {
    return await this.#pick(await this.files(), async (uri) => !(await this.#outline(uri)).isRead)
  }

  /** A root and all that it includes; a circle is gone round once. */
  async filesOf(root: string): Promise<ReadonlySet<string>> {
    const folder = folderOf(root)
    const paths = new Set([nameOf(root)])
    for (const from of paths) {
      const { includes } = await this.#outline(below(folder, from))
      for (const typed of includes) {
        const found = resolveInclude(typed, from, nameOf(root))
        if (found.kind === 'path') paths.add(found.path)
      }
    }
    return new Set([...paths].map((path) => below(folder, path)))
  }

  /** The files below a folder that are parts of jobs, not jobs themselves. */
  async parts(folder: string): Promise<readonly string[]> {
    const below = (await this.files()).filter((uri) => uri.startsWith(folder))
    return (await this.#pick(below, async (uri) => !(await this.#outline(uri)).isRoot)).toSorted()
  }

  /** Folders came or went: what files there are is asked anew when it is next needed. */
  foldersChanged(): void {
    this.#listed = null
    this.#outlines.clear()
  }

  /** Files came, went or changed on the disk. */
  changed(here: readonly string[], gone: readonly string[]): void {
    for (const uri of [...here, ...gone]) this.#outlines.delete(uri)
    this.#listed = this.#listed?.then((listed) => relisted(listed, here, gone)) ?? null
  }

  async #pick(
    uris: readonly string[],
    isWanted: (uri: string) => Promise<boolean>,
  ): Promise<readonly string[]> {
    const wanted: string[] = []
    for (let i = 0; i < uris.length; i += AT_ONCE) {
      const some = uris.slice(i, i + AT_ONCE)
      const answers = await Promise.all(some.map(isWanted))
      wanted.push(...some.filter((_, k) => answers[k]))
    }
    return wanted
  }

  /** Read from the editor's text where there is one, and again whenever that has changed. */
  async #outline(uri: string): Promise<Outline> {
    const open = this.#sources.documents.get(uri)?.getText() ?? null
    const known = this.#outlines.get(uri)
    if (known !== undefined && known.text === open) return known.outline
    const text = open ?? (await this.#read(uri))
    const outline = text === null ? UNREAD : outlineOf(text)
    this.#outlines.set(uri, { text: open, outline })
    return outline
  }

  async #read(uri: string): Promise<string | null> {
    const { surroundings, askClient } = this.#sources
    const name = nameOf(uri)
    const reading = surroundings.readBelow(folderOf(uri), name, LARGEST_TEXT)
    if (reading === null && askClient === null) return null
    const read =
      reading === null ? await fromClient(name, uri, askClient!) : textOf(name, await reading)
    return read.kind === 'text' ? read.text : null
  }
}

function relisted(
  listed: Set<string>,
  here: readonly string[],
  gone: readonly string[],
): Set<string> {
  for (const uri of gone) listed.delete(uri)
  for (const uri of here) if (uri.endsWith('.floor') && listed.size < MOST_FILES) listed.add(uri)
  return listed
}

/** The lines in column one that say what a file is: the others need not be read for that. */
const TELLING = /^\ufeff?(?:job|include)\b[^\r\n]*/gim

function outlineOf(text: string): Outline {
  const tree = parse('', (text.match(TELLING) ?? []).join('\n'))
  const includes = tree.blocks.filter(({ word, broken }) => word === 'include' && !broken)
  return { isRead: true, isRoot: isRoot(tree), includes: includes.map((block) => block.text) }
}
