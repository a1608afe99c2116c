import { describe, expect, test } from 'vitest'
import type { PublishedFloor } from '../../server/src/layout/published.ts'
import { verify } from '../../server/src/verify/verify.ts'
import { effort } from '../effort.ts'
import { SPOILERS, spoiled } from '../verify/spoil.ts'
import { asFile, lay, Proof } from './random-floors.ts'

/** Floors, not jobs: so many are laid and proved, or a few more. */
const SHARES = [
  ['realistic', effort(200, 12_000)],
  ['nasty', effort(50, 8_000)],
] as const
const TIMEOUT = { timeout: effort(120_000, 4 * 3_600_000) }
/** Whatever is written to find it again: a report goes out after so many floors. */
const REPORTED = 2_000

describe('random jobs, each floor laid and proved again', () => {
  test.each(SHARES)('%s: %i floors', TIMEOUT, (mode, wanted) => {
    const proof = new Proof(mode)
    for (let seed = 0, next = REPORTED; proof.proved < wanted; seed += 1) {
      proof.add(lay(seed, mode))
      if (proof.proved < next) continue
      console.info(proof.table())
      next += REPORTED
    }
    console.info(proof.table())
    expect(proof.faults).toEqual([])
    expect(proof.ofSound.laid / proof.ofSound.floors).toBeGreaterThanOrEqual(0.99)
  })
})

/** Every twentieth floor that is not small, and the first few with a joint that a post parted, which are rare. */
function sample(): readonly PublishedFloor[] {
  const floors = Array.from({ length: 120 }, (_, seed) => lay(seed, 'realistic').floors).flat()
  const large = floors.filter(({ pieces }) => pieces.length > 20)
  const parted = floors.filter(({ joints }) => joints.some((joint) => joint.parted))
  return [...large.filter((_, i) => i % 20 === 0), ...parted.slice(0, 2)]
}

test('falsified copies of real layouts are rejected, each with its own fault', TIMEOUT, () => {
  const floors = sample()
  for (const spoiler of SPOILERS) {
    const copies = floors.map((floor) => spoiled(floor, spoiler)).filter((copy) => copy !== null)
    for (const copy of copies) {
      const codes = verify({ ...asFile(), floors: [copy] }).faults.map(({ code }) => code)
      expect(codes, `${spoiler.name} on ${copy.floor}`).toContain(spoiler.fault)
    }
    expect(copies.length, `${spoiler.name}: floors that it applies to`).toBeGreaterThan(0)
  }
})
