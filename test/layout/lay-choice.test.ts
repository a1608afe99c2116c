import { describe, expect, test } from 'vitest'
import type { Floor, Product, ProductRules } from '../../server/src/job/job.ts'
import { floorArea } from '../../server/src/layout/area.ts'
import { layFloor, notLaid, type ToLay } from '../../server/src/layout/lay.ts'
import type { SurveyedRoom } from '../../server/src/survey/survey.ts'
import { floor, inch, job, product, room, shaped, survey } from './house.ts'

interface Given {
  readonly ways?: 'east-west' | 'north-south'
  readonly rules?: Partial<ProductRules>
  readonly product?: Partial<Product>
  readonly floor?: Partial<Floor>
}

/** One room, its planks 7 by 48 in without a gap at the walls. */
function toLay(den: SurveyedRoom, given: Given = {}): ToLay {
  const { ways = 'east-west', rules = {} } = given
  const laid = { ...product({ gap: { value: 0, span: null }, ...rules }), ...given.product }
  const only = floor(['den'], { running: { kind: 'ways', ways, span: SPAN }, ...given.floor })
  const from = { ...job(), products: [laid] }
  const rooms = survey([den])
  return {
    job: from,
    floor: only,
    product: laid,
    area: floorArea(from, rooms, only),
    survey: rooms,
  }
}

const SPAN = { file: 'test.floor', start: 0, end: 1 }
const lay = (...given: Parameters<typeof toLay>) => layFloor(toLay(...given))!
const wordsOf = ({ alternatives }: ReturnType<typeof lay>) => alternatives.map(({ words }) => words)

/** A room 288 by 23 in, and for 134 in of it deeper to the south. */
const deeper = (deep: number, by: number) =>
  shaped('den', [
    [0, deep],
    [288, deep],
    [288, 0],
    [134, 0],
    [134, -by],
    [0, -by],
  ])

const lineMoved = ({ messages }: ReturnType<typeof lay>) =>
  messages.filter(({ code }) => code === 'line-moved').map(({ text }) => text)

describe('the line leaves its balanced place', () => {
  // 23 = 2 × 7 + 9: 4 1/2 at either wall, 3 where it is 5 1/2 deeper. An inch off, 5 1/2, 3 1/2 and 2:
  // two strips that one plank gives, where it may be turned.
  const rules = { laid: 'either way' } as const
  const cheaper = deeper(23, 5.5)
  const single = { perBox: 1, lengths: [{ length: inch(48), perBox: 1 }] }

  test('to use fewer boxes', () => {
    const found = lay(cheaper, { rules, product: single })
    expect(found.line.moved).toBe(-inch(1))
    expect(lineMoved(found)).toEqual([
      'The line is moved 1" away from wall 0 of den from where first and last course would be equal: fewer boxes are needed so.',
    ])
    expect(wordsOf(found)).toEqual(['the balanced line', 'planks running the other way'])
    expect(found.boxes).toBeLessThan(found.alternatives[0]!.boxes)
  })

  test('but not to use fewer planks out of as many boxes', () => {
    const found = lay(cheaper, { rules })
    expect(found.line.moved).toBe(0)
    expect(lineMoved(found)).toEqual([])
    expect(wordsOf(found)).toEqual(['a line off the balanced one', 'planks running the other way'])
  })

  test('to leave no course too narrow', () => {
    // 27 = 2 × 7 + 13: 6 1/2 at either wall, 1/2 where it is an inch deeper. Half an inch off, 7 and 7.
    const found = lay(deeper(27, 1))
    expect(found.line.moved).toBe(-inch(1 / 2))
    expect(lineMoved(found)).toEqual([
      'The line is moved 1/2" away from wall 0 of den from where first and last course would be equal: fewer pieces elsewhere come out too narrow so.',
    ])
  })

  test('where the text says so, and then no other is tried', () => {
    const shift = { way: 'north', distance: inch(2), span: SPAN } as const
    const found = lay(cheaper, { rules, product: single, floor: { shift } })
    expect(found.line.moved).toBe(inch(2))
    expect(wordsOf(found)).toEqual(['planks running the other way'])
  })
})

test('the planks used are told by their length', () => {
  const lengths = [
    { length: inch(36), perBox: 4 },
    { length: inch(48), perBox: 6 },
  ]
  const { used, published } = lay(room('den', [0, 0, 144, 70]), { product: { lengths } })
  const planksOf = (length: number) =>
    published.planks.filter((plank) => plank.length === length).length
  expect(used).toEqual(lengths.map((each) => ({ ...each, planks: planksOf(each.length) })))
})

/** A room on its point, whose sides rise twice their run. */
const kite = shaped('den', [
  [-50, 0],
  [0, 100],
  [50, 0],
  [0, -100],
])

test('no other direction is told of where no edge runs that way', () => {
  expect(lay(kite, { ways: 'north-south' }).alternatives).toEqual([])
})

test('nor where it would cut the floor into too many pieces', () => {
  // A course 150000 in long has 3125 planks; across it lie 21429 courses.
  expect(lay(room('den', [0, 0, 150_000, 7])).alternatives).toEqual([])
})

describe('why a floor has no layout', () => {
  const saidOf = (...given: Parameters<typeof toLay>) => {
    const input = toLay(...given)
    expect(layFloor(input)).toBeNull()
    const { code, weight, text } = notLaid(input)
    return `${weight} ${code}: ${text}`
  }
  const den = room('den', [0, 0, 144, 70])

  test('the gaps leave nothing', () => {
    expect(saidOf(den, { rules: { gap: { value: inch(35), span: null } } })).toBe(
      'error nothing-to-lay: The gaps along the walls leave no floor for the planks. It has to be wider than the gaps at its two sides.',
    )
  })

  test('nothing runs along the planks', () => {
    expect(saidOf(kite)).toBe(
      'error nothing-to-lay: No edge of this floor runs along the planks, so laying has nothing to start along. The planks have to run more nearly along one of its walls.',
    )
  })

  test('too many planks', () => {
    // 144 × 70 ÷ (48 × 1/100) are 21000.
    expect(saidOf(den, { product: { width: inch(1) / 100 } })).toBe(
      'error floor-too-large: This floor would take more than 20000 planks. Look for a reading or a plank size that is out by far.',
    )
  })

  test('too many pieces', () => {
    expect(saidOf(room('den', [0, 0, 150_000, 7]), { ways: 'north-south' })).toBe(
      'error floor-too-large: This floor would be cut into more pieces than any floor has. Look for a reading or a plank size that is out by far.',
    )
  })
})
