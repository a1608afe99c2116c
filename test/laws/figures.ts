import type { Compiled } from '../../server/src/report/compiled.ts'

/** The quantities of a job as numbers by what they are of, what is counted apart from what is measured. */
export interface Figures {
  readonly counts: Readonly<Record<string, number>>
  readonly measures: Readonly<Record<string, number>>
}

const COUNTED = ['planks', 'boxes', 'pieces']

/** For laws that hold to a few nanometres: where corners are rounded apart, areas differ by less than a hair. */
export function inFigures(compiled: Compiled): string {
  const counts: Record<string, number> = {}
  const measures: Record<string, number> = {}
  const { floors, products } = compiled.takeoff
  for (const part of [...floors, ...products]) {
    const of = 'floor' in part ? `floor ${part.floor}` : `product ${part.product}`
    for (const { key, room, unit, value } of part.quantities) {
      const into = COUNTED.includes(unit) ? counts : measures
      into[`${key} of ${room ?? of}`] = value === null ? -1 : Number(value.n) / Number(value.d)
    }
  }
  for (const { published } of compiled.floors) {
    counts[`least planks of floor ${published.floor}`] = published.bound.planks
    for (const { rule } of published.breaches) {
      const key = `${rule} of floor ${published.floor}`
      counts[key] = (counts[key] ?? 0) + 1
    }
  }
  return JSON.stringify({ counts, measures } satisfies Figures)
}

/** What is measured is the same to one part in so many: the rounding of corners to nanometres. */
const PRECISION = 1e-7

/** What is measured differs by no more than its rounding. Waste follows the count, and is left out. */
export function sameMeasures(before: string, after: string): string | null {
  const [was, is] = [figuresOf(before).measures, figuresOf(after).measures]
  const keys = [...new Set([...Object.keys(was), ...Object.keys(is)])]
  const wrong = keys.find((key) => !key.startsWith('waste') && !isNear(was[key], is[key]))
  return wrong === undefined ? null : `${wrong}: was ${was[wrong]}, is ${is[wrong]}`
}

/** What is counted is the same, bounds and breaches too. */
export function sameCounts(before: string, after: string): string | null {
  const [was, is] = [figuresOf(before).counts, figuresOf(after).counts]
  const keys = [...new Set([...Object.keys(was), ...Object.keys(is)])]
  const wrong = keys.filter(
    (key) => !key.startsWith('planks by percentage') && (was[key] ?? 0) !== (is[key] ?? 0),
  )
  return wrong.length === 0
    ? null
    : wrong.map((key) => `${key}: was ${was[key] ?? 0}, is ${is[key] ?? 0}`).join('; ')
}

export function sameFigures(before: string, after: string): string | null {
  return sameMeasures(before, after) ?? sameCounts(before, after)
}

export function figuresOf(view: string): Figures {
  return JSON.parse(view)
}

function isNear(a: number | undefined, b: number | undefined): boolean {
  if (a === undefined || b === undefined) return false
  return Math.abs(a - b) <= PRECISION * Math.max(Math.abs(a), Math.abs(b), 1)
}
