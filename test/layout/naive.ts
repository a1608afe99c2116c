import { twiceAreaOf } from '../../server/src/geometry/exact.ts'
import type { Blank, Plan } from '../../server/src/layout/plan.ts'
import type { PlankRules, Stretch } from '../../server/src/layout/problem.ts'
import type { CutFloor } from '../../server/src/layout/problem-of.ts'
import { inch } from './house.ts'

/** Rules of a plank 7 × 48 in. */
export const rules: PlankRules = {
  width: inch(7),
  lengths: [{ length: inch(48), perBox: 10 }],
  stagger: inch(8),
  shortestEnd: inch(8),
  narrowestRip: inch(2),
  kerfAlong: 0,
  kerfAcross: 0,
  toSpare: 0,
  laid: 'left to right',
  longestRun: { along: null, across: null },
  pile: { pieces: 8, courses: 6 },
  spoilPlanks: 2,
  spoilPercent: null,
  sparePlanks: 0,
  spareBoxes: 0,
}

/**
 * A plan without any thought: each blank from a plank of its own, each stretch begun with the longest
 * start piece whose joints stand in no line with those of the course below and, if it can be, in posts.
 */
export function naivePlan(cut: CutFloor, minds: 'posts' | 'nothing' = 'posts'): Plan {
  const { stretches, contacts, courses, rules: given } = cut.problem
  const length = given.lengths[0]!.length
  const below = new Map<number, number[]>()
  for (const contact of contacts) {
    below.set(contact.above, [...(below.get(contact.above) ?? []), contact.below])
  }
  const joints: number[][] = []
  const blanks: Blank[] = []
  for (const stretch of stretches) {
    const taken = new Set((below.get(stretch.id) ?? []).flatMap((id) => joints[id]!))
    const held = minds === 'posts' ? stretch : { ...stretch, posts: [] }
    const own = jointsOf(held, length, taken)
    joints.push(own)
    const ends = [stretch.from, ...own, stretch.to]
    for (let i = 0; i + 1 < ends.length; i++) {
      const from = ends[i]!
      const to = ends[i + 1]!
      const starts = i === 0 && own.length > 0
      const { low } = courses[stretch.course - 1]!
      blanks.push({
        stretch: stretch.id,
        course: stretch.course,
        from,
        to,
        plank: blanks.length + 1,
        along: starts ? [length - (to - from), length] : [0, to - from],
        across: acrossOf(stretch, from, to, low),
        turned: false,
      })
    }
  }
  const planks = blanks.map(({ plank }) => ({ plank, length }))
  return { blanks, planks, bound: boundOf(cut, length), pattern: 'naive', tried: 1 }
}

/** No fewer planks than the area holds; boxes of ten. */
function boundOf(cut: CutFloor, length: number): Plan['bound'] {
  const plank = 2n * BigInt(length) * BigInt(cut.problem.rules.width)
  const planks = Number((twiceAreaOf(cut.area) + plank - 1n) / plank)
  return { planks, boxes: Math.ceil(planks / 10) }
}

function jointsOf(stretch: Stretch, length: number, taken: ReadonlySet<number>): number[] {
  const { from, to, posts } = stretch
  let first: number[] | null = null
  for (let start = length; start > 0; start -= inch(1 / 2)) {
    const joints: number[] = []
    for (let at = from + start; at < to; at += length) joints.push(at)
    if (joints.some((at) => taken.has(at))) continue
    first ??= joints
    if (posts.every((post) => joints.some((at) => post.from < at && at < post.to))) return joints
  }
  return first ?? []
}

function acrossOf({ bands }: Stretch, from: number, to: number, low: number): [number, number] {
  const met = bands.filter((band) => band.from < to && band.to > from)
  return [
    met.reduce((least, band) => Math.min(least, band.low), Infinity) - low,
    met.reduce((most, band) => Math.max(most, band.high), -Infinity) - low,
  ]
}
