import { NM_PER_INCH, NM_PER_MM, type Nm } from '../units/length.ts'
import type { Jointing } from './jointing.ts'
import type { PlankRules } from './problem.ts'
import type { Rest } from './stock.ts'
import type { Place } from './stretches.ts'

/** The mark that a length chosen freely is cut to: 1/16 in, or 1 mm for a metric plank. */
export function markOf(plank: Nm): Nm {
  return plank % (NM_PER_INCH / 16) === 0 ? NM_PER_INCH / 16 : NM_PER_MM
}

/** A start piece's length put into (0, plank], or the whole stretch where that is one piece. */
export function wrapped(start: Nm, plank: Nm, stretch: Nm): Nm {
  const rest = start % plank
  const inside = rest <= 0 ? rest + plank : rest
  return Math.min(inside, stretch)
}

/**
 * The start pieces worth trying in a stretch whatever lies beside it: a whole plank at either end, the
 * shortest end at either end, the plain fractions of a plank, a joint in each post, none in a doorway.
 */
export function ownStarts(place: Place, rules: PlankRules): readonly Nm[] {
  const plank = rules.lengths[0]!.length
  const mark = markOf(plank)
  const { length, from } = place
  const fractions = [
    [1, 2],
    [1, 3],
    [2, 3],
  ].map(([n, d]) => Math.floor((plank * n!) / d! / mark) * mark)
  const posts = place.posts.flatMap((post) =>
    [2, 1, 3].map((n) => post.from + Math.floor(((post.to - post.from) * n) / 4) - from),
  )
  const doorways = place.doorways.flatMap((zone) => [zone.from - from, zone.to - from])
  const ends = [plank, length, rules.shortestEnd, length - rules.shortestEnd]
  return [...ends, ...fractions, ...posts, ...doorways]
}

/**
 * Start pieces at which something just fits: at the stretch's ends, at doorways, narrow parts and the
 * ends of contacts; or that put a joint a stagger off one that just fits in a stretch beside this one,
 * or off where that would put one in the next. No grid holds these, and where all is tight no others do.
 */
export function tightStarts(
  place: Place,
  places: readonly Place[],
  rules: PlankRules,
): readonly Nm[] {
  const off = (other: Place, steps: readonly number[]) =>
    fits(other, rules).flatMap((u) => steps.map((step) => u + step * rules.stagger - place.from))
  return [
    ...off(place, [0]),
    ...place.touches.flatMap(({ other }) => off(places[other]!, [-1, 1])),
    ...place.beyond.flatMap(({ other }) => off(places[other]!, [0, -2, 2])),
  ]
}

/** u where a joint just fits something of its own stretch. */
function fits(place: Place, { shortestEnd }: PlankRules): readonly Nm[] {
  const { from, to, doorways, narrow, touches } = place
  const edges = [...doorways, ...narrow, ...touches].flatMap((each) => [each.from, each.to])
  return [from, to, from + shortestEnd, to - shortestEnd, ...edges]
}

/** Start pieces that use up a waiting rest: at the start, or so that it fits at the end. */
export function startsFromRests(
  place: Place,
  rests: readonly Rest[],
  mayTurn: boolean,
): readonly Nm[] {
  const starts: Nm[] = []
  for (const { length, left, right } of rests) {
    if (right || (mayTurn && left)) starts.push(length)
    if (left || (mayTurn && right)) starts.push(place.length - length)
  }
  return starts
}

/** Start pieces that keep just off a neighbour's joints: the stagger to either side, and some to spare. */
export function startsBeside(place: Place, other: Jointing, rules: PlankRules): readonly Nm[] {
  const offs = [rules.stagger + rules.toSpare, rules.stagger]
  if (other.phase >= 0)
    return offs.flatMap((off) => [other.phase - off, other.phase + off].map((u) => u - place.from))
  return other.joints.flatMap((joint) =>
    offs.flatMap((off) => [joint - off - place.from, joint + off - place.from]),
  )
}
