import type { Message } from '../facts/message.ts'
import { bind } from '../job/bind.ts'
import { fileName } from '../job/includes.ts'
import { keyOf } from '../language/name.ts'
import { parse } from '../language/parse.ts'
import type { Tree } from '../language/tree.ts'
import { at } from './at.ts'
import type { KnownJob } from './known-job.ts'
import type { Gathered } from './rename-places.ts'

interface Replacing {
  readonly address: string
  readonly start: number
  readonly end: number
  readonly text: string
}

/**
 * Why jobs would not say the same once all edits were made; null where they would. It reads and binds
 * them as they would be: the last word on whether a rename is sound.
 */
export function wouldSay({ jobs }: Gathered, edits: readonly Replacing[]): string | null {
  const byAddress = Map.groupBy(edits, ({ address }) => address)
  for (const { job } of jobs) {
    const why = newlySaid(job, byAddress)
    if (why !== null) return `${why} Nothing was changed.`
  }
  return null
}

function newlySaid(
  { measured, addressOf }: KnownJob,
  edits: ReadonlyMap<string, readonly Replacing[]>,
): string | null {
  const { trees, root } = measured
  const after: Tree[] = []
  for (const tree of trees) {
    const own = edits.get(addressOf(tree.file)) ?? []
    const renamed = own.length === 0 ? tree : parse(tree.file, edited(tree, own))
    const line = readOtherwise(renamed, own)
    if (line !== null) {
      return `With that name line ${line} of ${fileName(tree.file, root)} would read otherwise.`
    }
    after.push(renamed)
  }
  const said = firstNew(errorsOf(trees, root), errorsOf(after, root))
  return said === null ? null : `With that name the job would say: ${said.text}`
}

function firstNew(before: readonly Message[], after: readonly Message[]): Message | null {
  const known = Map.groupBy(before, ({ code }) => code)
  for (const [code, said] of Map.groupBy(after, (message) => message.code)) {
    if (said.length > (known.get(code)?.length ?? 0)) return said[0]!
  }
  return null
}

function errorsOf(trees: readonly Tree[], root: string): readonly Message[] {
  const said = [...trees.flatMap(({ messages }) => messages), ...bind(trees, root).messages]
  return said.filter(({ weight }) => weight === 'error')
}

function edited({ text: whole }: Tree, edits: readonly Replacing[]): string {
  const parts: string[] = []
  let from = 0
  for (const { start, end, text } of edits) {
    parts.push(whole.slice(from, start), text)
    from = end
  }
  return `${parts.join('')}${whole.slice(from)}`
}

/** The first line where the new name does not stand as a name; null where it does everywhere. */
function readOtherwise(tree: Tree, edits: readonly Replacing[]): number | null {
  let moved = 0
  for (const { start, end, text } of edits) {
    const { line, name, entry } = at(tree, start + moved + text.length)
    const wanted = keyOf(text.replace(/^, called /, '').replaceAll('"', ''))
    const priced = entry?.word === 'price' ? keyOf(entry.text.split(',', 1)[0]!) : undefined
    if ((name?.name.key ?? priced) !== wanted) return line.number
    moved += text.length - (end - start)
  }
  return null
}
