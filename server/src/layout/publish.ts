import { ringsWithCrossings } from '../geometry/outline.ts'
import type { Ring } from '../geometry/point.ts'
import { touchesOf } from './breach-joints.ts'
import { breachesOf } from './breaches.ts'
import type { Frame } from './frame.ts'
import { piecesOf } from './pieces.ts'
import type { Plan } from './plan.ts'
import type { PlankRules } from './problem.ts'
import type { CutFloor } from './problem-of.ts'
import type { PublishedFloor, PublishedRing, PublishedRules } from './published.ts'

/** A planned floor as it is published: exact pieces, joints, and every breach of a soft rule. */
export function publishFloor(
  names: { readonly floor: string; readonly product: string },
  frame: Frame,
  cut: CutFloor,
  plan: Plan,
): PublishedFloor {
  const { rules, courses, stretches, contacts } = cut.problem
  const { pieces, joints, outlines } = piecesOf(cut, plan)
  const rings = ringsWithCrossings(cut.area, outlines).map(published)
  const touches = touchesOf(contacts, ({ above }) => courses[stretches[above]!.course - 1]!.low)
  const { planks, bound } = plan
  const doorways = cut.zones
  return {
    ...names,
    frame: { east: frame.east, north: frame.north },
    area: { rings, unsplit: cut.area.map(published) },
    rules: publishedRules(rules),
    courses,
    planks,
    pieces,
    joints,
    doorways,
    breaches: breachesOf({ rules, pieces, joints, planks, touches, rings, doorways }),
    bound,
  }
}

function published(ring: Ring): PublishedRing {
  return ring.map(({ x, y }) => [x, y])
}

function publishedRules(rules: PlankRules): PublishedRules {
  return {
    plankWidth: rules.width,
    plankLengths: rules.lengths,
    stagger: rules.stagger,
    shortestEnd: rules.shortestEnd,
    narrowestRip: rules.narrowestRip,
    kerfAlong: rules.kerfAlong,
    kerfAcross: rules.kerfAcross,
    toSpare: rules.toSpare,
    laid: rules.laid,
    longestRun: rules.longestRun,
    pile: rules.pile,
  }
}
