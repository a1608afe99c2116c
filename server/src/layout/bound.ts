import type { Nm } from '../units/length.ts'
import type { PlankRules } from './problem.ts'
import type { Place } from './stretches.ts'

/** Less than any plank, more than the rounding of all the sums below. */
const ROUNDING = 1e-6

/**
 * Planks and boxes below which no layout can stay, however its stretches are jointed. Each blank is
 * given a weight such that no plank holds blanks of more than weight 1, so that the sum of the least
 * weights of all stretches bounds the planks. Two weights are tried (dual feasible functions along,
 * conservative scales in two dimensions: Fekete and Schepers, Math. Oper. Res. 2004, from memory):
 * every blank grown by the kerfs over the plank grown by them, and length over the length that two
 * pieces of one plank share. Cost: linear in the bands.
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
  const area = places.reduce((sum, place) => sum + areaOf(place), 0)
  return { planks, boxes: Math.ceil(area / (perBox * rules.width) - ROUNDING) }
}

function least(places: readonly Place[], rules: PlankRules, weight: Weight): number {
  const sum = places.reduce((total, place) => total + leastOf(place, rules, weight), 0)
  return Math.ceil(sum - ROUNDING)
}

/** The least weight of all blanks of a stretch: as many whole planks as it holds, and one piece more. */
function leastOf(place: Place, rules: PlankRules, weight: Weight): number {
  const plank = longest(rules)
  if (place.across === null) return areaOf(place) / (plank * rules.width)
  const whole = Math.floor(place.length / plank)
  const rest = place.length - whole * plank
  const pieces = rest > 0 ? [rest] : []
  const { width } = place.across
  return (
    whole * weight(plank, width, rules) +
    pieces.reduce((sum, length) => sum + weight(length, width, rules), 0)
  )
}

/** Weight of a blank as a share of the longest plank. */
type Weight = (length: Nm, width: Nm, rules: PlankRules) => number

const WEIGHTS: readonly Weight[] = [grown, shared]

function grown(length: Nm, width: Nm, rules: PlankRules): number {
  const along = rules.kerfAcross + rules.toSpare
  const across = rules.kerfAlong
  return (
    ((length + along) / (longest(rules) + along)) * ((width + across) / (rules.width + across))
  )
}

function shared(length: Nm, width: Nm, rules: PlankRules): number {
  const plank = longest(rules)
  const share = plank - rules.kerfAcross - rules.toSpare
  return (length >= share ? 1 : length / share) * (width / rules.width)
}

function longest(rules: PlankRules): Nm {
  return rules.lengths.reduce((most, each) => Math.max(most, each.length), 0)
}

function areaOf(place: Place): number {
  return place.bands.reduce((sum, band) => sum + (band.to - band.from) * (band.high - band.low), 0)
}
