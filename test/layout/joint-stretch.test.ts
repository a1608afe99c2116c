import { describe, expect, test } from 'vitest'
import { judged } from '../../server/src/layout/jointing.ts'
import { jointOneLength, unaligned } from '../../server/src/layout/one-length.ts'
import { jointRandomLengths } from '../../server/src/layout/random-lengths.ts'
import type { Place } from '../../server/src/layout/stretches.ts'
import { beside, layingAt, stretch } from './jointed.ts'
import { inches, plankRules } from './made-floors.ts'

const inInches = (joints: readonly number[]) => joints.map((u) => u / inches(1))

describe('with planks of 24 and 36 in', () => {
  const two = (...lengths: readonly number[]) =>
    plankRules({ lengths: lengths.map((each) => ({ length: inches(each), perBox: 5 })) })
  const rules = two(24, 36)

  function joints(
    place: Place,
    more: Parameters<typeof layingAt>[2] & { readonly of?: ReturnType<typeof two> } = {},
  ): readonly number[] {
    return inInches(jointRandomLengths(layingAt(place, more.of ?? rules, more), place).joints)
  }

  test('a stretch is cut out of whole planks where that goes', () => {
    expect(joints(stretch(36))).toEqual([])
    expect([[24], [36]]).toContainEqual(joints(stretch(60)))
    expect(joints(stretch(72))).toEqual([36])
  })

  // Of the joints that can be had, all but one stand in a doorway.
  test.each([
    ['at its left side', 60, [[24, 60]], [24]],
    ['at its right side', 60, [[0, 36]], [36]],
    [
      'between two',
      60,
      [
        [0, 27],
        [27, 60],
      ],
      [27],
    ],
    [
      'half a plank on',
      50,
      [
        [0, 18],
        [18, 50],
      ],
      [18],
    ],
  ] as const)('a joint may stand %s of a doorway', (_, to, doorways, expected) => {
    expect(joints(stretch(to, { doorways }))).toEqual(expected)
  })

  test.each([
    // Begun 8 in off a joint beside it, and with a plank on.
    ['the first', [[10.5, 46]], 18, [10]],
    ['the last', [[0, 35.5]], 100, [36]],
  ] as const)(
    '%s piece may be just as long as the shortest end',
    (_, doorways, joint, expected) => {
      expect(joints(stretch(46, { doorways }), { beside: beside(joint) })).toEqual(expected)
    },
  )

  test.each([
    ['begins', [[35, 37]], [8]],
    ['ends', [[7, 9]], [36]],
  ] as const)(
    'a whole plank is never too short: one of 8 in %s a stretch',
    (_, doorways, expected) => {
      expect(joints(stretch(44, { doorways }), { of: two(8, 36) })).toEqual(expected)
    },
  )

  // 24 + 36 wastes nothing, and no joint may stand at 36.
  const only24 = (seam: readonly [number, number] = [0, 60], narrow: Place['narrow'] = []) => ({
    ...stretch(60, { doorways: [[35, 37]], seam }),
    narrow,
  })

  test.each([
    ['eight inches off on the left', 16, [0, 60]],
    ['eight inches off on the right', 32, [0, 60]],
    ['at the left end of the seam', 20, [20, 60]],
    ['on the left of the seam', 20, [21, 60]],
    ['at the right end of the seam', 28, [0, 28]],
    ['on the right of the seam', 28, [0, 27]],
    ['in line where they do not touch any more', 24, [0, 23]],
    ['in line where they do not touch yet', 24, [25, 60]],
    ['near, but ours stands at the end of the seam', 20, [0, 24]],
    ['near, but ours stands at its beginning', 28, [24, 60]],
  ] as const)('a joint beside it does not count: %s', (_, joint, seam) => {
    expect(joints(only24(seam), { beside: beside(joint) })).toEqual([24])
  })

  test.each([
    ['less than eight inches off', 20, [0, 60]],
    ['just inside the seam on the left', 20, [19, 60]],
    ['just inside the seam on the right', 28, [0, 29]],
    ['in line at the left end of the seam', 24, [24, 60]],
    ['in line at its right end', 24, [0, 24]],
  ] as const)('a joint beside it is kept off: %s', (_, joint, seam) => {
    expect(joints(only24(seam), { beside: beside(joint) })).not.toContain(24)
  })

  test.each([
    ['ends where the next piece begins', { from: 20, to: 24 }],
    ['begins where a piece ends', { from: 24, to: 26 }],
  ])('floor too narrow is in one piece only if it %s', (_, { from, to }) => {
    expect(joints(only24([0, 60], [{ from: inches(from), to: inches(to) }]))).toEqual([24])
  })

  describe('a post', () => {
    test('takes a joint inside it', () => {
      expect(joints(stretch(60, { posts: [[22, 26]], doorways: [[35, 37]] }))).toEqual([24])
    })

    test('does not take one at its side', () => {
      const [joint, ...others] = joints(stretch(60, { posts: [[24, 28]] }))
      expect(others).toEqual([])
      expect(joint).toBeGreaterThan(24)
      expect(joint).toBeLessThan(28)
    })

    test('is parted in the middle if no joint falls into it', () => {
      const place = stretch(60, { posts: [[28, 32]] })
      const { joints: found, parted } = jointRandomLengths(layingAt(place, rules), place)
      expect([inInches(found), inInches(parted)]).toEqual([[30], [30]])
    })

    test('leaves less than a whole plank behind it, for its end is cut off', () => {
      expect(joints(stretch(65, { posts: [[28, 32]] }))).toEqual([30])
      const [first, ...others] = joints(stretch(66, { posts: [[28, 32]] }))
      expect(first).toBe(30)
      expect(others).toHaveLength(1)
    })
  })

  describe('how it lay before', () => {
    const guideOf = (place: Place, ...at: readonly number[]) =>
      judged(place, at.map(inches), [], rules)

    test('is kept if nothing else has as few breaches', () => {
      // A joint at 25 is not tried: no plank ends there.
      const place = stretch(60, {
        doorways: [
          [0, 25],
          [25, 60],
        ],
      })
      expect(joints(place, { guide: guideOf(place, 25) })).toEqual([25])
    })

    test('gives way to what costs less wood without more breaches', () => {
      const place = only24()
      expect(joints(place, { guide: guideOf(place, 30) })).toEqual([24])
    })

    test('gives way to what has fewer', () => {
      const place = only24()
      expect(joints(place, { guide: guideOf(place, 36) })).toEqual([24])
    })
  })
})

