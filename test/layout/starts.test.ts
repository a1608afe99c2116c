import { describe, expect, test } from 'vitest'
import type { Jointing } from '../../server/src/layout/jointing.ts'
import {
  markOf,
  ownStarts,
  startsBeside,
  startsFromRests,
  tightStarts,
  wrapped,
} from '../../server/src/layout/starts.ts'
import type { Rest } from '../../server/src/layout/stock.ts'
import type { Place } from '../../server/src/layout/stretches.ts'
import { NM_PER_INCH, NM_PER_MM } from '../../server/src/units/length.ts'
import { inches, plankRules } from './made-floors.ts'

const rules = plankRules()
const inInches = (starts: readonly number[]) => starts.map((start) => start / NM_PER_INCH)
const spans = (...pairs: readonly (readonly [number, number])[]) =>
  pairs.map(([from, to]) => ({ from: inches(from), to: inches(to) }))

/** A stretch from 10 in to 140 in. */
function place(more: Partial<Place> = {}): Place {
  const [from, to] = [inches(10), inches(140)]
  const plain = { from, to, length: to - from, posts: [], doorways: [], narrow: [] }
  return { ...plain, touches: [], beyond: [], ...more } as unknown as Place
}

test('lengths chosen freely are cut to a sixteenth, for a metric plank to a millimetre', () => {
  expect(markOf(inches(48))).toBe(NM_PER_INCH / 16)
  expect(markOf(inches(47.9375))).toBe(NM_PER_INCH / 16)
  expect(markOf(1200 * NM_PER_MM)).toBe(NM_PER_MM)
})

test('a start piece is no longer than a plank, nor than its stretch', () => {
  expect([0, 48, 49, -1, -48, 30].map((start) => wrapped(start, 48, 130))).toEqual([
    48, 48, 1, 47, 48, 30,
  ])
  expect(wrapped(30, 48, 20)).toBe(20)
})

describe('start pieces worth trying in a stretch 130 in long', () => {
  // A plank and the shortest end at either end; a half, a third and two thirds of a plank.
  const always = [48, 130, 10, 120, 24, 16, 32]

  test('whatever lies beside it', () => {
    expect(inInches(ownStarts(place(), rules))).toEqual(always)
  })

  test('with a joint in the middle and the quarters of a post, and at both sides of a doorway', () => {
    const found = ownStarts(place({ posts: spans([60, 68]), doorways: spans([80, 122]) }), rules)
    expect(inInches(found)).toEqual([...always, 54, 52, 56, 70, 112])
  })

  test('at which something just fits', () => {
    const own = place({ doorways: spans([80, 122]), narrow: spans([20, 30]) })
    // Its ends, the shortest end off them, the doorway's and the narrow part's sides; less 10 each.
    expect(inInches(tightStarts(own, [], rules))).toEqual([0, 130, 10, 120, 70, 112, 10, 20])
  })

  test('a stagger off what just fits beside it, and off that in the next course but one', () => {
    const beside = place({ from: inches(20), to: inches(100) })
    const touching = place({ touches: [{ other: 0, from: inches(20), to: inches(100) }] })
    const own = [0, 130, 10, 120, 10, 90]
    expect(inInches(tightStarts(touching, [beside], rules))).toEqual([
      ...own,
      ...[20, 100, 30, 90].flatMap((u) => [u - 8 - 10, u + 8 - 10]),
    ])
    const far = place({ beyond: [{ between: 1, other: 0 }] })
    expect(inInches(tightStarts(far, [beside], rules))).toEqual([
      ...own.slice(0, 4),
      ...[20, 100, 30, 90].flatMap((u) => [u - 10, u - 16 - 10, u + 16 - 10]),
    ])
  })

  test.each([
    ['the rest of an end piece begins it', { right: true }, false, [20]],
    ['the rest of a start piece ends it', { left: true }, false, [110]],
    ['turned it does either', { right: true }, true, [20, 110]],
    ['turned the other does either', { left: true }, true, [20, 110]],
    ['a strip does both', { left: true, right: true }, false, [20, 110]],
    ['what has no made end does neither', {}, true, []],
  ] as const)('from rests: %s', (_, ends, mayTurn, starts) => {
    const rest = { length: inches(20), left: false, right: false, ...ends } as Rest
    expect(inInches(startsFromRests(place(), [rest], mayTurn))).toEqual(starts)
  })

  test('a stagger off the joints beside it, first with some to spare', () => {
    const joints = [inches(50), inches(90)]
    const random = { joints, phase: -1 } as unknown as Jointing
    expect(inInches(startsBeside(place(), random, rules))).toEqual([
      31.75, 48.25, 32, 48, 71.75, 88.25, 72, 88,
    ])
    const alike = { joints, phase: inches(2) } as unknown as Jointing
    expect(inInches(startsBeside(place(), alike, rules))).toEqual([-16.25, 0.25, -16, 0])
    const atPlank = { joints, phase: 0 } as unknown as Jointing
    expect(inInches(startsBeside(place(), atPlank, rules))).toEqual([-18.25, -1.75, -18, -2])
  })
})
