import { describe, expect, test } from 'vitest'
import { contactsAlong, contactsUp } from '../../server/src/geometry/contacts.ts'
import { outlinesOf, type Part, partsOf } from '../../server/src/geometry/outline.ts'
import type { Ring } from '../../server/src/geometry/point.ts'
import { cutLevel, cutUpright } from '../../server/src/geometry/split.ts'
import { rectangle } from './regions.ts'

const points = (...pairs: readonly (readonly [number, number])[]): Ring =>
  pairs.map(([x, y]) => ({ x, y }))

/** A square room with a post across the line at 20 and a wall end that comes down to it. */
const ROOM = [
  rectangle(0, 0, 90, 40),
  points([30, 10], [30, 30], [40, 30], [40, 10]),
  points([60, 20], [60, 35], [65, 35], [65, 20]),
]

const contact = (below: number, above: number, from: number, to: number) => ({
  below,
  above,
  from,
  to,
})

describe('where the parts on both sides of a cut meet', () => {
  test('one part below and one above, parted by a post and by a wall end', () => {
    const [below, above] = cutLevel(outlinesOf(ROOM), [20])
    expect([below!.length, above!.length]).toEqual([1, 1])
    expect(contactsAlong(below!, above!, 20)).toEqual([
      contact(0, 0, 0, 30),
      contact(0, 0, 40, 60),
      contact(0, 0, 65, 90),
    ])
  })

  test('the same upright', () => {
    const turned = ROOM.map((ring) => ring.map(({ x, y }) => ({ x: y, y: x })).toReversed())
    const [left, right] = cutUpright(outlinesOf(turned), [20])
    expect(contactsUp(left!, right!, 20)).toEqual([
      contact(0, 0, 0, 30),
      contact(0, 0, 40, 60),
      contact(0, 0, 65, 90),
    ])
  })

  test('pieces side by side meet those above in turn, each pair as far as it goes', () => {
    const [lower, upper] = cutLevel(outlinesOf([rectangle(0, 0, 90, 40)]), [20])
    const diced = (parts: readonly Part[], joints: readonly number[]) =>
      parts.flatMap(({ rim, holes }) => cutUpright([rim, ...holes], joints).flat())
    const below = diced(lower!, [30, 60])
    const above = diced(upper!, [30, 45])
    expect(contactsAlong(below, above, 20)).toEqual([
      contact(0, 0, 0, 30),
      contact(1, 1, 30, 45),
      contact(1, 2, 45, 60),
      contact(2, 2, 60, 90),
    ])
    expect(contactsAlong(below, above, 0)).toEqual([])
    expect(contactsUp(below.slice(0, 1), below.slice(1), 30)).toEqual([contact(0, 0, 0, 20)])
  })

  test('a part between two cuts is met below at its lower one and above at its upper one', () => {
    const [low, middle, high] = cutLevel(outlinesOf([rectangle(0, 0, 90, 60)]), [20, 40])
    expect(contactsAlong(low!, middle!, 20)).toEqual([contact(0, 0, 0, 90)])
    expect(contactsAlong(middle!, high!, 40)).toEqual([contact(0, 0, 0, 90)])
    expect(contactsAlong(low!, middle!, 40)).toEqual([])
    const [west, centre, east] = cutUpright(outlinesOf([rectangle(0, 0, 60, 90)]), [20, 40])
    expect(contactsUp(west!, centre!, 20)).toEqual([contact(0, 0, 0, 90)])
    expect(contactsUp(centre!, east!, 40)).toEqual([contact(0, 0, 0, 90)])
    expect(contactsUp(west!, centre!, 40)).toEqual([])
  })

  test('a part that lies on the other side of the line meets nothing', () => {
    const parts = cutLevel(outlinesOf([rectangle(0, 0, 90, 60)]), [20, 40])
    expect(contactsAlong(parts[1]!, parts[1]!, 20)).toEqual([])
    expect(contactsAlong(parts[1]!, parts[1]!, 40)).toEqual([])
    const upright = cutUpright(outlinesOf([rectangle(0, 0, 60, 90)]), [20, 40])
    expect(contactsUp(upright[1]!, upright[1]!, 20)).toEqual([])
    expect(contactsUp(upright[1]!, upright[1]!, 40)).toEqual([])
  })

  test('an upright cut is no part of a level line that it reaches, and the reverse', () => {
    const [lower, upper] = cutLevel(outlinesOf([rectangle(0, 0, 60, 40)]), [20])
    const diced = (parts: readonly Part[]) =>
      parts.flatMap(({ rim, holes }) => cutUpright([rim, ...holes], [20, 40]).flat())
    expect(contactsAlong(diced(lower!), diced(upper!), 20)).toEqual([
      contact(0, 0, 0, 20),
      contact(1, 1, 20, 40),
      contact(2, 2, 40, 60),
    ])
    const [first, second, third] = diced(lower!)
    expect(contactsUp([first!], [second!], 20)).toEqual([contact(0, 0, 0, 20)])
    expect(contactsUp([second!], [third!], 40)).toEqual([contact(0, 0, 0, 20)])
    expect(contactsUp([first!], [third!], 20)).toEqual([])
  })

  test('a stretch in two steps is one contact; a wall of the floor on the line is none', () => {
    const step = points([0, 0], [30, 0], [60, 0], [60, 20], [40, 20], [20, 20], [0, 20])
    const lower = { ...partsOf(outlinesOf([step]))[0]!.rim, wholes: step.map(() => null) }
    const upper = partsOf(outlinesOf([rectangle(0, 20, 60, 20)]))[0]!
    const cutAll = { points: upper.rim.points, wholes: upper.rim.points.map(() => null) }
    const parts = (rim: Part['rim']): Part[] => [{ rim, holes: [] }]
    expect(contactsAlong(parts(lower), parts(cutAll), 20)).toEqual([contact(0, 0, 0, 60)])
    expect(contactsAlong(parts(lower), [upper], 20)).toEqual([])
  })

  test('two stretches of one pair with a gap between are two contacts', () => {
    const comb = points([0, 0], [60, 0], [60, 20], [40, 20], [40, 5], [20, 5], [20, 20], [0, 20])
    const bare = (ring: Ring): Part[] => [
      { rim: { points: ring, wholes: ring.map(() => null) }, holes: [] },
    ]
    expect(contactsAlong(bare(comb), bare(rectangle(0, 20, 60, 9)), 20)).toEqual([
      contact(0, 0, 0, 20),
      contact(0, 0, 40, 60),
    ])
  })
})
