import { describe, expect, test } from 'vitest'
import { type Compiled, compile } from '../../server/src/compile.ts'
import type { PublishedFloor, PublishedLayouts } from '../../server/src/layout/published.ts'
import { verify } from '../../server/src/verify/verify.ts'
import { distribution } from '../generate/distribution.ts'
import { type RandomJob, randomJob } from '../generate/job.ts'
import { SPOILERS, spoiled } from '../verify/spoil.ts'

const SEEDS = 300
const BATCH = 30
const laid: { readonly job: RandomJob; readonly floors: readonly PublishedFloor[] }[] = []

function compiled({ text }: RandomJob): Compiled {
  const result = compile(new Map([['random.floor', text]]), 'random.floor')
  if ('missing' in result) throw new Error(`includes missing: ${result.missing}`)
  return result
}

/** As a file would hold it: what does not survive JSON is no part of a layout. */
function published(...floors: readonly PublishedFloor[]): unknown {
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

  test.each(starts)('seeds from %i on', { timeout: 120_000 }, (start) => {
    for (let seed = start; seed < start + BATCH; seed += 1) {
      const job = randomJob(seed)
      const result = compiled(job)
      const floors = result.floors.map((floor) => floor.published)
      if (job.sound) {
        const errors = result.messages.filter(({ weight }) => weight === 'error')
        expect(errors, `seed ${seed}`).toEqual([])
        expect(floors.length, `seed ${seed}: floors laid`).toBe(result.job.floors.length)
      } else {
        expect(result.exit, `seed ${seed}: a slip of a foot`).toBe('errors')
      }
      expect(verify(published(...floors)).faults, `seed ${seed}`).toEqual([])
      laid.push({ job, floors })
    }
  })

  test('the jobs are as mixed as they are meant to be', () => {
    const features = laid.flatMap(({ job }) => job.features)
    const breaches = laid.flatMap(({ floors }) =>
      floors.flatMap((floor) => floor.breaches.map(({ rule }) => `breach: ${rule}`)),
    )
    console.info(distribution([...features, ...breaches]))
    expect(laid.length).toBe(SEEDS)
    expect(new Set(features).size).toBeGreaterThan(45)
  })
})

test('falsified copies of real layouts are rejected, each with its own fault', () => {
  const floors = laid.flatMap((one) => one.floors).filter(({ pieces }) => pieces.length > 20)
  const some = floors.filter((_, i) => i % 12 === 0)
  const never = SPOILERS.filter((spoiler) => {
    const copies = some.map((floor) => spoiled(floor, spoiler)).filter((copy) => copy !== null)
    for (const copy of copies) {
      const { faults } = verify({ ...(published() as object), floors: [copy] })
      expect(
        faults.map(({ code }) => code),
        `${spoiler.name} on ${copy.floor}`,
      ).toContain(spoiler.fault)
    }
    return copies.length === 0
  })
  expect(never.map(({ name }) => name)).toEqual([])
})
