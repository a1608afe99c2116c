import { describe, expect, test } from 'vitest'
import { type Compiled, compile } from '../../server/src/compile.ts'
import type { PublishedFloor, PublishedLayouts } from '../../server/src/layout/published.ts'
import { verify } from '../../server/src/verify/verify.ts'
import { distribution } from '../generate/distribution.ts'
import { type RandomJob, randomJob } from '../generate/job.ts'
import { SPOILERS, spoiled } from '../verify/spoil.ts'

const SEEDS = 300
const BATCH = 30
const TIMEOUT = { timeout: 120_000 }

interface Laid {
  readonly job: RandomJob
  readonly result: Compiled
  readonly floors: readonly PublishedFloor[]
}

const already = new Map<number, Laid>()

/** The whole pipeline on one random job; each seed is laid once, whichever tests ask for it. */
function lay(seed: number): Laid {
  const before = already.get(seed)
  if (before !== undefined) return before
  const job = randomJob(seed)
  const result = compile(new Map([['random.floor', job.text]]), 'random.floor')
  if ('missing' in result) throw new Error(`includes missing: ${result.missing}`)
  const laid = { job, result, floors: result.floors.map((floor) => floor.published) }
  already.set(seed, laid)
  return laid
}

/** As a file would hold it: what does not survive JSON is no part of a layout. */
function file(...floors: readonly PublishedFloor[]): unknown {
  const layouts: PublishedLayouts = {
    format: 'floorscribe layout',
    version: 1,
    unit: 'nm',
    job: 'random',
    floors,
  }
  return JSON.parse(JSON.stringify(layouts))
}

describe(`${SEEDS} random jobs, each floor laid and proven again`, () => {
  const starts = Array.from({ length: SEEDS / BATCH }, (_, i) => i * BATCH)

  test.each(starts)('seeds from %i on', TIMEOUT, (start) => {
    for (let seed = start; seed < start + BATCH; seed += 1) {
      const { job, result, floors } = lay(seed)
      if (job.sound) {
        const errors = result.messages.filter(({ weight }) => weight === 'error')
        expect(errors, `seed ${seed}`).toEqual([])
        expect(floors.length, `seed ${seed}: floors laid`).toBe(result.job.floors.length)
      } else {
        expect(result.exit, `seed ${seed}: a slip of a foot`).toBe('errors')
      }
      expect(verify(file(...floors)).faults, `seed ${seed}`).toEqual([])
    }
  })

  test('the jobs are as mixed as they are meant to be', TIMEOUT, () => {
    const laid = Array.from({ length: SEEDS }, (_, seed) => lay(seed))
    const features = laid.flatMap(({ job }) => job.features)
    const breaches = laid.flatMap(({ floors }) =>
      floors.flatMap((floor) => floor.breaches.map(({ rule }) => `breach: ${rule}`)),
    )
    console.info(distribution([...features, ...breaches]))
    expect(new Set(features).size).toBeGreaterThan(45)
    expect(laid.flatMap(({ floors }) => floors).length).toBeGreaterThan(SEEDS)
  })
})

/** Every fortieth floor, and the first few with a joint that a post parted, which are rare. */
function sample(): readonly PublishedFloor[] {
  const floors = Array.from({ length: SEEDS }, (_, seed) => lay(seed).floors).flat()
  const large = floors.filter(({ pieces }) => pieces.length > 20)
  const parted = floors.filter(({ joints }) => joints.some((joint) => joint.parted))
  return [...large.filter((_, i) => i % 40 === 0), ...parted.slice(0, 2)]
}

test('falsified copies of real layouts are rejected, each with its own fault', TIMEOUT, () => {
  const floors = sample()
  for (const spoiler of SPOILERS) {
    const copies = floors.map((floor) => spoiled(floor, spoiler)).filter((copy) => copy !== null)
    for (const copy of copies) {
      const codes = verify({ ...(file() as object), floors: [copy] }).faults.map(({ code }) => code)
      expect(codes, `${spoiler.name} on ${copy.floor}`).toContain(spoiler.fault)
    }
    expect(copies.length, `${spoiler.name}: floors that it applies to`).toBeGreaterThan(0)
  }
})
