import type { Dice } from '../generate/dice.ts'

export type Files = ReadonlyMap<string, string>

/** What was in the files before each edit, for undoing. */
export interface Editing {
  readonly files: Files
  readonly before: readonly Files[]
}

/** One edit as people make them, to one file of a job. */
export function edited({ files, before }: Editing, dice: Dice): Editing {
  if (before.length > 0 && dice.chance(12)) {
    const back = Math.min(before.length, dice.pick([1, 1, 1, 2, 3, 5]))
    const at = before.length - back
    return { files: before[at]!, before: before.slice(0, at) }
  }
  const file = dice.pick([...files.keys()])
  const text = files.get(file)!
  const next = new Map(files).set(file, weighted(dice)(text, dice, files))
  return { files: next, before: [...before.slice(-20), files] }
}

type Edit = (text: string, dice: Dice, files: Files) => string

function weighted(dice: Dice): Edit {
  const at = dice.below(100)
  return EDITS.find(([most]) => at < most)![1]
}

/** In so many of a hundred, cumulated. */
const EDITS: readonly (readonly [number, Edit])[] = [
  [28, typed],
  [44, deleted],
  [62, digitChanged],
  [70, lineMoved],
  [76, lineTwice],
  [83, blockPasted],
  [90, blockDropped],
  [94, includeChanged],
  [98, wordTyped],
  [100, oddity],
]

const KEYS = [...'0123456789 \'"/?,.#-+abcdehilmnorstuw\n', '\n  ', '\t', '½', 'é', '\r\n']

function typed(text: string, dice: Dice): string {
  const at = dice.below(text.length + 1)
  const keys = Array.from({ length: dice.between(1, 3) }, () => dice.pick(KEYS)).join('')
  return put(text, at, at, keys)
}

function deleted(text: string, dice: Dice): string {
  const at = dice.below(text.length + 1)
  return put(text, at, at + dice.pick([1, 1, 1, 2, 5, 12]), '')
}

function digitChanged(text: string, dice: Dice): string {
  const digits = [...text.matchAll(/[0-9]/g)]
  if (digits.length === 0) return typed(text, dice)
  const at = dice.pick(digits).index
  return put(text, at, at + 1, String(dice.below(10)))
}

function linesOf(text: string): string[] {
  return text.split('\n')
}

function lineMoved(text: string, dice: Dice): string {
  const lines = linesOf(text)
  const [line = ''] = lines.splice(dice.below(lines.length), 1)
  lines.splice(dice.below(lines.length + 1), 0, line)
  return lines.join('\n')
}

function lineTwice(text: string, dice: Dice): string {
  const lines = linesOf(text)
  const line = dice.pick(lines)
  lines.splice(dice.below(lines.length + 1), 0, line)
  return lines.join('\n')
}

/** Where lines of column one stand, by index, and the end. */
function margins(lines: readonly string[]): readonly number[] {
  return [...lines.flatMap((line, i) => (/^[a-z]/.test(line) ? [i] : [])), lines.length]
}

function blockPasted(text: string, dice: Dice, files: Files): string {
  const from = linesOf(dice.pick([...files.values()]))
  const starts = margins(from)
  const first = dice.below(starts.length)
  const block = from.slice(starts[first], starts[first + 1])
  const lines = linesOf(text)
  lines.splice(dice.pick(margins(lines)), 0, ...block)
  return lines.join('\n')
}

function blockDropped(text: string, dice: Dice): string {
  const lines = linesOf(text)
  const starts = margins(lines)
  const first = dice.below(starts.length)
  lines.splice(starts[first]!, (starts[first + 1] ?? lines.length) - starts[first]!)
  return lines.join('\n')
}

function includeChanged(text: string, dice: Dice, files: Files): string {
  const include = `include ${dice.pick([...files.keys(), 'elsewhere.floor', '../out.floor'])}`
  const lines = linesOf(text)
  const there = lines.findIndex((line) => line.startsWith('include'))
  if (there >= 0 && dice.chance(60)) lines.splice(there, 1, ...(dice.chance(50) ? [include] : []))
  else lines.splice(dice.pick(margins(lines)), 0, include)
  return lines.join('\n')
}

const LINES = [
  '    door 30", 1\' 2" from left, to hall',
  '  north 12\' 4 1/2"',
  '  west ?',
  "  closet 4' 0\", 1' 0\" from left, 2' deep",
  '  note the stove comes out',
  '  accept closing error',
  '  hold a slab reading',
  '  column 6" by 6", 2\' from north, 3\' from west',
  'units mm, bare mm',
  'units feet-inches, bare inches',
  'tape 1/8", touching wall',
  'base 1/2" thick, kept',
  'walls 5" thick',
  'jambs 1/4" under',
  'allowance 12%',
  'pile 6 pieces, 3 courses',
  'room attic',
  'floor attic\n  rooms attic',
  'floorscribe 1',
  'job Another',
]

function wordTyped(text: string, dice: Dice): string {
  const lines = linesOf(text)
  lines.splice(dice.below(lines.length + 1), 0, dice.pick(LINES))
  return lines.join('\n')
}

const ODDITIES = ['<<<<<<< ours\n', '=======\n', '>>>>>>> theirs\n', '\ufeff', '\u200b', '\r', '']

function oddity(text: string, dice: Dice): string {
  const odd = dice.pick(ODDITIES)
  if (odd === '') return ''
  const lines = linesOf(text)
  if (odd.length < 3) return put(text, dice.below(text.length + 1), 0, odd)
  lines.splice(dice.below(lines.length + 1), 0, odd.trimEnd())
  return lines.join('\n')
}

function put(text: string, from: number, to: number, by: string): string {
  return text.slice(0, from) + by + text.slice(Math.max(from, to))
}
