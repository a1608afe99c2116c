import { describe, expect, test } from 'vitest'
import type { Product } from '../../server/src/job/job.ts'
import type { FloorArea } from '../../server/src/layout/floor-area.ts'
import { EAST_WEST, NORTH_SOUTH } from '../../server/src/layout/frame.ts'
import { hasTooManyPieces, takesTooManyPlanks } from '../../server/src/layout/how-large.ts'
import { plankRules } from '../../server/src/layout/plank-rules.ts'
import { ratio } from '../../server/src/units/ratio.ts'
import { job } from './house.ts'
import { inches, plankRules as rulesWith } from './made-floors.ts'

const rules = rulesWith()

/** A floor of one rectangle, in nm. */
function rectangle(length: number, width: number): FloorArea {
  const [x, y] = [inches(30), inches(-50)]
  const ring = [
    { x, y },
    { x: x + length, y },
    { x: x + length, y: y + width },
    { x, y: y + width },
  ]
  const rim = ring.map((from, i) => ({ from, to: ring[(i + 1) % 4]! }))
  return { gross: [ring], rim } as unknown as FloorArea
}

describe('a floor is too large', () => {
  test('for more than 20 000 planks by its area', () => {
    const [length, width] = [inches(48) * 200, inches(7) * 100]
    expect(takesTooManyPlanks(rectangle(length, width), rules)).toBe(false)
    expect(takesTooManyPlanks(rectangle(length + 1, width), rules)).toBe(true)
  })

  test('for planks of the least length that a box brings', () => {
    const lengths = [48, 24].map((length) => ({ length: inches(length), perBox: 4 }))
    const floor = rectangle(inches(24) * 200, inches(7) * 100)
    expect(takesTooManyPlanks(floor, { ...rules, lengths })).toBe(false)
    expect(
      takesTooManyPlanks(rectangle(inches(48) * 200, inches(7) * 100), { ...rules, lengths }),
    ).toBe(true)
  })

  test('for planks without a size, however little it is', () => {
    const floor = rectangle(1, 1)
    expect(takesTooManyPlanks(floor, { ...rules, width: 0 })).toBe(true)
    expect(takesTooManyPlanks(floor, { ...rules, lengths: [{ length: 0, perBox: 1 }] })).toBe(true)
    expect(takesTooManyPlanks(floor, rules)).toBe(false)
  })

  test('for more pieces than 20 000 and four for a wall, by its rim', () => {
    // 20 000 planks long and 16 wide: 20 000 along its two long walls, 16 along its two short ones.
    const just = rectangle(inches(48) * 20_000, inches(7) * 16)
    const over = rectangle(inches(48) * 20_000, inches(7) * 17)
    expect(hasTooManyPieces(just, EAST_WEST, rules)).toBe(false)
    expect(hasTooManyPieces(over, EAST_WEST, rules)).toBe(true)
    expect(
      hasTooManyPieces(rectangle(inches(7) * 16, inches(48) * 20_000), NORTH_SOUTH, rules),
    ).toBe(false)
    expect(hasTooManyPieces(just, NORTH_SOUTH, rules)).toBe(true)
  })
})

describe('the rules of a product', () => {
  const [product] = job().products
  const spoilOf = (spoil: Product['spoil']) => {
    const { spoilPlanks, spoilPercent } = plankRules(job(), { ...product!, spoil })
    return { spoilPlanks, spoilPercent }
  }

  test('tell how many planks are spoilt, by count or by share', () => {
    expect(spoilOf({ planks: 3, percent: null, span: null })).toEqual({
      spoilPlanks: 3,
      spoilPercent: null,
    })
    expect(spoilOf({ planks: null, percent: ratio(15, 2), span: null })).toEqual({
      spoilPlanks: 0,
      spoilPercent: { n: '15', d: '2' },
    })
  })
})
