import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { twiceAreaOf } from '../../server/src/geometry/exact.ts'
import { anyMeeting } from '../../server/src/geometry/meet.ts'
import { outlinesOf, type Part, ringsWithCrossings } from '../../server/src/geometry/outline.ts'
import type { Point, Region, Ring } from '../../server/src/geometry/point.ts'
import { cutLevel, cutUpright } from '../../server/src/geometry/split.ts'
import { column, comb, rectangle, someFloor } from './regions.ts'

const area = (parts: readonly Part[]) =>
  parts.reduce(
    (sum, { rim, holes }) => sum + twiceAreaOf([rim.points, ...holes.map((hole) => hole.points)]),
    0n,
  )

const lines = fc
  .tuple(fc.integer({ min: 150_000_000, max: 900_000_000 }), fc.integer({ min: 0, max: 1e9 }))
  .map(([step, shift]) => {
    const all: number[] = []
    for (let at = -12e9 + shift; at < 12e9; at += step) all.push(at)
    return all
  })

/** Cuts into courses and each course into short lengths. */
function diced(region: Region, across: readonly number[], along: readonly number[]): Part[] {
  return cutLevel(outlinesOf(region), across)
    .flat()
    .flatMap((part) => cutUpright([part.rim, ...part.holes], along).flat())
}

describe('cutting a region', () => {
  test('a square along two lines', () => {
    const slabs = cutLevel(outlinesOf([rectangle(0, 0, 90, 60)]), [20, 40])
    expect(
      slabs.map((slab) => slab.map((part) => part.rim.points.map(({ x, y }) => [x, y]))),
    ).toEqual(
      [
        [
          [
            [90, 0],
            [90, 20],
            [0, 20],
            [0, 0],
          ],
        ],
        [
          [
            [90, 20],
            [90, 40],
            [0, 40],
            [0, 20],
          ],
        ],
        [
          [
            [90, 40],
            [90, 60],
            [0, 60],
            [0, 40],
          ],
        ],
      ].map((slab) => slab.map((ring) => expect.arrayContaining(ring))),
    )
    expect(slabs.map(area)).toEqual([3600n, 3600n, 3600n])
  })

  test('a chimney across a line parts neither side, a wall end parts one', () => {
    const region = [rectangle(0, 0, 90, 60), rectangle(40, 10, 10, 20).toReversed()]
    expect(cutLevel(outlinesOf(region), [20]).map((slab) => slab.length)).toEqual([1, 1])
    const walled = [
      [
        [0, 0],
        [40, 0],
        [40, 30],
        [50, 30],
        [50, 0],
        [90, 0],
        [90, 60],
        [0, 60],
      ].map(([x, y]) => ({ x: x!, y: y! })),
    ]
    expect(cutLevel(outlinesOf(walled), [20]).map((slab) => slab.length)).toEqual([2, 1])
    expect(cutLevel(outlinesOf(walled), [30]).map((slab) => slab.length)).toEqual([2, 1])
  })

  test('a post inside a course stays a hole, also where it touches a seam with one corner', () => {
    const post = [
      { x: 50, y: 25 },
      { x: 45, y: 30 },
      { x: 50, y: 35 },
      { x: 55, y: 30 },
    ]
    for (const line of [20, 25]) {
      const [, upper] = cutLevel(outlinesOf([rectangle(0, 0, 90, 60), post]), [line])
      expect(upper!.map(({ holes }) => holes.length)).toEqual([1])
      expect(area(upper!)).toBe(BigInt(2 * (90 * (60 - line) - 50)))
    }
  })

  test('two posts that touch a seam in one point leave the wedge between them', () => {
    const west = [
      { x: 50, y: 20 },
      { x: 30, y: 40 },
      { x: 45, y: 40 },
    ]
    const east = [
      { x: 50, y: 20 },
      { x: 55, y: 40 },
      { x: 70, y: 40 },
    ]
    for (const posts of [
      [west, east],
      [east, west],
    ]) {
      const region = [rectangle(0, 0, 90, 60), ...posts]
      const [below, above] = cutLevel(outlinesOf(region), [20])
      expect([area(below!), area(above!)]).toEqual([3600n, BigInt(2 * (90 * 40 - 150 - 150))])
      for (const { rim } of [...below!, ...above!]) expect(isSimple(rim.points)).toBe(true)
      // Hanging from the seam above it, too.
      const hung = region.map((ring) => ring.map(({ x, y }) => ({ x, y: 60 - y })).toReversed())
      const [under, over] = cutLevel(outlinesOf(hung), [40])
      expect([area(under!), area(over!)]).toEqual([BigInt(2 * (90 * 40 - 300)), 3600n])
    }
  })

  test('a joint through a post that touches the seam leaves pieces that touch themselves nowhere', () => {
    const post = [
      { x: 50, y: 25 },
      { x: 45, y: 30 },
      { x: 50, y: 35 },
      { x: 55, y: 30 },
    ]
    const [, upper] = cutLevel(outlinesOf([rectangle(0, 0, 90, 60), post]), [25])
    const pieces = upper!.flatMap((part) => cutUpright([part.rim, ...part.holes], [52]).flat())
    expect(pieces.map(({ holes }) => holes.length)).toEqual([0, 0, 0])
    expect(area(pieces)).toBe(BigInt(2 * (90 * 35 - 50)))
  })

  test('every region, cut both ways, keeps its area and its pieces are simple', () => {
    fc.assert(
      fc.property(someFloor, lines, lines, (region, across, along) => {
        const pieces = diced(region, across, along)
        const rings = ringsWithCrossings(region, outlines(pieces))
        expect(area(pieces)).toBe(twiceAreaOf(rings))
        expect(uncancelled(pieces, rings)).toEqual([])
        expect(farthestOff(rings, region)).toBeLessThanOrEqual(0.5000001)
        for (const { rim } of pieces) expect(isSimple(rim.points)).toBe(true)
      }),
      { seed: 20261125, numRuns: 100 },
    )
  })

  test('corners on an axis stay 0, not −0', () => {
    for (const part of cutUpright(outlinesOf([rectangle(0, 0, 90, 60)]), [0, 30, 90]).flat()) {
      for (const { x, y } of part.rim.points)
        expect([Object.is(x, -0), Object.is(y, -0)]).toEqual([false, false])
    }
  })

  test('square regions keep their area to the last nanometre', () => {
    for (const sideways of [false, true]) {
      const region = comb(30, sideways)
      const cuts = Array.from({ length: 300 }, (_, i) => -6e9 + i * 177_800_000)
      expect(area(diced(region, cuts, cuts))).toBe(twiceAreaOf(region))
    }
  })

  test('joints that cross a slanted wall where a seam does meet it in one corner', () => {
    const region = [
      [
        { x: 0, y: 0 },
        { x: 300, y: 0 },
        { x: 0, y: 300 },
      ],
    ]
    const pieces = diced(region, [100, 200], [100, 200])
    expect(area(pieces)).toBe(90_000n)
    expect(pieces.length).toBe(6)
  })

  test('a round column is cut by every line', () => {
    const region = [rectangle(-1000, -1000, 2000, 2000), column(0, 0, 500, 64).toReversed()]
    const cuts = Array.from({ length: 41 }, (_, i) => -1000 + 50 * i)
    for (const { rim, holes } of diced(region, cuts, cuts)) {
      expect(holes).toEqual([])
      expect(isSimple(rim.points)).toBe(true)
    }
  })
})

