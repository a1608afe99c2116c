import fc from 'fast-check'
import { canonical } from '../../server/src/geometry/canonical.ts'
import { difference, union } from '../../server/src/geometry/clip.ts'
import { twiceAreaOf } from '../../server/src/geometry/exact.ts'
import type { Point, Region, Ring } from '../../server/src/geometry/point.ts'

/** Regions of the kinds that floors are, for properties that hold for all of them. Lengths in nm. */

const MM = 1_000_000
const INCH = 25_400_000

export const rectangle = (x: number, y: number, width: number, height: number): Ring => [
  { x, y },
  { x: x + width, y },
  { x: x + width, y: y + height },
  { x, y: y + height },
]

/** Corners on whole sixteenths, so that many of them fall into line. */
const sixteenths = (least: number, most: number) =>
  fc.integer({ min: least * 16, max: most * 16 }).map((n) => (n * INCH) / 16)

const room = fc
  .tuple(sixteenths(-200, 200), sixteenths(-200, 200), sixteenths(20, 200), sixteenths(20, 200))
  .map(([x, y, width, height]) => rectangle(x, y, width, height))

const skewed = fc
  .tuple(
    room,
    fc.array(fc.integer({ min: -30 * MM, max: 30 * MM }), { minLength: 8, maxLength: 8 }),
  )
  .map(([ring, off]) => ring.map(({ x, y }, i) => ({ x: x + off[2 * i]!, y: y + off[2 * i + 1]! })))

/** A column drawn with the given number of corners on whole nanometres. */
export function column(x: number, y: number, radius: number, corners: number): Ring {
  const ring: Point[] = []
  for (let i = 0; i < corners; i++) {
    const angle = (2 * Math.PI * i) / corners
    ring.push({
      x: x + Math.round(radius * Math.cos(angle)),
      y: y + Math.round(radius * Math.sin(angle)),
    })
  }
  return ring
}

const hole = fc.oneof(
  fc
    .tuple(sixteenths(-200, 200), sixteenths(-200, 200), sixteenths(1, 10), sixteenths(1, 10))
    .map(([x, y, width, height]) => rectangle(x, y, width, height)),
  fc
    .tuple(sixteenths(-200, 200), sixteenths(-200, 200), sixteenths(1, 8))
    .map(([x, y, radius]) => column(x, y, radius, 64)),
)

/** Rooms run together, square or not, less columns and chimneys. */
export const someFloor: fc.Arbitrary<Region> = fc
  .tuple(
    fc.array(fc.oneof(room, skewed), { minLength: 1, maxLength: 5 }),
    fc.array(hole, { maxLength: 4 }),
  )
  .map(([rooms, holes]) => difference(union(rooms.map(counterClockwise)), holes))
  .filter((region) => twiceAreaOf(region) > 0n)

/** A floor with teeth, up or sideways: many walls that one line meets. */
export function comb(teeth: number, sideways: boolean): Region {
  const ring: Point[] = []
  for (let i = 0; i < teeth; i++) {
    const x = i * 40 * INCH
    ring.push({ x, y: 0 }, { x: x + 20 * INCH, y: 0 })
    ring.push({ x: x + 20 * INCH, y: 90 * INCH }, { x: x + 40 * INCH, y: 90 * INCH })
  }
  ring.push({ x: teeth * 40 * INCH, y: 120 * INCH }, { x: 0, y: 120 * INCH })
  return canonical([sideways ? ring.map(({ x, y }) => ({ x: -y, y: x })) : ring])
}

export function counterClockwise(ring: Ring): Ring {
  return twiceAreaOf([ring]) < 0n ? ring.toReversed() : ring
}
