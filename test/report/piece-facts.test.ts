import { describe, expect, test } from 'vitest'
import type { PublishedBreach, PublishedPiece } from '../../server/src/layout/published.ts'
import { breachText } from '../../server/src/report/breach-text.ts'
import { cutSize, lengthText, widthText } from '../../server/src/report/cut-size.ts'
import { pieceFacts } from '../../server/src/report/piece-facts.ts'
import { NM_PER_INCH } from '../../server/src/units/length.ts'

const inch = (n: number) => n * NM_PER_INCH

/** A piece from its corners in inches; `kept` names the factory edges that it keeps. */
function piece(corners: readonly (readonly [number, number])[], kept: string): PublishedPiece {
  const has = (edge: string) => kept.split(' ').includes(edge)
  return {
    piece: 1,
    course: 1,
    plank: 1,
    blank: 1,
    ring: corners.map(([u, v]) => [inch(u), inch(v)] as const),
    along: [0, inch(48)],
    across: [0, inch(6)],
    turned: false,
    factory: { left: has('left'), right: has('right'), low: has('low'), high: has('high') },
  }
}

const box = (long: number, wide: number) =>
  [
    [0, 0],
    [long, 0],
    [long, wide],
    [0, wide],
  ] as const

describe('a piece', () => {
  test('that keeps every edge is whole', () => {
    const facts = pieceFacts(piece(box(48, 6), 'left right low high'))
    expect(facts).toMatchObject({ cut: 'whole', sawnAt: 'neither end', shaped: false })
    expect(facts.length).toBe(inch(48))
    expect(facts.width).toEqual({ least: inch(6), most: inch(6) })
  })

  test.each([
    ['right low high', 'cut', 'left'],
    ['left low high', 'cut', 'right'],
    ['low high', 'cut', 'both ends'],
    ['left right high', 'rip', 'neither end'],
    ['right low', 'cut and rip', 'left'],
  ])('that keeps %s is %s, sawn at %s', (kept, cut, sawnAt) => {
    expect(pieceFacts(piece(box(20, 6), kept))).toMatchObject({ cut, sawnAt })
  })

  test('along a slanted wall has two widths and is shaped by no corner of its own', () => {
    const taper = piece(
      [
        [0, 0],
        [48, 0],
        [48, 3],
        [0, 4],
      ],
      'left right low',
    )
    expect(pieceFacts(taper)).toMatchObject({
      cut: 'rip',
      shaped: false,
      width: { least: inch(3), most: inch(4) },
    })
  })

  test('that tapers to a point is judged by its wider side', () => {
    const wedge = piece(
      [
        [0, 0],
        [48, 0],
        [0, 4],
      ],
      'left low',
    )
    expect(pieceFacts(wedge).width).toEqual({ least: inch(4), most: inch(4) })
  })

  test('notched round a post is cut to shape, as narrow as its narrowest leg', () => {
    const corners = [
      [0, 0],
      [20, 0],
      [20, 4],
      [24, 4],
      [24, 0],
      [48, 0],
      [48, 6],
      [0, 6],
    ] as const
    const notched = piece(corners, 'left right low high')
    expect(pieceFacts(notched)).toMatchObject({
      cut: 'cut',
      shaped: true,
      width: { least: inch(2), most: inch(6) },
    })
  })

  test('with a vertex that a neighbour put into a straight edge is not shaped by it', () => {
    const corners = [
      [0, 0],
      [30, 0],
      [48, 0],
      [48, 6],
      [0, 6],
    ] as const
    expect(pieceFacts(piece(corners, 'left right low high')).shaped).toBe(false)
  })
})

describe('sizes for the saw', () => {
  test('what is cut to fit goes down to the mark, never up', () => {
    expect(cutSize(inch(34) + inch(1) / 16 - 1, 'feet-inches')).toBe('34"')
    expect(cutSize(inch(34) + inch(1) / 16, 'feet-inches')).toBe('34 1/16"')
    expect(cutSize(863_999_999, 'mm')).toBe('863 mm')
  })

  test('what the factory made keeps its size', () => {
    const whole = pieceFacts(piece(box(47.244_094, 6), 'left right low high'))
    expect(lengthText({ ...whole, length: 1_200_000_000 }, 'mm')).toBe('1200 mm')
    expect(widthText({ least: 182_500_000, most: 182_500_000 }, 182_500_000, 'mm')).toBe('182.5 mm')
  })

  test('a breach by a hair never reads like the limit', () => {
    const hair: PublishedBreach = {
      rule: 'narrowest rip',
      value: inch(2) - 1,
      limit: inch(2),
      at: [0, 0],
      pieces: [1],
      direction: '',
    }
    expect(breachText(hair, 'feet-inches')).toBe('a piece 1 15/16" wide, at least 2" asked for')
  })
})