describe('with planks of 48 in', () => {
  const rules = plankRules()
  const sixteenth = inches(1 / 16)

  test('one that must only not be in line is begun at the first mark that is free', () => {
    const place = stretch(100)
    expect(unaligned(layingAt(place, rules), place).start).toBe(sixteenth)
    const laying = layingAt(place, rules, { beside: beside(1 / 16, 96.125) })
    expect(unaligned(laying, place).start).toBe(3 * sixteenth)
  })

  test('or a nanometre beside it, where there is a joint at each', () => {
    const place = stretch(100)
    const marks = Array.from({ length: 48 * 16 }, (_, i) => (i + 1) / 16)
    const laying = layingAt(place, rules, { beside: beside(...marks) })
    expect(unaligned(laying, place).start).toBe(sixteenth + 1)
    expect(jointOneLength(laying, place).start).toBe(sixteenth + 1)
    const two = [48, 36].map((length) => ({ length: inches(length), perBox: 5 }))
    const several = layingAt(place, { ...rules, lengths: two }, { beside: beside(...marks) })
    expect(jointRandomLengths(several, place).start).toBe(sixteenth + 1)
  })

  const startAt = (to: number, more: Parameters<typeof layingAt>[2] = {}) => {
    const place = stretch(to)
    return jointOneLength(layingAt(place, rules, more), place).start / inches(1)
  }

  test('one with nothing beside it begins as the pattern says, to the sixteenth', () => {
    expect(startAt(110, { begin: [1, 1] })).toBe(48)
    // 48 × 2 ÷ 5 = 19.2.
    expect(startAt(110, { begin: [2, 5] })).toBe(19.1875)
  })

  test('one no longer than a plank is one piece all the same', () => {
    expect(startAt(48, { begin: [1, 2] })).toBe(48)
    expect(startAt(47, { begin: [1, 2] })).toBe(47)
    expect(startAt(49, { begin: [1, 2] })).toBe(24)
  })

  test('laid again it takes what costs least', () => {
    const guide = judged(stretch(96), [24, 72].map(inches), [], rules)
    expect(startAt(96, { begin: [1, 2] })).toBe(24)
    expect(startAt(96, { begin: [1, 2], guide })).toBe(48)
  })
})