const outlines = (parts: readonly Part[]) => parts.flatMap(({ rim, holes }) => [rim, ...holes])

/**
 * Directed edges of the pieces that neither another piece nor the region's own rings answer. Level and
 * upright ones are laid on their line and need to cancel at each place of it only.
 */
function uncancelled(pieces: readonly Part[], rings: Region): string[] {
  const counts = new Map<string, number>()
  const steps = new Map<string, [number, number][]>()
  const count = (a: Point, b: Point, sign: 1 | -1) => {
    if (a.x !== b.x && a.y !== b.y) {
      const forward = a.x < b.x
      const key = forward ? `${a.x},${a.y} ${b.x},${b.y}` : `${b.x},${b.y} ${a.x},${a.y}`
      counts.set(key, (counts.get(key) ?? 0) + (forward ? sign : -sign))
      return
    }
    const level = a.y === b.y
    const key = level ? `y ${a.y}` : `x ${a.x}`
    const line = steps.get(key) ?? []
    line.push(level ? [a.x, sign] : [a.y, sign], level ? [b.x, -sign] : [b.y, -sign])
    steps.set(key, line)
  }
  const walk = (ring: Ring, sign: 1 | -1) => {
    ring.forEach((from, i) => {
      count(from, ring[(i + 1) % ring.length]!, sign)
    })
  }
  for (const { points } of outlines(pieces)) walk(points, 1)
  for (const ring of rings) walk(ring, -1)
  const left = [...counts].filter(([, n]) => n !== 0).map(([key]) => key)
  for (const [key, line] of steps) {
    const at = new Map<number, number>()
    for (const [place, step] of line) at.set(place, (at.get(place) ?? 0) + step)
    if ([...at.values()].some((n) => n !== 0)) left.push(key)
  }
  return left
}

/** How far the corners put into the edges lie off them at most, in nm. */
function farthestOff(rings: Region, region: Region): number {
  let most = 0
  rings.forEach((ring, r) => {
    const plain = region[r]!
    let edge = -1
    for (const point of ring) {
      const next = plain[edge + 1]
      if (next && next.x === point.x && next.y === point.y) {
        edge++
        continue
      }
      const a = plain[edge]!
      const b = plain[(edge + 1) % plain.length]!
      const cross =
        BigInt(b.x - a.x) * BigInt(point.y - a.y) - BigInt(b.y - a.y) * BigInt(point.x - a.x)
      most = Math.max(most, Math.abs(Number(cross)) / Math.hypot(b.x - a.x, b.y - a.y))
    }
    expect(edge).toBe(plain.length - 1)
  })
  return most
}

function isSimple(ring: Region[number]): boolean {
  const edges = ring.map((from, i) => ({ from, to: ring[(i + 1) % ring.length]! }))
  const n = edges.length
  return !anyMeeting(
    edges,
    (how, i, j) => how === 'end to end' && ((i + 1) % n === j || (j + 1) % n === i),
  )
}
