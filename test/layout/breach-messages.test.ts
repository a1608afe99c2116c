import { describe, expect, test } from 'vitest'
import { breachMessages } from '../../server/src/layout/breach-messages.ts'
import type { PublishedBreach, PublishedFloor } from '../../server/src/layout/published.ts'
import { inch } from './house.ts'

const span = { file: 'job.floor', start: 3, end: 9 }

function breach(
  rule: PublishedBreach['rule'],
  value: number,
  limit: number,
  more: Partial<PublishedBreach> = {},
): PublishedBreach {
  return {
    rule,
    value: inch(value),
    limit: inch(limit),
    at: [0, 0],
    pieces: [7],
    direction: '',
    ...more,
  }
}

/** Piece 7 is in course 1, which is laid third, piece 8 in course 2. */
function said(...breaches: readonly PublishedBreach[]): readonly string[] {
  const pieces = [
    { piece: 7, course: 1 },
    { piece: 8, course: 2 },
  ]
  const courses = [
    { course: 1, order: 3 },
    { course: 2, order: 2 },
  ]
  const floor = { breaches, pieces, courses } as unknown as PublishedFloor
  return breachMessages(floor, 'inches', span).map(({ weight, code, text, span: at }) => {
    expect([weight, at]).toEqual(['warning', span])
    return `${code}: ${text}`
  })
}

describe('a warning for each soft rule that is broken', () => {
  test.each([
    [
      'stagger',
      6,
      8,
      'stagger: Two joints stand nearer than the 8" stagger, 6" apart in course 1.',
    ],
    ['shortest end', 5, 8, 'shortest-end: A piece is shorter than 8", 5" in course 1.'],
    ['narrowest rip', 1, 2, 'narrowest-rip: A piece is narrower than 2", 1" in course 1.'],
    [
      'doorway joint',
      4,
      0,
      'doorway-joint: An end joint stands in or within 6" of a doorway, 4" inside that stretch in course 1.',
    ],
  ] as const)('once: %s', (rule, value, limit, text) => {
    expect(said(breach(rule, value, limit))).toEqual([`${text} No better layout was found.`])
  })

  test.each([
    [
      'stagger',
      [6, 4, 5],
      8,
      'stagger: 3 pairs of joints stand nearer than the 8" stagger, the nearest 4" apart in course 2.',
    ],
    [
      'shortest end',
      [6, 4, 5],
      8,
      'shortest-end: 3 pieces are shorter than 8", the shortest 4" in course 2.',
    ],
    [
      'narrowest rip',
      [1.5, 0.5, 1],
      2,
      'narrowest-rip: 3 pieces are narrower than 2", the narrowest 1/2" in course 2.',
    ],
    [
      'doorway joint',
      [4, 6, 5],
      0,
      'doorway-joint: 3 end joints stand in or within 6" of a doorway, the worst 6" inside that stretch in course 2.',
    ],
  ] as const)('the worst of several: %s', (rule, values, limit, text) => {
    const breaches = values.map((value, i) =>
      breach(rule, value, limit, { pieces: [i === 1 ? 8 : 7] }),
    )
    expect(said(...breaches)).toEqual([`${text} No better layout was found.`])
  })

  test('the first of several as bad', () => {
    expect(said(breach('stagger', 4, 8), breach('stagger', 4, 8, { pieces: [8] }))[0]).toContain(
      'in course 1',
    )
  })

  test('the longest run tells which way it goes, and the longer of two', () => {
    const run = (value: number, limit: number, direction: 'along' | 'across') =>
      breach('longest run', value, limit, { direction, pieces: [] })
    expect(said(run(300, 250, 'along'), run(240, 200, 'across'))).toEqual([
      'longest-run: The floor runs 300" along the planks without a break, over the 250" that the product allows. No better layout was found.',
    ])
    expect(said(run(240, 200, 'across'), run(300, 250, 'along'))[0]).toContain('runs 300" along')
    expect(said(run(300, 290, 'along'), run(240, 200, 'across'))[0]).toContain('runs 240" across')
  })
})
