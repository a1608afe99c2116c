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
import type { Point } from './point.ts'
import type { PublishedFloor } from './published.ts'
import { floor as down, type Ratio } from './ratio.ts'
import type { Region } from './region.ts'
import { rimOf } from './rim.ts'
import { edgesOf, type Run, runOf } from './run.ts'

/** A floor worked out by hand: of the published layout only its line, start pieces and planks are taken. */
export interface Working {
  readonly floor: Floor
  readonly product: Product
  /** The rim in the plan, and in the frame of the run. */
  readonly rim: readonly Side[]
  readonly turned: readonly Side[]
  readonly run: Run
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
  const run = runOf(house, floor, rim)
  if (run === null) return null
  const turned = turnedTo(run.axis, rim)
  const seam = BigInt(published.courses[0]?.low ?? 0)
  const covered = ontoSeams(coveredWithin(turned), seam, product.width)
  const courses = coursesOf(covered, seam, product.width)
  const laying = laid(courses, published)
  const runs = longestRuns(turned, covered, product)
  const breaches = [...breachesOf(courses, laying, product, published.doorways), ...runs]
  return { floor, product, rim, turned, run, covered, courses, laying, breaches }
}

/** The longest line inside what is covered, each way; the run along is found with u and v exchanged. */
function longestRuns(
  turned: readonly Side[],
  covered: Region,
  { longest }: Product,
): readonly Breach[] {
  const exchanged = coveredWithin(
    turned.map((side) => ({ ...side, from: swapped(side.to), to: swapped(side.from) })),
  )
  const along = longestAcross(exchanged)
  const across = longestAcross(covered)
  return [
    ...(along ? runBreach('along', along.value, longest.along, [along.low, along.at]) : []),
    ...(across ? runBreach('across', across.value, longest.across, [across.at, across.low]) : []),
  ]
}

const swapped = ({ x, y }: Point): Point => ({ x: y, y: x })

function runBreach(
  direction: 'along' | 'across',
  value: Nm,
  limit: Nm | null,
  [u, v]: readonly [Ratio, Ratio],
): readonly Breach[] {
  if (limit === null || value <= limit) return []
  return [{ rule: 'longest run', value, limit, at: [down(u), down(v)], pieces: [], direction }]
}
