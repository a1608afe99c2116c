import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { effort } from '../effort.ts'
import { otherJob, type RandomJob, rightAngledJob } from '../generate/job.ts'
import { disagreements } from './agreement.ts'
import { houseOf } from './house.ts'
import { compiled } from './product.ts'
import { round } from './ratio.ts'
import { readJob } from './read-job.ts'
import { type Nearness, TO_THE_DIGIT } from './slack.ts'

/** Slanted places are rounded once or twice on either side: 8 nm are less than a part in 10⁹ of ten metres. */
const WITHIN: Nearness = { isExact: false, nm: 8n }

/** So many jobs in one test, so that each ends well within its time. */
const SHARE = 100

function shares(count: number): readonly (readonly [number, number])[] {
  const starts = Array.from({ length: Math.ceil(count / SHARE) }, (_, i) => i * SHARE)
  return starts.map((from) => [from, Math.min(from + SHARE, count)] as const)
}

/** What differs in one job, its seed before it; a job that is told to hold an error is left out. */
function differing(job: RandomJob, near: Nearness): readonly string[] {
  const product = compiled(job.files, job.root)
  if (!job.sound || product.hasErrors) return []
  const own = readJob(job.files, job.root)
  return disagreements(own, houseOf(own), product, near).map((text) => `${job.seed}: ${text}`)
}

function differingIn(
  [from, to]: readonly [number, number],
  jobOf: (seed: number) => RandomJob,
  near: Nearness,
): readonly string[] {
  const seeds = Array.from({ length: to - from }, (_, i) => from + i)
  return seeds.flatMap((seed) => differing(jobOf(seed), near))
}

test.each(shares(effort(20, 20_000)))(
  'right-angled jobs agree to the digit, seeds %i to %i',
  (from, to) => {
    expect(differingIn([from, to], (seed) => rightAngledJob(seed), TO_THE_DIGIT)).toEqual([])
  },
)

test.each(shares(effort(6, 5_000)))(
  'other jobs agree to a part in 10⁹, seeds %i to %i',
  (from, to) => {
    expect(differingIn([from, to], (seed) => otherJob(seed), WITHIN)).toEqual([])
  },
)

test.each(shares(effort(2, 100)))(
  'jobs of whatever the language takes agree, seeds %i to %i',
  (from, to) => {
    const right = differingIn([from, to], (seed) => rightAngledJob(seed, 'nasty'), TO_THE_DIGIT)
    expect(right).toEqual([])
    expect(differingIn([from, to], (seed) => otherJob(seed, 'nasty'), WITHIN)).toEqual([])
  },
)

const EXAMPLES = [
  'carpeted-bedroom',
  'living-and-sun-room',
  'upper-floor',
  'products',
  'shop-prices',
]
const FILES = new Map(
  EXAMPLES.map((name) => [
    `${name}.floor`,
    readFileSync(new URL(`../../examples/${name}.floor`, import.meta.url), 'utf8'),
  ]),
)

test.each([
  ['carpeted-bedroom', TO_THE_DIGIT],
  ['upper-floor', TO_THE_DIGIT],
  ['living-and-sun-room', WITHIN],
] as const)('the example %s agrees', (name, near) => {
  const root = `${name}.floor`
  const own = readJob(FILES, root)
  expect(disagreements(own, houseOf(own), compiled(FILES, root), near)).toEqual([])
})

/** A room's corners and how far it misses closing, as text. */
const roomText = (corners: readonly (readonly [number, number])[], east: number | undefined) =>
  `${corners.join(' ')} misses ${east ?? 'nothing'}`

function roomsDiffering(job: RandomJob): readonly string[] {
  const house = houseOf(readJob(job.files, job.root))
  return compiled(job.files, job.root).rooms.flatMap(({ room, corners, closing }) => {
    const own = house.rooms.find(({ shape }) => shape.room.key === room)?.shape
    const ours = own?.rim.map(({ x, y }) => [Number(round(x)), Number(round(y))] as const) ?? []
    const east = own?.closing ? Number(round(own.closing.misclosure.x)) : undefined
    const [said, found] = [roomText(ours, east), roomText(corners, closing?.east)]
    return corners.length === 0 || said === found
      ? []
      : [`${job.seed} ${room}: ${said}, product ${found}`]
  })
}

test('corners and closing of every room agree', () => {
  const seeds = Array.from({ length: effort(10, 1_000) }, (_, seed) => seed)
  expect(seeds.flatMap((seed) => roomsDiffering(rightAngledJob(seed)))).toEqual([])
})
