import { describe, expect, test } from 'vitest'
import { verify } from '../../server/src/verify/verify.ts'
import { HAND_MADE, layouts } from './hand-made.ts'

const JUNK: readonly unknown[] = [
  undefined,
  null,
  true,
  0,
  -0,
  -1,
  0.5,
  Number.NaN,
  Number.NEGATIVE_INFINITY,
  10 ** 15,
  -(10 ** 15),
  2 ** 53,
  1n,
  '',
  '__proto__',
  [],
  [[]],
  [0, 0],
  {},
  { __proto__: null },
  () => 0,
  Symbol('layout'),
  new Map(),
]

/** Numbers from a seed: a linear congruence with the constants of Numerical Recipes (from memory). */
function numbers(seed: number): (below: number) => number {
  let state = seed
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return Math.floor((state / 2 ** 32) * below)
  }
}

/** Every place in a tree of lists and objects, as the holder and its key. */
function places(node: unknown, into: [Record<string, unknown>, string][] = []) {
  if (typeof node !== 'object' || node === null) return into
  for (const [key, child] of Object.entries(node)) {
    into.push([node as Record<string, unknown>, key])
    places(child, into)
  }
  return into
}

describe('nothing throws', () => {
  test.each(JUNK.map((junk) => [typeof junk, junk] as const))('a file that is a %s', (_, junk) => {
    const report = verify(junk)
    expect(report.sound).toBe(false)
    expect(report.faults[0]!.code).toBe('not-readable')
  })

  test('1000 layouts with one to three values replaced by junk', () => {
    const pick = numbers(7)
    let unsound = 0
    for (let run = 0; run < 1000; run += 1) {
      const copy = structuredClone(layouts(HAND_MADE[run % HAND_MADE.length]!))
      const all = places(copy)
      for (let i = pick(3); i >= 0; i -= 1) {
        const [holder, key] = all[pick(all.length)]!
        holder[key] = JUNK[pick(JUNK.length)]
      }
      unsound += verify(copy).sound ? 0 : 1
    }
    expect(unsound).toBeGreaterThan(800)
  })

  test('1000 layouts with one number moved', () => {
    const pick = numbers(11)
    for (let run = 0; run < 1000; run += 1) {
      const copy = structuredClone(layouts(HAND_MADE[run % HAND_MADE.length]!))
      const all = places(copy).filter(([holder, key]) => typeof holder[key] === 'number')
      const [holder, key] = all[pick(all.length)]!
      holder[key] = (holder[key] as number) + [1, -1, 10 ** 9, -(10 ** 14)][pick(4)]!
      expect(() => verify(copy)).not.toThrow()
    }
  })

  test('a file of another kind is not told value by value', () => {
    const floor = { ...HAND_MADE[0]!, pieces: Array(100_000).fill('piece') }
    expect(verify(layouts(floor)).faults.length).toBeLessThan(200)
  })
})
