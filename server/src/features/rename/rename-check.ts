import type { Message } from '../../facts/message.ts'
import { fileName } from '../../job/includes.ts'
import { keyOf } from '../../language/name.ts'
import { parse } from '../../language/parse.ts'
import type { Tree } from '../../language/tree.ts'
import { at } from '../place/at.ts'
import { lastBefore, lineAt } from '../place/line-at.ts'
import type { KnownJob } from './known-job.ts'
import type { Gathered } from './rename-places.ts'

interface Replacing {
  readonly address: string
  readonly start: number
  readonly end: number
  readonly text: string
}

/**
 * Why lines would not say the same once all edits were made; null where they would. Each block with an
 * edit is read as it would be, and the new name must stand as a name at each place, without a new error.
 */
export function readOtherwise({ jobs }: Gathered, edits: readonly Replacing[]): string | null {
  const byAddress = Map.groupBy(edits, ({ address }) => address)
  for (const { job } of jobs) {
    for (const tree of job.measured.trees) {
      const line = otherLine(tree, byAddress.get(job.addressOf(tree.file)) ?? [])
      if (line !== null) return inWords(tree, line, job)
    }
  }
  return null
}

function inWords({ file }: Tree, line: number, { measured }: KnownJob): string {
  return `With that name line ${line} of ${fileName(file, measured.root)} would read otherwise. Nothing was changed.`
}

/** The number of the first line of a file that would read otherwise. */
function otherLine(tree: Tree, edits: readonly Replacing[]): number | null {
  const blockOf = ({ start }: Replacing): number =>
    lastBefore(tree.blocks, start, ({ line }) => line.span.start)
  for (const [index, own] of Map.groupBy(edits, blockOf)) {
    const start = tree.blocks[index]?.line.span.start ?? 0
    const end = tree.blocks[index + 1]?.line.span.start ?? tree.text.length
    const part = tree.text.slice(start, end)
    const inPart = own.map((one) => ({ ...one, start: one.start - start, end: one.end - start }))
    const offset = otherPlace(part, inPart)
    if (offset !== null) return lineAt(tree, start + offset).number
  }
  return null
}

/** Where in a block, as it stands, an edit would be read as something else. */
function otherPlace(part: string, edits: readonly Replacing[]): number | null {
  const after = parse('', edited(part, edits))
  if (hasNewError(parse('', part), after)) return edits[0]!.start
  let moved = 0
  for (const { start, end, text } of edits) {
    const { name, entry } = at(after, start + moved + text.length)
    const wanted = keyOf(text.replace(/^, called /, '').replaceAll('"', ''))
    const priced = entry?.word === 'price' ? keyOf(entry.text.split(',', 1)[0]!) : undefined
    if ((name?.name.key ?? priced) !== wanted) return start
    moved += text.length - (end - start)
  }
  return null
}

function edited(part: string, edits: readonly Replacing[]): string {
  const texts: string[] = []
  let from = 0
  for (const { start, end, text } of edits) {
    texts.push(part.slice(from, start), text)
    from = end
  }
  return `${texts.join('')}${part.slice(from)}`
}

/** Read alone a block may say more than in its file, but the same before and after. */
function hasNewError(before: Tree, after: Tree): boolean {
  const errors = ({ messages }: Tree): readonly Message[] =>
    messages.filter(({ weight }) => weight === 'error')
  return errors(after).length > errors(before).length
}
