import { describe, expect, test } from 'vitest'
import { type Lying, overlapMessages } from '../../server/src/survey/overlaps.ts'
import { NM_PER_INCH } from '../../server/src/units/length.ts'

/** A floor 100" from south to north, from one place to another along them, in inches. */
function floor(name: string, west: number, east: number, south = 0): Lying {
  const [w, e, s, n] = [west, east, south, south + 100].map((inch) => inch * NM_PER_INCH) as [
    number,
    number,
    number,
    number,
  ]
  const ring = [
    { x: w, y: s },
    { x: e, y: s },
    { x: e, y: n },
    { x: w, y: n },
  ]
  return { name, ring, span: { file: 'job.floor', start: west + 1000, end: west + 1001 } }
}

const said = (...floors: readonly Lying[]) =>
  overlapMessages(floors, 'feet-inches').map(({ text }) => text.split('. ')[0])

describe('floors over each other', () => {
  // A strip w wide and 100" long counts from 100·w > (100 + w)/2 on: 0.5025".
  test.each([
    [0, 0],
    [0.25, 0],
    [0.5, 0],
    [0.6, 1],
    [1, 1],
  ])('%f" wide', (wide, count) => {
    expect(said(floor('a', 0, 120), floor('b', 120 - wide, 240))).toHaveLength(count)
  })

  test('are told in the order written, the later one over the earlier', () => {
    // 10 · 100, 90 · 100 and 5 · 100 square inches.
    const house = [
      floor('a', 100, 200),
      floor('b', 0, 110),
      floor('c', 190, 300),
      floor('d', 105, 195),
    ]
    expect(said(...house)).toEqual([
      'b lies over a by 6.9 sq ft',
      'c lies over a by 6.9 sq ft',
      'd lies over b by 3.5 sq ft',
      'd lies over a by 62.5 sq ft',
      'd lies over c by 3.5 sq ft',
    ])
    const [first] = overlapMessages(house, 'feet-inches')
    expect(first).toMatchObject({ weight: 'warning', span: { start: 1000 } })
    expect(first!.related).toMatchObject([{ text: 'a.', span: { start: 1100 } }])
  })

  test('that begin at one place too', () => {
    expect(said(floor('a', 0, 120), floor('b', 0, 60), floor('c', 0, 12))).toEqual([
      'b lies over a by 41.7 sq ft',
      'c lies over a by 8.3 sq ft',
      'c lies over b by 8.3 sq ft',
    ])
  })

  test('not those that only lie north or east of each other', () => {
    expect(said(floor('a', 0, 120), floor('b', 0, 120, 100), floor('c', 130, 240, 50))).toEqual([])
  })
})
