import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { canonical } from '../../server/src/geometry/canonical.ts'
import { union } from '../../server/src/geometry/clip.ts'
import { type Line, twiceAreaOf } from '../../server/src/geometry/exact.ts'
import { join } from '../../server/src/geometry/join.ts'
import type { Ring } from '../../server/src/geometry/point.ts'
import { rectangle } from './regions.ts'

interface Marked extends Line {
  readonly mark: string
}

const marked = (ring: Ring, mark: string): Marked[] =>
  ring.map((from, i) => ({ from, to: ring[(i + 1) % ring.length]!, mark: `${mark} ${i}` }))
const rings = (edges: readonly (readonly Line[])[]) =>
  edges.map((ring) => ring.map(({ from }) => from))
const none = () => false

describe('rooms joined to one floor', () => {
  test('a doorway between two rooms opens both', () => {
    const floor = join(
      [
        marked(rectangle(0, 0, 100, 100), 'hall'),
        marked(rectangle(40, 100, 20, 10), 'door'),
        marked(rectangle(0, 110, 100, 100), 'den'),
      ],
      [],
      none,
    )
    expect(floor.map((ring) => ring.map(({ mark }) => mark))).toEqual([
      [
        'hall 0',
        'hall 1',
        'hall 2',
        'door 1',
        'den 0',
        'den 1',
        'den 2',
        'den 3',
        'den 0',
        'door 3',
        'hall 2',
        'hall 3',
      ],
    ])
    expect(twiceAreaOf(rings(floor))).toBe(2n * (20_000n + 200n))
  })

  test('a doorway a nanometre off its slanted wall still opens it', () => {
    const hall = [
      { x: 0, y: 0 },
      { x: 3000, y: 1 },
      { x: 3000, y: 3000 },
      { x: 0, y: 3000 },
    ]
    const door = [
      { x: 1000, y: -100 },
      { x: 2000, y: -100 },
      { x: 2000, y: -1 },
      { x: 1000, y: 1 },
    ]
    const floor = join([marked(hall, 'hall'), marked(door, 'door')], [], none)
    expect(floor.length).toBe(1)
    expect(floor[0]!.map(({ mark }) => mark)).toEqual([
      'hall 0',
      'door 3',
      'door 0',
      'door 1',
      'hall 0',
      'hall 1',
      'hall 2',
      'hall 3',
    ])
  })

  test('a hearth at the wall notches the floor, a column makes a hole', () => {
    const floor = join(
      [marked(rectangle(0, 0, 100, 100), 'den')],
      [marked(rectangle(30, 80, 40, 20), 'hearth'), marked(rectangle(10, 10, 5, 5), 'column')],
      none,
    )
    expect(floor.map((ring) => ring.length).sort()).toEqual([4, 8])
    expect(twiceAreaOf(rings(floor))).toBe(2n * (10_000n - 800n - 25n))
  })

  test('a kept line parts the floor', () => {
    const parts = join(
      [marked(rectangle(0, 0, 50, 100), 'a'), marked(rectangle(50, 0, 50, 100), 'b')],
      [],
      ({ mark }) => mark === 'a 1' || mark === 'b 3',
    )
    expect(parts.map((ring) => ring.map(({ mark }) => mark))).toEqual([
      ['a 0', 'a 1', 'a 2', 'a 3'],
      ['b 0', 'b 1', 'b 2', 'b 3'],
    ])
  })

  test('a kept line parts the floor among rooms that overlap, too', () => {
    const parts = join(
      [
        marked(rectangle(0, 0, 5000, 9000), 'a'),
        marked(rectangle(5000, 0, 5000, 9000), 'b'),
        marked(rectangle(7000, 5000, 5000, 3000), 'c'),
      ],
      [],
      ({ mark }) => mark === 'a 1' || mark === 'b 3',
    )
    expect(parts.map((ring) => ring.map(({ mark }) => mark).toSorted())).toEqual([
      ['a 0', 'a 1', 'a 2', 'a 3'],
      ['b 0', 'b 1', 'b 1', 'b 2', 'b 3', 'c 0', 'c 1', 'c 2'],
    ])
  })

  test('rooms that overlap count once, and each edge keeps its name', () => {
    const floor = join(
      [marked(rectangle(0, 0, 100, 100), 'a'), marked(rectangle(50, 0, 100, 60), 'b')],
      [],
      none,
    )
    expect(twiceAreaOf(rings(floor))).toBe(2n * (10_000n + 3_000n))
    expect(new Set(floor[0]!.map(({ mark }) => mark))).toEqual(
      new Set(['a 0', 'b 0', 'b 1', 'b 2', 'a 1', 'a 2', 'a 3']),
    )
  })

  test('a room inside another, a column inside a column and one outside change nothing', () => {
    const floor = join(
      [marked(rectangle(0, 0, 100, 100), 'a'), marked(rectangle(20, 20, 10, 10), 'b')],
      [
        marked(rectangle(60, 60, 20, 20), 'c'),
        marked(rectangle(65, 65, 5, 5), 'd'),
        marked(rectangle(200, 0, 5, 5), 'e'),
      ],
      none,
    )
    expect(twiceAreaOf(rings(floor))).toBe(2n * (10_000n - 400n))
  })

  const marksOf = (floor: readonly (readonly Marked[])[]) =>
    floor.map((ring) => ring.map(({ mark }) => mark))
  const room = rectangle(0, 0, 100, 100)

  test.each([
    ['a room within a room, clear of its walls', [rectangle(20, 20, 10, 10)], []],
    ['a room within a room, at its wall', [rectangle(0, 20, 10, 10)], []],
    ['a column beside the room', [], [rectangle(200, 0, 5, 5)]],
    ['a column beside the room, level with its corner', [], [rectangle(-50, 0, 5, 5)]],
    ['a column that touches the room from outside', [], [rectangle(100, 40, 20, 20)]],
  ])('%s changes nothing', (_, solids, holes) => {
    const floor = join(
      [room, ...solids].map((ring, i) => marked(ring, `room ${i}`)),
      holes.map((ring) => marked(ring, 'column')),
      none,
    )
    expect(canonical(rings(floor))).toEqual([room])
    expect(new Set(floor.flat().map(({ mark }) => mark))).toEqual(
      new Set(['room 0 0', 'room 0 1', 'room 0 2', 'room 0 3']),
    )
  })

  test('a column within a column is one', () => {
    const floor = join(
      [marked(room, 'room')],
      [marked(rectangle(60, 60, 20, 20), 'c'), marked(rectangle(65, 65, 5, 5), 'd')],
      none,
    )
    expect(marksOf(floor).flat().sort()).toEqual([
      'c 0',
      'c 1',
      'c 2',
      'c 3',
      'room 0',
      'room 1',
      'room 2',
      'room 3',
    ])
  })

  test('two rooms apart, each with its column, lie as they are', () => {
    const floor = join(
      [marked(room, 'a'), marked(rectangle(300, 0, 100, 100), 'b')],
      [marked(rectangle(10, 10, 5, 5), 'c'), marked(rectangle(310, 10, 5, 5), 'd')],
      none,
    )
    expect(floor.map((ring) => ring[0]!.mark)).toEqual(['a 0', 'b 0', 'c 3', 'd 3'])
  })

  test('a level kept line parts rooms that overlap beside it', () => {
    const parts = join(
      [
        marked(rectangle(0, 0, 9000, 5000), 'a'),
        marked(rectangle(0, 5000, 9000, 5000), 'b'),
        marked(rectangle(5000, 7000, 3000, 5000), 'c'),
      ],
      [],
      ({ mark }) => mark === 'a 2' || mark === 'b 0',
    )
    expect(parts.map((ring) => ring.length).sort()).toEqual([4, 8])
    // Each side of the line keeps its own edge of it.
    expect(marksOf(parts).map((marks) => marks.toSorted())).toEqual([
      ['a 0', 'a 1', 'a 2', 'a 3'],
      ['b 0', 'b 1', 'b 2', 'b 2', 'b 3', 'c 1', 'c 2', 'c 3'],
    ])
  })

  test('where two solids have an edge one way and the floor the other, it keeps its own', () => {
    // The second room's west wall lies on the first one's east wall, beyond the overlap with the third.
    const floor = join(
      [
        marked(rectangle(0, 0, 5000, 4000), 'a'),
        marked(rectangle(5000, 1000, 3000, 3000), 'b'),
        marked(rectangle(3000, 3000, 1000, 3000), 'c'),
      ],
      [marked(rectangle(5000, 1000, 500, 500), 'post')],
      none,
    )
    const at = (x: number, y: number) =>
      floor.flat().find(({ from, to }) => (from.x + to.x) / 2 === x && (from.y + to.y) / 2 === y)
    expect(at(5000, 500)?.mark).toBe('a 1')
    expect(at(5000, 1250)?.mark).toBe('a 1')
    expect(at(5500, 1250)?.mark).toBe('post 1')
    expect(at(5250, 1500)?.mark).toBe('post 2')
    expect(at(6750, 1000)?.mark).toBe('b 0')
    expect(at(3500, 6000)?.mark).toBe('c 2')
  })

  test('whatever way rectangles lie, the area is that of their union', () => {
    const side = fc.integer({ min: 1, max: 12 })
    const place = fc.integer({ min: -12, max: 12 })
    const some = fc.array(
      fc
        .tuple(place, place, side, side)
        .map(([x, y, w, h]) => rectangle(x * 100, y * 100, w * 100, h * 100)),
      { minLength: 1, maxLength: 6 },
    )
    fc.assert(
      fc.property(some, (solids) => {
        const joined = join(
          solids.map((ring, i) => marked(ring, `${i}`)),
          [],
          none,
        )
        expect(twiceAreaOf(rings(joined))).toBe(twiceAreaOf(union(solids)))
      }),
      { seed: 20261125, numRuns: 300 },
    )
  })
})
