import type { Nm } from '../units/length.ts'
import { ALIGNED, offPhase, repeatsPhase } from './clash.ts'
import { type Jointing, jointingsFrom } from './jointing.ts'
import { breachesHere, type Laying, type Pattern } from './laying.ts'
import { markOf, startsBeside, startsFromRests, wrapped } from './starts.ts'
import type { Place } from './stretches.ts'
import { woodOf } from './wood.ts'

/**
 * How a stretch is jointed with planks of one length: with the fewest breaches, then at the least
 * cost, then as was thought of first. The start piece alone decides it.
 */
export function jointOneLength(laying: Laying, place: Place): Jointing {
  let best: Jointing | null = null
  let fewest = ALIGNED
  let least = 0
  for (const start of startsToTry(laying, place)) {
    for (const jointing of jointingsFrom(place, start, laying.field.rules)) {
      const breaches = breachesHere(laying, place, jointing)
      if (breaches >= ALIGNED || breaches > fewest) continue
      const cost = costOf(laying, place, jointing)
      if (breaches === fewest && cost >= least) continue
      best = jointing
      fewest = breaches
      least = cost
    }
  }
  return best ?? unaligned(laying, place)
}

/** Any jointing that aligns with no neighbour: there are finitely many joints to keep off. */
export function unaligned(laying: Laying, place: Place): Jointing {
  const { rules } = laying.field
  const plank = rules.lengths[0]!.length
  const mark = markOf(plank)
  for (let start = mark; ; start += mark) {
    const [jointing] = jointingsFrom(place, wrapped(start, plank, place.length), rules)
    if (breachesHere(laying, place, jointing!) < ALIGNED) return jointing!
    // Past a whole plank the marks are walked again one nanometre on.
    if (start + mark > plank) start -= plank - 1
  }
}

/** The start pieces worth trying, each once. A run with nothing beside it begins as the pattern says. */
function startsToTry(laying: Laying, place: Place): readonly Nm[] {
  const { field, jointings, pattern } = laying
  const plank = field.rules.lengths[0]!.length
  const guided = jointings[place.id]
  const starts = guided === undefined ? [] : [guided.start]
  const beside: Nm[] = []
  for (const { other } of place.touches) {
    const neighbour = jointings[other]
    if (neighbour !== undefined && neighbour.joints.length > 0)
      beside.push(...startsBeside(place, neighbour, field.rules))
  }
  if (place.length <= plank && place.posts.length === 0) starts.push(place.length)
  else if (beside.length === 0 && guided === undefined) {
    const begin = wrapped(beginOf(pattern, plank), plank, place.length)
    if (jointingsFrom(place, begin, field.rules)[0]!.breaches === 0) return [begin]
    starts.push(begin)
  }
  starts.push(
    ...startsFromRests(place, laying.ready, field.limits.mayTurn),
    ...field.starts[place.id]!,
    ...beside,
  )
  return onceEach(starts, plank, place.length)
}

/** Start pieces tried in one stretch at most: only a comb of a floor offers more. */
const MOST_STARTS = 64

/** Wrapped into the plank, without repeats: few enough that looking through them beats a set. */
function onceEach(starts: readonly Nm[], plank: Nm, stretch: Nm): readonly Nm[] {
  const once: Nm[] = []
  for (const start of starts) {
    if (once.length === MOST_STARTS) break
    const inside = wrapped(start, plank, stretch)
    if (!once.includes(inside)) once.push(inside)
  }
  return once
}

function beginOf(pattern: Pattern, plank: Nm): Nm {
  const mark = markOf(plank)
  return Math.floor((plank * pattern.begin[0]) / pattern.begin[1] / mark) * mark
}

/** Wood that the stretch costs, in nm of plank, and what its looks cost by this pattern's measure. */
function costOf(laying: Laying, place: Place, jointing: Jointing): number {
  const plank = laying.field.rules.lengths[0]!.length
  const looks = looksOf(laying, place, jointing, plank)
  return woodOf(laying, place, jointing) + looks * plank
}

/** What the stretch's looks cost, in planks: repeats with the courses before, pieces hard to cut. */
function looksOf(laying: Laying, place: Place, jointing: Jointing, plank: Nm): number {
  const { pattern, jointings, field } = laying
  const { rules } = field
  let looks = (jointing.slivers + jointing.parted.length) * 0.5 + jointing.hardCuts * 0.01
  for (const { other } of place.touches) {
    const beside = jointings[other]
    if (beside === undefined || beside.phase < 0 || jointing.phase < 0) continue
    if (offPhase(jointing.phase - beside.phase, plank) < rules.stagger + rules.toSpare)
      looks += 0.02
  }
  if (pattern.calm === 0) return looks
  for (const { between, other } of place.beyond) {
    const middle = jointings[between]
    const far = jointings[other]
    if (middle !== undefined && far !== undefined && repeatsPhase(jointing, middle, far, plank))
      looks += pattern.calm
  }
  return looks
}
