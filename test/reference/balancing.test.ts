import { describe, expect, test } from 'vitest'
import { balanceCourses } from '../../server/src/layout/balance.ts'
import { inches } from '../layout/made-floors.ts'

/** First, full ones, last, in inches; 0 for a course that is one of the full ones. */
type Widths = readonly [number, number, number]

/** The trade page's balancing table: computed, no published source. */
const TABLE: readonly {
  readonly wall: number
  readonly plank: number
  readonly gap: number
  readonly answers: readonly Widths[]
}[] = [
  {
    wall: 142.5,
    plank: 7,
    gap: 1 / 4,
    answers: [
      [4.5, 19, 4.5],
      [0, 20, 2],
    ],
  },
  { wall: 121, plank: 6, gap: 1 / 4, answers: [[3.25, 19, 3.25]] },
  { wall: 126.5, plank: 7, gap: 1 / 4, answers: [[0, 18, 0]] },
  {
    wall: 147.5,
    plank: 7.5,
    gap: 1 / 4,
    answers: [
      [6, 18, 6],
      [0, 19, 4.5],
    ],
  },
  { wall: 5.5, plank: 7, gap: 1 / 4, answers: [[0, 0, 5]] },
]

describe('balancing (computed)', () => {
  test.each(TABLE)('$wall in wall to wall, $plank in plank', ({ wall, plank, gap, answers }) => {
    const clear = inches(wall - 2 * gap)
    const found = balanceCourses({ least: clear, most: clear }, inches(plank), inches(2))
    const widths = found.map(({ first, full, last }) => [
      first === null ? 0 : Number(first.n) / Number(first.d) / inches(1),
      full,
      last === null ? 0 : Number(last.n) / Number(last.d) / inches(1),
    ])
    expect(widths).toEqual(answers)
  })

  test('a balanced rip is never under half a plank', () => {
    for (let clear = 8; clear < 200; clear += 1 / 8) {
      const width = inches(clear)
      for (const { first, last, way } of balanceCourses(
        { least: width, most: width },
        inches(7),
        inches(2),
      )) {
        if (way !== 'balanced') continue
        expect(2n * first!.n).toBeGreaterThanOrEqual(BigInt(inches(7)) * first!.d)
        expect(last).toEqual(first)
      }
    }
  })
})
