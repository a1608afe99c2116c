import { type Figures, figuresOf, inFigures } from './figures.ts'
import { rectangleJob } from './jobs.ts'
import type { Law } from './law.ts'
import {
  doubled,
  thicker,
  withMoreSpares,
  withMoreSpoil,
  withWiderGaps,
} from './transform/product.ts'
import { inEvery } from './transform/texts.ts'
import { everyQuantity } from './views.ts'

const INCH = 25_400_000

/** How numbers move with the product. */
export const PRODUCTS: readonly Law[] = [
  {
    name: 'more spares',
    change: 'up to twelve planks more promised to the customer',
    stays: 'boxes of each product: never fewer',
    compared: 'values',
    view: inFigures,
    holds: neverFewerBoxes,
    changed: (job, dice) => inEvery(job, (text) => withMoreSpares(text, dice.between(1, 12))),
  },
  {
    name: 'more spoil',
    change: 'up to twelve planks more expected to be spoiled',
    stays: 'boxes of each product: never fewer',
    compared: 'values',
    view: inFigures,
    holds: neverFewerBoxes,
    changed: (job, dice) => inEvery(job, (text) => withMoreSpoil(text, dice.between(1, 12))),
  },
  {
    name: 'wider gap',
    change: 'the gap of each product wider by up to half an inch',
    stays: 'the area of rooms and floors; what planks cover is never more',
    compared: 'values',
    view: inFigures,
    holds: neverMoreCovered,
    changed: (job, dice) =>
      inEvery(job, (text) => withWiderGaps(text, (dice.between(1, 8) * INCH) / 16)),
  },
  {
    name: 'thickness of planks',
    change: 'planks of each product 23 mm thick',
    stays: 'every quantity',
    compared: 'byte for byte',
    view: everyQuantity,
    changed: (job) => inEvery(job, thicker),
  },
  {
    name: 'twice as large',
    change: 'a rectangular room, its planks and all rules twice as large',
    // The looks of joints are judged by the half inch that an eye sees, so planks may differ by a few.
    stays: 'the least number of planks exactly; lengths twice, areas four times',
    compared: 'values',
    view: inFigures,
    holds: twiceAsLarge,
    jobs: rectangleJob,
    changed: (job) => inEvery(job, doubled),
  },
]

function neverFewerBoxes(before: string, after: string): string | null {
  const [was, is] = [figuresOf(before).counts, figuresOf(after).counts]
  return firstWrong(was, (key) => key.startsWith('boxes') && (is[key] ?? -1) < was[key]!, is)
}

function neverMoreCovered(before: string, after: string): string | null {
  const [was, is] = [figuresOf(before).measures, figuresOf(after).measures]
  return firstWrong(
    was,
    (key) =>
      (key.startsWith('covered') && (is[key] ?? 0) > was[key]!) ||
      (/^(room|floor) area/.test(key) && is[key] !== was[key]),
    is,
  )
}

function twiceAsLarge(before: string, after: string): string | null {
  const [was, is] = [figuresOf(before), figuresOf(after)]
  const grown = (key: string) => (/area/.test(key) ? 4 : 2)
  const isBoundMoved = (key: string) =>
    key.startsWith('least planks') && is.counts[key] !== was.counts[key]
  const isWrong = (key: string) =>
    !key.startsWith('waste') &&
    Math.abs(is.measures[key]! - grown(key) * was.measures[key]!) > 1e-9 * is.measures[key]!
  return (
    firstWrong(was.counts, isBoundMoved, is.counts) ??
    firstWrong(was.measures, isWrong, is.measures)
  )
}

type Numbers = Figures['counts']

function firstWrong(was: Numbers, isWrong: (key: string) => boolean, is: Numbers): string | null {
  const key = Object.keys(was).find(isWrong)
  return key === undefined ? null : `${key}: was ${was[key]}, is ${is[key]}`
}
