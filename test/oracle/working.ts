import { type Breach, breachesOf, longestAcross } from './breaches.ts'
import { type Course, coursesOf, ontoSeams } from './courses.ts'
import { coveredWithin } from './covered.ts'
import { turnedTo } from './frame.ts'
import type { House } from './house.ts'
import type { Floor, Job, Product } from './job.ts'
import { type Laying, laid } from './laying.ts'
import type { Nm } from './lengths.ts'
import type { Side } from './patch.ts'
import { patchesOf } from './patches.ts'
import { cross, dot, type Point, point } from './point.ts'
import type { PublishedFloor } from './published.ts'
import { compare, floor as down, type Ratio, ratio, size, times } from './ratio.ts'
import { exchanged, type Region } from './region.ts'
import { edgesOf, rimOf } from './rim.ts'
import { type Run, runsOf } from './run.ts'

/** A floor worked out by hand: of the published layout only its line, start pieces and planks are taken. */
export interface Working {
  readonly floor: Floor
  readonly product: Product
  /** The rim in the plan, and in the frame of the run. */
  readonly rim: readonly Side[]
  readonly turned: readonly Side[]
  /** Each way that the run may lie: several where walls are alike, seen in the published frame. */
  readonly runs: readonly Run[]
  /** Whether any wall or edge of the floor lies along the planks. */
  readonly isAlong: boolean
  readonly covered: Region
  readonly courses: readonly Course[]
  readonly laying: Laying
  readonly breaches: readonly Breach[]
}

export function workOut(
  job: Job,
  house: House,
  floor: Floor,
  published: PublishedFloor,
): Working | null {
  const product = job.products.find(({ key }) => key === floor.product)
  if (product === undefined) return null
  const rim = edgesOf(rimOf(patchesOf(job, house, floor, product)))
  const shown = point(BigInt(published.frame.east), BigInt(published.frame.north))
  const possible = runsOf(house, floor, rim)
  const runs = possible.filter(({ axis }) => isOneWay(axis, shown))
  const turned = turnedTo(runs[0]?.axis ?? shown, rim)
  const seam = BigInt(published.courses[0]?.low ?? 0)
  const covered = coveredWithin(turned)
  const ontoSeam = ontoSeams(covered, seam, product.width)
  const courses = coursesOf(ontoSeam, seam, product.width)
  const laying = laid(courses, published)
  const longRuns = longestRuns(ontoSeam, product)
  const breaches = [...breachesOf(courses, laying, product, published.doorways), ...longRuns]
  return {
    floor,
    product,
    rim,
    turned,
    runs,
    isAlong: possible.length > 0,
    covered,
    courses,
    laying,
    breaches,
  }
}

/** The same direction, to one part in 10⁸: of a short wall the ends are rounded to nanometres. */
function isOneWay(a: Point, b: Point): boolean {
  const along = dot(a, b)
  return along.n > 0n && compare(times(size(cross(a, b)), ratio(10n ** 8n)), along) <= 0
}

/** The longest line inside what is covered, each way; the run along is found with u and v exchanged. */
function longestRuns(covered: Region, { longest }: Product): readonly Breach[] {
  const along = longestAcross(exchanged(covered))
  const across = longestAcross(covered)
  return [
    ...(along ? runBreach('along', along.value, longest.along, [along.low, along.at]) : []),
    ...(across ? runBreach('across', across.value, longest.across, [across.at, across.low]) : []),
  ]
}

function runBreach(
  direction: 'along' | 'across',
  value: Nm,
  limit: Nm | null,
  [u, v]: readonly [Ratio, Ratio],
): readonly Breach[] {
  if (limit === null || value <= limit) return []
  return [{ rule: 'longest run', value, limit, at: [down(u), down(v)], pieces: [], direction }]
}
