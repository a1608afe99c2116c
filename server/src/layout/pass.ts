import type { Sliced } from '../facts/slices.ts'
import type { Nm } from '../units/length.ts'
import { blanksOf, type Jointing } from './jointing.ts'
import type { Field, Laying, Pattern, Trial } from './laying.ts'
import { jointOneLength } from './one-length.ts'
import { jointRandomLengths } from './random-lengths.ts'
import { endCourse, newStock, readyRests } from './stock.ts'
import type { Place } from './stretches.ts'
import { cutBlank } from './wood.ts'

/** Stretches between two pauses: a millisecond or two. */
const SLICE = 32

/**
 * Lays a floor course by course: each stretch is jointed in the way with the fewest breaches, and
 * among those the one that costs the least wood. With a `guide` (the jointings
 * of an earlier pass) what is not laid yet counts as the guide has it, so that the breaches never
 * become more. Cost: stretches × starts tried × (neighbours + rests waiting). Pauses after every
 * `SLICE` stretches.
 */
export function* layOnce(
  field: Field,
  pattern: Pattern,
  guide: readonly Jointing[] | null,
): Sliced<Trial> {
  const laying: Laying = {
    field,
    pattern,
    stock: newStock(field.limits),
    jointings: guide === null ? field.places.map(() => undefined) : [...guide],
    blanks: [],
    used: field.rules.lengths.map(() => 0),
    usedUp: 0,
    inBox: field.rules.lengths.reduce((sum, each) => sum + each.length * each.perBox, 0),
    ready: [],
    order: 0,
    last: false,
  }
  let laid = 0
  for (const [index, course] of field.laying.entries()) {
    laying.order = course[0]!.course.order
    laying.last = index === field.laying.length - 1
    for (const place of course) {
      layStretch(laying, place)
      laid += 1
      if (laid % SLICE === 0) yield
    }
    endCourse(laying.stock, laying.order)
  }
  return {
    pattern,
    jointings: laying.jointings as Jointing[],
    blanks: laying.blanks,
    planks: laying.stock.planks,
    used: laying.used,
  }
}

function layStretch(laying: Laying, place: Place): void {
  laying.ready = readyRests(laying.stock, laying.order, narrowestOf(place))
  const several = laying.field.rules.lengths.length > 1
  const jointing = several ? jointRandomLengths(laying, place) : jointOneLength(laying, place)
  laying.jointings[place.id] = jointing
  for (const blank of blanksOf(place, jointing)) {
    const { plank, along, across, turned } = cutBlank(laying, blank)
    const { from, to } = blank
    laying.blanks.push({ stretch: place.id, from, to, plank, along, across, turned })
  }
}

function narrowestOf(place: Place): Nm {
  return place.across === null ? 0 : place.across.width
}
