import { describe, expect, test } from 'vitest'
import type { Product } from '../../server/src/job/job.ts'
import type { LaidFloor } from '../../server/src/layout/lay.ts'
import { printAmount } from '../../server/src/takeoff/amount.ts'
import { productQuantities } from '../../server/src/takeoff/product-quantities.ts'
import { ratio } from '../../server/src/units/ratio.ts'

const INCH = 25_400_000
const SPAN = { file: 'a.floor', start: 0, end: 1 }

interface Stated {
  /** Planks in a box by length in inches. */
  readonly lengths?: Readonly<Record<number, number>>
  readonly planks?: number
  readonly percent?: number
  readonly spares?: { readonly planks: number; readonly boxes: number }
}

function product({ lengths = { 48: 10 }, planks, percent, spares }: Stated): Product {
  const counts = Object.entries(lengths).map(([inches, perBox]) => ({
    length: Number(inches) * INCH,
    perBox,
  }))
  return {
    name: { key: 'board', text: 'board' },
    span: SPAN,
    perBox: counts.reduce((sum, { perBox }) => sum + perBox, 0),
    lengths: counts,
    spoil: {
      planks: planks ?? null,
      percent: percent === undefined ? null : ratio(percent * 10, 10),
      span: planks === undefined && percent === undefined ? null : SPAN,
    },
    spares: spares ?? { planks: 0, boxes: 0 },
  } as unknown as Product
}

/** A floor that uses so many planks of each length in inches. */
function floor(used: Readonly<Record<number, number>>): LaidFloor {
  const planks = Object.entries(used).flatMap(([inches, count]) =>
    Array.from({ length: count }, () => ({ length: Number(inches) * INCH })),
  )
  return {
    floor: { name: { text: 'den' }, span: SPAN },
    published: { planks },
  } as unknown as LaidFloor
}

function counts(stated: Stated, ...used: readonly Readonly<Record<number, number>>[]) {
  const { quantities } = productQuantities(product(stated), used.map(floor))
  return Object.fromEntries(quantities.map(({ key, value }) => [key, Number(value!.n)]))
}

describe('what is bought of one length', () => {
  test.each([
    // planks, spoil and spares in whole boxes of 10; what is left keeps the spares.
    ['two planks of spoil where nothing is said', {}, 38, [2, 0, 4, 0]],
    ['one plank more makes one box more', {}, 39, [2, 0, 5, 9]],
    ['one plank of spoil counts as two', { planks: 1 }, 38, [2, 0, 4, 0]],
    ['three count as three', { planks: 3 }, 37, [3, 0, 4, 0]],
    ['a part of a plank of spoil is a plank', { percent: 10 }, 31, [4, 0, 4, 5]],
    ['a whole percentage is exact', { percent: 10 }, 30, [3, 0, 4, 7]],
    ['a percentage may have decimals', { percent: 2.5 }, 100, [3, 0, 11, 7]],
    ['planks and a percentage add up', { planks: 2, percent: 10 }, 30, [5, 0, 4, 5]],
    ['spares come in planks and in boxes', { spares: { planks: 3, boxes: 2 } }, 5, [2, 23, 3, 23]],
  ] as const)('%s', (_, stated, planks, [spoil, spares, boxes, left]) => {
    expect(counts(stated, { 48: planks })).toEqual({
      planks,
      spoil,
      spares,
      boxes,
      'planks left': left,
    })
  })

  test('planks of all floors together are rounded up once', () => {
    expect(counts({}, { 48: 14 }, { 48: 14 })).toMatchObject({ planks: 28, boxes: 3 })
  })
})

describe('what is bought of several lengths', () => {
  const lengths = { 24: 2, 48: 4, 60: 1 }

  test('the length that runs out first says how many boxes', () => {
    expect(counts({ lengths }, { 24: 1, 48: 1, 60: 5 }).boxes).toBe(5)
    expect(counts({ lengths }, { 24: 9, 48: 1, 60: 1 }).boxes).toBe(5)
    expect(counts({ lengths }, { 24: 1, 48: 20, 60: 1 }).boxes).toBe(5)
  })

  test('over all floors, and never fewer than all planks need', () => {
    expect(counts({ lengths }, { 60: 2 }, { 60: 4 }).boxes).toBe(6)
    expect(counts({ lengths }, { 24: 4, 48: 8, 60: 2 }).boxes).toBe(3)
  })
})

test.each([
  [1, 'planks', '1 plank'],
  [2, 'planks', '2 planks'],
  [0, 'planks', '0 planks'],
  [1, 'boxes', '1 box'],
  [3, 'boxes', '3 boxes'],
  [1, 'pieces', '1 piece'],
  [7, 'pieces', '7 pieces'],
  [1, 'sq ft', '1.0 sq ft'],
  [1, 'm', '1.0 m'],
] as const)('%d %s is printed %s', (value, unit, text) => {
  expect(printAmount(ratio(value), unit)).toBe(text)
})
