import type { Draw } from './draw.ts'
import { unitsLine } from './files.ts'
import { type Hand, written } from './notation.ts'

/** How one file is written, and what chance draws. */
export interface Pen {
  readonly hand: Hand
  readonly draw: Draw
}

/** The first file: the job, and what its lines say for all rooms. */
export function jobHead(seed: number, includes: readonly string[], { hand, draw }: Pen): string {
  const { dice, grid, thick, isThickSaid } = draw
  const say = (steps: number) => written(steps, hand, draw)
  const title = draw.nasty
    ? dice.pick([`Floor ${seed}`, '__proto__ "x" <b>', 'بيت, 2nd'])
    : `Floor ${seed}`
  const lines = [
    ...(dice.chance(90) ? ['floorscribe 1'] : []),
    `job ${title}`,
    ...JOB_LINES.filter(() => dice.chance(10)),
    ...unitsLine(hand, draw),
    ...tapeLine(say, draw),
    ...(isThickSaid ? [`walls ${say(thick)} thick`] : []),
    ...baseLine(say, draw),
    ...(dice.chance(20) ? [`jambs ${say(Math.round(grid.inch * dice.pick(UNDER)))} under`] : []),
    ...(dice.chance(15) ? [`allowance ${dice.pick(['0%', '7.5%', '12 %'])}`] : []),
    ...(dice.chance(20) ? [`pile ${dice.pick(PILES)}`] : []),
    ...includes.map((path) => `include ${path}`),
    ...(dice.chance(8)
      ? ['', 'prices spring list', '  price       river larch, 4.19 per sq ft']
      : []),
  ]
  for (const line of lines) {
    if (line !== '') draw.has(`job line: ${line.trimStart().split(' ')[0]}`)
  }
  return `${lines.join('\n')}\n`
}

type Say = (steps: number) => string

const UNDER = [0, 0.25, 0.5]
const PILES = ['0 pieces', '3 pieces, 2 courses', '20 pieces, 40 courses', '1 courses']

const JOB_LINES = [
  '  site        4 Alder Row, flat #2',
  '  date        2027-04-12',
  '  revision    2, closet added',
  '  note        the key is under the pot',
  '  tag         crew blue',
  '  accept      shortest end, because "it is a closet"',
  '  hold        customer’s choice, by the owner, cleared 2027-05-02',
]

function baseLine(say: Say, { base: { thick, fate } }: Draw): string[] {
  if (fate === null) return []
  return [thick > 0 ? `base ${say(thick)} thick, ${fate}` : `base ${fate}`]
}

function tapeLine(say: Say, { dice, grid, base }: Draw): string[] {
  const worth = dice.pick([
    [`${say(2)} + ${say(1)} per ${say(10 * grid.foot)}`],
    [say(Math.round(grid.inch / 8))],
    [],
  ])
  const about = dice.chance(30) ? [`about ${say(Math.round(grid.inch / 2))}`] : []
  const touching = base.touching === null ? [] : [`touching ${base.touching}`]
  const phrases = [...worth, ...about, ...touching]
  return phrases.length === 0 ? [] : [`tape ${phrases.join(', ')}`]
}

/** What stands at the head of an included file. */
export function partHead(includes: readonly string[], hand: Hand, draw: Draw): string {
  const lines = [
    ...(draw.dice.chance(50) ? ['floorscribe 1'] : []),
    ...unitsLine(hand, draw),
    ...includes.map((path) => `include ${path}`),
  ]
  return lines.length === 0 ? '' : `${lines.join('\n')}\n`
}
