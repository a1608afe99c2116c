import type { Cut, Shape, Swatch } from '../scene.ts'

/** A sample and what it stands for. */
export interface LegendRow {
  readonly of: Swatch['of']
  readonly text: string
}

const CUTS: readonly (readonly [Cut, string])[] = [
  ['whole', 'whole plank'],
  ['cut', 'cut to length, or to shape'],
  ['rip', 'ripped to width'],
  ['cut and rip', 'ripped, and cut to length'],
]

const THINGS = [
  ['working line', 'working line: snap this first'],
  ['transition', 'transition or other trim'],
  ['obstacle', 'fixed obstacle'],
  ['masonry', 'wall'],
  ['breach', 'a rule of the product is not met here'],
] as const

/** How to read a drawing: a row for everything in it that is not plain to see. */
export function legendOf(drawn: Iterable<Shape>): readonly LegendRow[] {
  const seen = new Set<string>()
  for (const shape of drawn) seen.add(shape.kind === 'piece' ? shape.cut : shape.kind)
  return [...CUTS, ...THINGS].flatMap(([of, text]) => (seen.has(of) ? [{ of, text }] : []))
}
