import type { Nm } from '../units/length.ts'
import type { PlankRules } from './problem.ts'
import type { Place } from './stretches.ts'

/** Less than any plank, more than the rounding of all the sums below. */
const ROUNDING = 1e-6

/**
 * Planks and boxes below which no layout can stay, however its stretches are jointed. Each blank is
 * given a weight such that no plank holds blanks of more than weight 1, so that the sum of the least
 * weights of all stretches bounds the planks. Weights along and across are dual feasible functions,
 * whose product is one in two dimensions (Fekete and Schepers, Math. Oper. Res. 2004, from memory).
 * Cost: linear in the bands.
 */
export function boundOf(
  places: readonly Place[],
  rules: PlankRules,
): { readonly planks: number; readonly boxes: number } {
  const lengths = rules.lengths.map((each) => each.length)
  const planks = Math.max(...WEIGHTS.map((weight) => least(places, rules, weight)))
  if (lengths.length === 1) {
    return { planks, boxes: Math.ceil(planks / rules.lengths[0]!.perBox) }
  }
  const perBox = rules.lengths.reduce((sum, each) => sum + each.length * each.perBox, 0)
  const area = places.reduce((sum, place) => sum + place.area, 0)
  return { planks, boxes: Math.max(0, Math.ceil(area / (perBox * rules.width) - ROUNDING)) }
}

function least(places: readonly Place[], rules: PlankRules, weight: Weight): number {
  const sum = places.reduce((total, place) => total + leastOf(place, rules, weight), 0)
  return Math.max(0, Math.ceil(sum - ROUNDING))
}

/** The least weight of all blanks of a stretch: as many whole planks as it holds, and one piece more. */
function leastOf(place: Place, rules: PlankRules, weight: Weight): number {
  const plank = longest(rules)
  const box = boxOf(place)
  const rest = box.length % plank
  const whole = (box.length - rest) / plank
  const last = rest > 0 ? weight.along(rest, rules) : 0
  const full = weight.across(box.width, rules) * (whole + last)
  // The floor in the box weighs so much less, by the most that any of it can weigh.
  const missing = box.length * box.width - place.area
  const heaviest = missing > box.length ? weight.heaviest(rules) : 0
  return Math.max(weight.lightest(rules) * place.area, full - heaviest * missing)
}

/** The least rectangle along the planks that a stretch fits in. */
function boxOf(place: Place): { readonly length: Nm; readonly width: Nm } {
  const low = place.bands.reduce((least, band) => Math.min(least, band.low), place.course.high)
  const high = place.bands.reduce((most, band) => Math.max(most, band.high), place.course.low)
  return { length: place.length, width: high - low }
}

/** Weight of a blank, as shares of the longest plank along and across; a whole plank weighs 1. */
interface Weight {
  readonly along: (length: Nm, rules: PlankRules) => number
  readonly across: (width: Nm, rules: PlankRules) => number
  /** The least and the most that a square nm of a blank weighs, whatever its shape. */
  readonly lightest: (rules: PlankRules) => number
  readonly heaviest: (rules: PlankRules) => number
}

const byArea = (rules: PlankRules) => 1 / (longest(rules) * rules.width)
const nothing = () => 0
const anything = () => Infinity

const WEIGHTS: readonly Weight[] = [
  { along: grownAlong, across: grownAcross, lightest: byArea, heaviest: anything },
  {
    along: sharedAlong,
    across: (width, rules) => width / rules.width,
    lightest: byArea,
    heaviest: (rules) => 1 / (sharedLength(rules) * rules.width),
  },
  { along: grownAlong, across: alone, lightest: nothing, heaviest: anything },
  { along: sharedAlong, across: alone, lightest: nothing, heaviest: anything },
]

function grownAlong(length: Nm, rules: PlankRules): number {
  const lost = rules.kerfAcross + rules.toSpare
  return (length + lost) / (longest(rules) + lost)
}

function grownAcross(width: Nm, rules: PlankRules): number {
  return (width + rules.kerfAlong) / (rules.width + rules.kerfAlong)
}

/** Length over what two pieces of one plank share; a piece that leaves no room weighs a whole plank. */
function sharedAlong(length: Nm, rules: PlankRules): number {
  const shared = sharedLength(rules)
  return length >= shared ? 1 : length / shared
}

function sharedLength(rules: PlankRules): Nm {
  return Math.max(1, longest(rules) - rules.kerfAcross - rules.toSpare)
}

/** 1 for a width that no second one fits beside, else nothing. */
function alone(width: Nm, rules: PlankRules): number {
  return 2 * width + rules.kerfAlong > rules.width ? 1 : 0
}

function longest(rules: PlankRules): Nm {
  return rules.lengths.reduce((most, each) => Math.max(most, each.length), 0)
}
