import { describe, expect, test } from 'vitest'
import { effort } from '../effort.ts'
import { emptyTally, fuzz, textOf } from './fuzz.ts'
import { heldMegabytes } from './memory.ts'
import { JOB, PARSER } from './targets.ts'

const SEED = 20_261_125
const BATCHES = 20

/** Times are held in the full share alone: there one process has the machine to itself. */
const IS_TIMED = effort(0, 1) === 1

/** More than this over all batches is a leak. */
const FLAT = 25

describe.each([
  { target: PARSER, runs: effort(4000, 1_000_000), codes: 35 },
  { target: JOB, runs: effort(80, 20_000), codes: 50 },
])('$runs texts by chance, the $target.name', ({ target, runs, codes }) => {
  const tally = emptyTally()
  const held: number[] = []
  const count = runs / BATCHES

  test.each(Array.from({ length: BATCHES }, (_, i) => i * count))(
    'keeps its promises, from text %i on',
    { timeout: 3_600_000 },
    (from) => {
      fuzz(target, { seed: SEED, from, count, timed: IS_TIMED }, tally)
      const said = [...tally.faults.values()].map(({ fault, run }) => [
        run,
        fault.promise,
        fault.detail,
        textOf(target, SEED, run),
      ])
      expect(said).toEqual([])
      held.push(heldMegabytes())
    },
  )

  test('holds no more at the end than at the beginning', () => {
    expect(tally.runs).toBe(runs)
    expect(held.at(-1)! - held[1]!).toBeLessThan(FLAT)
  })

  test('reaches many messages', () => {
    expect(tally.codes.size).toBeGreaterThan(codes)
  })
})

test('one seed and run, one text; another, another', () => {
  const texts = Array.from({ length: 200 }, (_, run) => textOf(JOB, 1, run))
  expect(texts).toEqual(texts.map((_, run) => textOf(JOB, 1, run)))
  expect(new Set(texts).size).toBeGreaterThan(190)
})
