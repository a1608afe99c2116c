import { describe, expect, test } from 'vitest'
import type { Line } from '../../server/src/geometry/exact.ts'
import { anyMeeting, type Meeting, meeting } from '../../server/src/geometry/meet.ts'

type Ends = readonly [number, number, number, number]
const line = ([x, y, toX, toY]: Ends): Line => ({ from: { x, y }, to: { x: toX, y: toY } })

/** The same two lines turned by quarters, mirrored and moved far off. */
const MOVED: readonly ((ends: Ends) => Ends)[] = [
  (ends) => ends,
  ([x, y, toX, toY]) => [-y, x, -toY, toX],
  ([x, y, toX, toY]) => [-x, -y, -toX, -toY],
  ([x, y, toX, toY]) => [y, x, toY, toX],
  ([x, y, toX, toY]) => [x + 4e9, y - 7e9, toX + 4e9, toY - 7e9],
]

const backward = ([x, y, toX, toY]: Ends): Ends => [toX, toY, x, y]

const CASES: readonly (readonly [string, Ends, Ends, Meeting])[] = [
  ['far off', [0, 0, 10, 0], [0, 5, 10, 5], 'apart'],
  ['in line, a blank between', [0, 0, 10, 0], [12, 0, 20, 0], 'apart'],
  ['in line and slanted, a blank between', [0, 0, 10, 5], [12, 6, 20, 10], 'apart'],
  ['beside each other', [0, 0, 10, 5], [0, 1, 10, 6], 'apart'],
  ['the first points past the second', [0, 0, 4, 2], [5, 0, 5, 9], 'apart'],
  ['both point past each other', [0, 0, 10, 1], [11, -5, 12, 0], 'apart'],
  ['boxes overlap, lines do not', [0, 0, 10, 10], [6, 5, 9, 1], 'apart'],
  ['in line with an end, past it', [0, 0, 10, 0], [12, 0, 12, 5], 'apart'],
  ['a corner', [0, 0, 10, 0], [10, 0, 10, 5], 'end to end'],
  ['straight on', [0, 0, 10, 0], [10, 0, 20, 0], 'end to end'],
  ['straight on, slanted', [0, 0, 10, 4], [10, 4, 15, 6], 'end to end'],
  ['a sharp corner', [0, 0, 10, 0], [10, 0, 0, 1], 'end to end'],
  ['a cross', [0, 0, 10, 10], [0, 10, 10, 0], 'across'],
  ['a tee', [0, 0, 10, 0], [4, 0, 4, 5], 'across'],
  ['a tee on a slant', [0, 0, 10, 5], [4, 2, 0, 9], 'across'],
  ['an overlap', [0, 0, 10, 0], [5, 0, 15, 0], 'across'],
  ['an overlap on a slant', [0, 0, 10, 5], [4, 2, 12, 6], 'across'],
  ['one within the other', [0, 0, 10, 0], [3, 0, 7, 0], 'across'],
  ['one within the other from its end', [0, 0, 10, 0], [0, 0, 7, 0], 'across'],
  ['one within the other from its end, slanted', [0, 0, 10, 5], [0, 0, 4, 2], 'across'],
]

describe('how two lines lie to each other', () => {
  test.each(CASES)('%s', (_, a, b, how) => {
    for (const move of MOVED) {
      for (const [one, other] of [
        [a, b],
        [b, a],
        [backward(a), b],
        [a, backward(b)],
        [backward(a), backward(b)],
      ] as const) {
        expect(meeting(line(move(one)), line(move(other)))).toBe(how)
      }
    }
  })

  test('the same line is back to back one way and overlaps the other', () => {
    const ends: Ends = [2, 3, 10, 7]
    expect(meeting(line(ends), line(backward(ends)))).toBe('back to back')
    expect(meeting(line(ends), line(ends))).toBe('across')
  })
})

describe('any two lines of many', () => {
  const square = [
    [0, 0, 10, 0],
    [10, 0, 10, 10],
    [10, 10, 0, 10],
    [0, 10, 0, 0],
  ] as const satisfies readonly Ends[]

  test('each meeting is asked about, but for those apart', () => {
    const asked = new Set<string>()
    const lines = [...square, [0, 0, 10, 10] as const].map(line)
    expect(anyMeeting(lines, (how, i, j) => Boolean(asked.add(`${how} ${i} ${j}`)))).toBe(false)
    const corner = (pair: string) => `end to end ${pair}`
    expect([...asked].sort()).toEqual(
      ['0 1', '0 3', '0 4', '1 2', '1 4', '2 3', '2 4', '3 4'].map(corner),
    )
  })

  test('one that is refused is enough', () => {
    const crossed = [...square, [-1, 5, 4, 5] as const].map(line)
    expect(anyMeeting(crossed, (how) => how !== 'across')).toBe(true)
    expect(anyMeeting(square.map(line), (how) => how !== 'across')).toBe(false)
    expect(anyMeeting([], () => false)).toBe(false)
  })
})
