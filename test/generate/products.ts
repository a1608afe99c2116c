import { type Draw, inches, weighted } from './draw.ts'
import { named } from './names.ts'
import { type Hand, written } from './notation.ts'

/** A product as text, and what the floors that take it have to know. */
export interface Product {
  readonly name: string
  readonly text: string
  /** The face of its shortest plank, in square steps. */
  readonly least: number
}

/** Faces as they are sold, in inches: width and one length, or the lengths in a box. */
const FACES: readonly (readonly [number, readonly number[]])[] = [
  [7, [48]],
  [9, [60]],
  [5.375, [47.625]],
  [6.75, [47.875]],
  [5, [24, 36, 48]],
  [4, [12, 24, 36, 48]],
  [12, [24]],
  [2.25, [12, 18, 30, 42, 60]],
]

/** What is no plank that anybody sells, and yet is read as one. */
const NASTY_FACES: readonly (readonly [number, readonly number[]])[] = [
  [7, [240]],
  [24, [24]],
  [36, [36]],
  [1, [8]],
  [3, [3.5]],
  [6, [6, 240]],
  [8, [20, 20.5, 21]],
]

export function productOf(name: string, hand: Hand, draw: Draw): Product {
  const { dice, nasty, grid } = draw
  const [wide, lengths] = nasty && dice.chance(30) ? dice.pick(NASTY_FACES) : dice.pick(FACES)
  const width = Math.round(wide * grid.inch)
  const planks = lengths.map((length) => Math.round(length * grid.inch))
  draw.has(`product: ${planks.length === 1 ? 'one length' : 'several lengths'}`)
  if (planks[0]! > 20 * grid.foot - grid.inch) draw.has('product: longer than most rooms')
  // One form throughout: a face that is as wide as long must not come out longer one way by rounding.
  const own = { ...hand, forms: [dice.pick(hand.forms)] }
  const say = (steps: number) => written(steps, own, draw)
  const lines = [
    ['plank', face(width, planks, say, draw)],
    ['box', box(width, planks, say, draw)],
    ['pad', dice.pick(['', 'attached', 'separate', 'none'])],
    ['joints', joints(width, planks, say, draw)],
    ['gap', say(gapOf(draw))],
    ['run', run(say, draw)],
    ['laid', laid(draw)],
    ['cut', cut(say, draw)],
    [
      'spoil',
      dice.pick(['', '', '2 planks', '5 planks', '3%', '1 planks', '0%', '4 planks, 2.5%']),
    ],
    ['spares', dice.pick(['', '', '', '2 planks', '1 box', '2 boxes', '3 planks, 1 box'])],
    ['note', dice.pick(['', '', 'lot 7, keep the labels'])],
    ['tag', dice.pick(['', '', 'shelf 12'])],
  ]
  const body = lines.filter(([, text]) => text !== '')
  for (const [word] of body) draw.has(`product line: ${word}`)
  const text = body.map(([word, said]) => `  ${word!.padEnd(11)} ${said}\n`).join('')
  const least = width * Math.min(...planks)
  return { name, text: `product ${named(name, draw)}\n${text}`, least }
}

type Say = (steps: number) => string

function face(width: number, planks: readonly number[], say: Say, { dice, grid }: Draw): string {
  const thick = dice.chance(60) ? [`${say(Math.round(grid.inch / 4))} thick`] : []
  if (planks.length > 1) return [`${say(width)} wide`, ...thick].join(', ')
  const size = dice.chance(80)
    ? [`${say(width)} x ${say(planks[0]!)}`]
    : [`${say(width)} wide`, `${say(planks[0]!)} long`]
  return [...size, ...thick].join(', ')
}

function box(width: number, planks: readonly number[], say: Say, draw: Draw): string {
  const { dice, grid } = draw
  if (planks.length > 1) {
    return planks.map((length) => `${dice.between(1, 6)} of ${say(length)}`).join(', ')
  }
  const count = dice.between(1, 14)
  const metres = (width * planks[0]! * grid.nm * grid.nm * count) / 1e18
  // What is printed on a box has two places; under a square metre that is too rough to count by.
  if (metres < 1 || dice.chance(75)) return `${count} planks`
  draw.has('box: by its area')
  const [area, unit] = dice.chance(50) ? [metres, 'sq m'] : [metres / 0.09290304, 'sq ft']
  const printed = `${Math.round(area * 100) / 100} ${unit}`
  return dice.chance(30) ? `${count} planks, ${printed}` : printed
}

function joints(width: number, planks: readonly number[], say: Say, draw: Draw): string {
  const { dice, grid } = draw
  const shortest = Math.min(...planks)
  const share = (least: number, most: number) =>
    Math.max(1, Math.floor((shortest * dice.between(least, most)) / 100))
  if (draw.nasty && dice.chance(30)) {
    draw.has('product: joints that no floor can keep')
    return `${say(share(40, 60))} stagger, ${say(share(40, 90))} shortest end`
  }
  const stagger = Math.min(inches(draw, 6, 12), share(15, 25))
  const end = Math.min(inches(draw, 6, 12), share(15, 25))
  const rip = Math.min(dice.pick([1.5, 2, 2, 3]) * grid.inch, Math.floor(width / 3))
  // The 2" that are taken where nobody says are no rip of a narrow strip, but nearly all of it.
  const isRipSaid = dice.chance(75) || width < 4 * grid.inch
  return [
    `${say(stagger)} stagger`,
    `${say(end)} shortest end`,
    ...(isRipSaid ? [`${say(Math.round(rip))} narrowest rip`] : []),
  ].join(', ')
}

function gapOf(draw: Draw): number {
  const { dice, grid, nasty, has } = draw
  const gap = weighted(dice, [
    [40, 0.25],
    [20, 0.375],
    [15, 0.5],
    [nasty ? 25 : 2, 0],
  ])
  if (gap === 0) has('product: no gap')
  return Math.round(gap * grid.inch)
}

function run(say: Say, draw: Draw): string {
  const { dice, grid } = draw
  const limits = [
    ...(dice.chance(50) ? [`${say(dice.pick([15, 30, 45, 60]) * grid.foot)} long`] : []),
    ...(dice.chance(50) ? [`${say(dice.pick([12, 20, 40]) * grid.foot)} wide`] : []),
  ]
  const doorways = weighted(dice, [
    [50, ''],
    [20, 'through doorways'],
    [10, 'breaks at doorways'],
    [20, `breaks at doorways under ${say(inches(draw, 28, 48))}`],
  ])
  if (limits.length > 0) draw.has('run: limited')
  if (doorways !== '') draw.has(`run: ${doorways.replace(/ under .*/, ' under a width')}`)
  return [...limits, ...(doorways === '' ? [] : [doorways])].join(', ')
}

function laid(draw: Draw): string {
  const way = draw.dice.pick(['', 'left to right', 'right to left', 'either way'])
  if (way !== '') draw.has(`laid: ${way}`)
  return way
}

function cut(say: Say, draw: Draw): string {
  const { dice, grid } = draw
  const kerf = () => say(Math.round((dice.between(0, 4) * grid.inch) / 16))
  const kerfs = dice.pick([
    [],
    [`${kerf()} kerf`],
    [`${kerf()} kerf along`, `${kerf()} kerf across`],
    [`${kerf()} kerf along`],
  ])
  const spare = dice.chance(25) ? [`${say(Math.round(grid.inch / 4))} to spare`] : []
  const way = dice.pick([[], ['saw'], ['score and snap'], ['guillotine'], ['knife']])
  return [...way, ...kerfs, ...spare].join(', ')
}
