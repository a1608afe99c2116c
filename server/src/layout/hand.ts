import type { Nm } from '../units/length.ts'
import type { Blank, Plan } from './plan.ts'
import type { Contact, Interval, Problem, Stretch } from './problem.ts'

/**
 * A problem seen in a mirror: what lies left lies right. Courses, heights and rules stay. A floor whose
 * courses are laid from right to left is planned so, for then each course begins where its laying does,
 * and a house and its mirror image, laid by locks of opposite hands, get the same plan.
 */
export function mirroredProblem(problem: Problem): Problem {
  const order = mirroredOrder(problem.stretches)
  const idOf = new Map(order.map((stretch, id) => [stretch.id, id]))
  return {
    ...problem,
    stretches: order.map((stretch, id) => ({
      ...stretch,
      ...mirroredInterval(stretch),
      id,
      bands: stretch.bands.map((band) => ({ ...band, ...mirroredInterval(band) })).toReversed(),
      posts: stretch.posts.map(mirroredInterval).toReversed(),
      doorways: stretch.doorways.map(mirroredInterval).toReversed(),
    })),
    contacts: alongSeams(problem).flatMap((contacts) =>
      contacts
        .map((contact) => ({
          below: idOf.get(contact.below)!,
          above: idOf.get(contact.above)!,
          ...mirroredInterval(contact),
        }))
        .toReversed(),
    ),
  }
}

/** The plan of a mirrored problem as a plan of the problem itself, planks mirrored too. */
export function planSeenInMirror(plan: Plan, problem: Problem): Plan {
  const order = mirroredOrder(problem.stretches)
  const lengthOf = new Map(plan.planks.map(({ plank, length }) => [plank, length]))
  return {
    ...plan,
    blanks: plan.blanks.map((blank): Blank => {
      const length = lengthOf.get(blank.plank)!
      const [from, to] = blank.along
      return {
        ...blank,
        ...mirroredInterval(blank),
        stretch: order[blank.stretch]!.id,
        along: [length - to, length - from],
      }
    }),
  }
}

/** By course, then from right to left: the order in which the mirror shows them from the left. */
function mirroredOrder(stretches: readonly Stretch[]): readonly Stretch[] {
  return [...stretches].sort(
    (a, b) =>
      a.course - b.course || b.to - a.to || lowest(a) - lowest(b) || b.from - a.from || a.id - b.id,
  )
}

function lowest({ bands }: Stretch): Nm {
  return bands.reduce((least, band) => Math.min(least, band.low), Infinity)
}

function mirroredInterval({ from, to }: Interval): Interval {
  return { from: 0 - to, to: 0 - from }
}

/** Contacts seam by seam, as the problem lists them. */
function alongSeams({ contacts, stretches }: Problem): readonly (readonly Contact[])[] {
  return [...Map.groupBy(contacts, ({ below }) => stretches[below]!.course).values()]
}
