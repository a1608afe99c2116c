import { describe, expect, test } from 'vitest'
import { verify } from '../../server/src/verify/verify.ts'
import { effort } from '../effort.ts'
import type { Mode } from '../generate/draw.ts'
import { SPOILERS, spoiled } from '../verify/spoil.ts'
import { asFile, lay, Proof } from './random-floors.ts'

/** Floors, not jobs: so many are laid and proved, or a few more. */
const SHARES = [
  ['realistic', effort(150, 14_000)],
  ['nasty', effort(50, 6_000)],
] as const
const TIMEOUT = { timeout: effort(120_000, 8 * 3_600_000) }
/** After so many floors what was found so far is told: a long run can be watched, and broken off. */
const TOLD_EVERY = 1_000

const proofs = new Map<Mode, Proof>()

/** So many floors of a mode, laid once whichever test asks for them. */
async function proofOf(mode: Mode, floors: number): Promise<Proof> {
  const proof = proofs.get(mode) ?? new Proof(mode)
  proofs.set(mode, proof)
  while (proof.proved < floors) {
    const thousands = Math.floor(proof.proved / TOLD_EVERY)
    proof.add(lay(proof.jobs, mode))
    if (Math.floor(proof.proved / TOLD_EVERY) === thousands) continue
    console.info(proof.table())
    // What is told goes out only while nothing else runs.
    await new Promise((resolve) => setTimeout(resolve, 100))
  }
  return proof
}

describe('random jobs, each floor laid and proved again', () => {
  test.each(SHARES)('%s: %i floors', TIMEOUT, async (mode, floors) => {
    const proof = await proofOf(mode, floors)
    console.info(proof.table())
    expect(proof.faults).toEqual([])
    expect(proof.ofSound.laid / proof.ofSound.floors).toBeGreaterThanOrEqual(0.99)
  })
})

/** Joints that a post parted are rare: these nasty jobs have some. */
const WITH_PARTED_JOINTS = [103, 223]

test(
  'falsified copies of real layouts are rejected, each with its own fault',
  TIMEOUT,
  async () => {
    const parted = WITH_PARTED_JOINTS.flatMap((seed) => lay(seed, 'nasty').floors)
    const { samples } = await proofOf(...SHARES[0])
    const floors = [...samples, ...parted]
    for (const spoiler of SPOILERS) {
      const copies = floors.map((floor) => spoiled(floor, spoiler)).filter((copy) => copy !== null)
      for (const copy of copies) {
        const codes = verify({ ...asFile(), floors: [copy] }).faults.map(({ code }) => code)
        expect(codes, `${spoiler.name} on ${copy.floor}`).toContain(spoiler.fault)
      }
      expect(copies.length, `${spoiler.name}: floors that it applies to`).toBeGreaterThan(0)
    }
  },
)
