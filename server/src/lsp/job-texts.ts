import { LARGEST_TEXT } from '../host/host.ts'
import { type TextRead, textOf } from '../host/read-text.ts'
import { below } from './addresses.ts'
import { type AskClient, fromClient } from './client-files.ts'
import type { Documents } from './documents.ts'
import type { Surroundings } from './surroundings.ts'

/** Where a job's texts come from: what is open wins, then the host's own files, then the client. */
export interface Sources {
  readonly documents: Documents
  readonly surroundings: Surroundings
  /** Null where the client reads no files. */
  readonly askClient: AskClient | null
  /** Files that are never counted, by canonical address: the program fell twice while at each. */
  readonly onlyRead: ReadonlySet<string>
}

/** More files than this are no job but a circle of generated ones. */
const MOST_FILES = 1000
const NEVER_COUNTED = 'This file is not counted: the program stopped twice while working on it.'
const TOO_MANY = `This job includes more than ${MOST_FILES} files, and this one was not read.`

type Read = { readonly text: string } | { readonly absent: string }

/** The texts of one job by their paths below its folder; files that are not open are read once. */
export class JobTexts {
  readonly #folder: string
  readonly #sources: Sources
  readonly #read = new Map<string, Read>()
  /** Paths that the job has asked for. */
  #paths: Set<string>

  constructor(folder: string, root: string, sources: Sources) {
    this.#folder = folder
    this.#sources = sources
    this.#paths = new Set([root])
  }

  /** What is known now, as `compile` takes it. */
  now(): {
    readonly texts: ReadonlyMap<string, string>
    readonly absent: ReadonlyMap<string, string>
  } {
    const texts = new Map<string, string>()
    const absent = new Map<string, string>()
    for (const path of this.#paths) {
      const read = this.#known(path)
      if (read === undefined) continue
      if ('text' in read) texts.set(path, read.text)
      else absent.set(path, read.absent)
    }
    return { texts, absent }
  }

  #known(path: string): Read | undefined {
    const uri = below(this.#folder, path)
    if (this.#sources.onlyRead.has(uri)) return { absent: NEVER_COUNTED }
    const open = this.#sources.documents.get(uri)
    return open === undefined ? this.#read.get(path) : { text: open.getText() }
  }

  has(path: string): boolean {
    return this.#paths.has(path)
  }

  /** Reads files that the job names and that are neither open nor known. */
  async fetch(paths: readonly string[]): Promise<void> {
    for (const path of paths) this.#paths.add(path)
    const closed = paths.filter((path) => !this.#isOpen(path))
    await Promise.all(closed.map(async (path) => this.#read.set(path, await this.#fetchOne(path))))
  }

  /** Files that may have changed on the disk are read again when they are asked for. */
  forget(paths: Iterable<string>): void {
    for (const path of paths) this.#read.delete(path)
  }

  /** Files that the job no longer names take no room. */
  keepOnly(paths: readonly string[]): void {
    this.#paths = new Set(paths)
    this.forget([...this.#read.keys()].filter((path) => !this.#paths.has(path)))
  }

  #isOpen(path: string): boolean {
    return this.#sources.documents.get(below(this.#folder, path)) !== undefined
  }

  async #fetchOne(path: string): Promise<Read> {
    if (this.#paths.size > MOST_FILES) return { absent: TOO_MANY }
    const { surroundings, askClient } = this.#sources
    const reading = surroundings.readBelow(this.#folder, path, LARGEST_TEXT)
    if (reading !== null) return said(textOf(path, await reading))
    if (askClient === null) return { absent: `"${path}" cannot be read from here.` }
    return said(await fromClient(path, below(this.#folder, path), askClient))
  }
}

function said(read: TextRead): Read {
  return read.kind === 'text' ? { text: read.text } : { absent: read.reason }
}
