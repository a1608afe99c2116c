import { describe, expect, test } from 'vitest'
import { arcCorners } from '../../server/src/survey/arc.ts'
import { independentRows, solve, transpose } from '../../server/src/survey/linear.ts'
import { pathVariance } from '../../server/src/survey/path-variance.ts'
import {
  allowedFor,
  lengthFrom,
  repeatSpread,
  repeatsDisagree,
} from '../../server/src/survey/reading.ts'
import { roundRing } from '../../server/src/survey/round.ts'
import { byTriangles } from '../../server/src/survey/triangle.ts'
import {
  cross,
  directionOf,
  leftOf,
  lengthOf,
  meet,
  middleOf,
  minus,
  plus,
  times,
  toPoint,
} from '../../server/src/survey/vector.ts'
import { pointAt, rectangleOn, wallFrame } from '../../server/src/survey/wall-frame.ts'
import type { ReadWall } from '../../server/src/survey/walls.ts'
import { nm, reading } from './build.ts'

describe('vectors', () => {
  const [a, b] = [
    { x: 1, y: 2 },
    { x: 4, y: 6 },
  ]

  test('sum, difference, multiple, middle, length', () => {
    expect([plus(a, b), minus(b, a), times(a, 3), middleOf(a, b)]).toEqual([
      { x: 5, y: 8 },
      { x: 3, y: 4 },
      { x: 3, y: 6 },
      { x: 2.5, y: 4 },
    ])
    expect(lengthOf(minus(b, a))).toBe(5)
    expect([cross(a, b), cross(b, a)]).toEqual([-2, 2])
    expect(leftOf({ x: 3, y: 4 })).toEqual({ x: -4, y: 3 })
  })

  test('a direction has length 1, exactly along an axis; east where there is none', () => {
    expect(directionOf(a, b)).toEqual({ x: 0.6, y: 0.8 })
    expect(directionOf({ x: 7, y: 1 }, { x: 7, y: -9 })).toEqual({ x: 0, y: -1 })
    expect(directionOf(a, a)).toEqual({ x: 1, y: 0 })
  })

  test('a corner is rounded once, half to even', () => {
    expect(toPoint({ x: 2.5, y: -3.5 })).toEqual({ x: 2, y: -4 })
  })

  test('where two lines meet, along each', () => {
    // From (0, 0) east and from (6, −4) along (0, 1): at 6 and at 4.
    expect(meet({ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 6, y: -4 }, { x: 0, y: 1 })).toEqual([6, 4])
    expect(meet({ x: 1, y: 1 }, { x: 0.5, y: 0.5 }, { x: 4, y: 0 }, { x: 0, y: 1 })).toEqual([6, 4])
    expect(meet({ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 0, y: 5 }, { x: 1, y: 0 })).toBeNull()
    expect(meet({ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 0, y: 5 }, { x: -1, y: 9e-7 })).toBeNull()
    expect(meet({ x: 0, y: 0 }, { x: 1, y: 0 }, { x: 0, y: 5 }, { x: -1, y: 2e-6 })).not.toBeNull()
  })
})

describe('a wall after adjustment', () => {
  // From (10, 20), 5 long, 3 east and 4 north: out of the room is to its left.
  const frame = wallFrame(
    [
      { x: 0, y: 0 },
      { x: 10, y: 20 },
      { x: 13, y: 24 },
    ],
    1,
  )

  test('its length and ways', () => {
    expect(frame).toMatchObject({ wall: 1, length: 5, along: { x: 0.6, y: 0.8 } })
    expect(frame.out).toEqual({ x: -0.8, y: 0.6 })
    expect([frame.left, frame.right]).toEqual([
      { x: 10, y: 20 },
      { x: 13, y: 24 },
    ])
  })

  test('places on it and out of it', () => {
    expect(pointAt(frame, 0)).toBe(frame.left)
    expect(pointAt(frame, 5)).toBe(frame.right)
    expect(pointAt(frame, 0, 10)).toEqual({ x: 2, y: 26 })
    expect(pointAt(frame, 5, 10)).toEqual({ x: 5, y: 30 })
    expect(pointAt(frame, 10)).toEqual({ x: 16, y: 28 })
    expect(rectangleOn(frame, [0, 5], [0, 10])).toEqual([
      { x: 10, y: 20 },
      { x: 13, y: 24 },
      { x: 5, y: 30 },
      { x: 2, y: 26 },
    ])
  })
})

describe('systems of equations', () => {
  test('two and three unknowns', () => {
    // x + y = 5, x − y = 1; and one whose first pivot is nothing.
    expect(
      solve(
        [
          [1, 1],
          [1, -1],
        ],
        [5, 1],
      ),
    ).toEqual([3, 2])
    expect(
      solve(
        [
          [0, 2, 0],
          [4, 0, 0],
          [1, 1, 2],
        ],
        [6, 4, 10],
      ),
    ).toEqual([1, 3, 3])
    expect(
      solve(
        [
          [1, 2, 3],
          [2, 4, 1],
          [1, 1, 1],
        ],
        [14, 13, 6],
      ),
    ).toEqual([1, 2, 3])
  })

  test('one that does not determine its unknowns has no answer', () => {
    expect(
      solve(
        [
          [1, 2],
          [2, 4],
        ],
        [1, 2],
      ),
    ).toBeNull()
    expect(
      solve(
        [
          [1e6, 1],
          [1e6, 1 + 9e-4],
        ],
        [1, 2],
      ),
    ).toBeNull()
    expect(
      solve(
        [
          [1e6, 1],
          [1e6, 1 + 2e-3],
        ],
        [1, 2],
      ),
    ).not.toBeNull()
    expect(
      solve(
        [
          [-5, 0],
          [0, 1e-10],
        ],
        [1, 1],
      ),
    ).toBeNull()
  })

  test('transposed', () => {
    expect(
      transpose([
        [1, 2],
        [3, 4],
      ]),
    ).toEqual([
      [1, 3],
      [2, 4],
    ])
  })

  test('rows that say something new are kept, in order, as many as are wanted', () => {
    const rows = [
      [2, 0, 0],
      [4, 0, 0],
      [1, 1, 0],
      [3, 2, 0],
      [1, 1, 0.001],
      [0, 0, 5],
    ]
    expect(independentRows(rows, 9, 0.01)).toEqual([0, 2, 5])
    expect(independentRows(rows, 9, 1e-6)).toEqual([0, 2, 4])
    expect(independentRows(rows, 2, 1e-6)).toEqual([0, 2])
    // Of (1, 1) the first row says all but 1/√2 of its length.
    expect(
      independentRows(
        [
          [1, 0],
          [1, 1],
        ],
        9,
        0.7,
      ),
    ).toEqual([0, 1])
    expect(
      independentRows(
        [
          [1, 0],
          [1, 1],
        ],
        9,
        0.72,
      ),
    ).toEqual([0])
    expect(
      independentRows(
        [
          [0, 0],
          [1, 1],
        ],
        9,
        0.1,
      ),
    ).toEqual([1])
  })
})

describe('what a reading and its repeats are worth', () => {
  test('the mean counts the surer reading more: by 1/σ²', () => {
    const first = { ...reading(`10' 0"`), sigma: 1000 }
    const again = { ...reading(`10' 1"`), sigma: 2000 }
    const mean = lengthFrom({ ...first, again: [again] })!
    expect(mean.nm).toBeCloseTo(nm(`10' 0"`) + nm(`0.2"`), 3)
    // 1/σ² = 1/1000² + 1/2000².
    expect(mean.sigma).toBeCloseTo(2000 / Math.sqrt(5), 9)
  })

  test('one that was not taken counts nothing; none at all is no length', () => {
    const missing = reading('?')
    expect(lengthFrom(null)).toBeNull()
    expect(lengthFrom(missing)).toBeNull()
    expect(repeatSpread(missing)).toBeNull()
    const only = { ...missing, again: [reading(`10' 0"`)] }
    expect(lengthFrom(only)?.nm).toBe(nm(`10' 0"`))
    expect(lengthFrom({ ...reading(`9' 0"`), again: [missing] })?.nm).toBe(nm(`9' 0"`))
  })

  test('no reading is worth less than a nanometre', () => {
    expect(lengthFrom({ ...reading(`10' 0"`), sigma: 0 })?.sigma).toBe(1)
  })

  test('two standard deviations of the difference are allowed between the farthest two', () => {
    expect(allowedFor([3, 4])).toBe(10)
    expect(allowedFor([])).toBe(0)
    const at = (text: string, sigma: number) => ({ ...reading(text), sigma: sigma * nm('1"') })
    const said = { ...at(`10' 1"`, 3), again: [at(`10' 0"`, 4), at(`10' 10"`, 3)] }
    expect(repeatSpread(said)).toEqual({
      least: nm(`10' 0"`),
      most: nm(`10' 10"`),
      allowed: nm('10"'),
    })
    expect(repeatsDisagree(said)).toBe(false)
    expect(repeatsDisagree({ ...said, again: [at(`10' 0"`, 4), at(`10' 10 1/64"`, 3)] })).toBe(true)
    expect(repeatsDisagree(reading('?'))).toBe(false)
  })
})

describe('rooms of triangles', () => {
  const rounded = (corners: readonly { x: number; y: number }[] | null) =>
    corners?.map(({ x, y }) => [Math.round(x * 1e6) / 1e6 + 0, Math.round(y * 1e6) / 1e6 + 0])
  const east = { x: 1, y: 0 }

  test('three walls of 3, 4 and 5', () => {
    const start = [
      { x: 0, y: 0 },
      { x: 4, y: 0 },
      { x: 4, y: -3 },
    ]
    expect(rounded(byTriangles([4, 3, 5], null, { start, way: east }))).toEqual([
      [0, 0],
      [4, 0],
      [4, -3],
    ])
    const other = [
      { x: 0, y: 0 },
      { x: 4, y: 0 },
      { x: 4, y: 1 },
    ]
    expect(rounded(byTriangles([4, 3, 5], null, { start: other, way: east }))?.[2]).toEqual([4, 3])
    expect(byTriangles([4, 1, 9], null, { start, way: east })).toBeNull()
    expect(byTriangles([4, 1, 5], null, { start, way: east })).toBeNull()
    expect(byTriangles([0, 3, 3], null, { start, way: east })).toBeNull()
  })

  test('four walls and either diagonal', () => {
    // A rectangle of 4 by 3 walked to the right, and a kite of it with another last corner.
    const start = [
      { x: 0, y: 0 },
      { x: 4, y: 0 },
      { x: 4, y: -3 },
      { x: 0, y: -3 },
    ]
    for (const from of [0, 1]) {
      expect(rounded(byTriangles([4, 3, 4, 3], { nm: 5, from }, { start, way: east }))).toEqual([
        [0, 0],
        [4, 0],
        [4, -3],
        [0, -3],
      ])
    }
    // The fourth corner 5 from the second and 3 from the first; the third 2 and 4 from these.
    const bent = byTriangles([4, 2, 4, 3], { nm: 5, from: 1 }, { start, way: east })!
    expect(rounded(bent)?.[3]).toEqual([0, -3])
    expect(lengthOf(minus(bent[2]!, bent[1]!))).toBeCloseTo(2, 9)
    expect(lengthOf(minus(bent[2]!, bent[3]!))).toBeCloseTo(4, 9)
    expect(byTriangles([4, 3, 4, 3], { nm: 8, from: 0 }, { start, way: east })).toBeNull()
    expect(byTriangles([4, 3, 4, 9], { nm: 5, from: 0 }, { start, way: east })).toBeNull()
    expect(byTriangles([4, 3, 4, 3], { nm: 8, from: 1 }, { start, way: east })).toBeNull()
    expect(byTriangles([4, 1, 4, 3], { nm: 5, from: 1 }, { start, way: east })).toBeNull()
  })

  test('along another way', () => {
    const south = { x: 0, y: -1 }
    const start = [
      { x: 0, y: 0 },
      { x: 0, y: -4 },
      { x: -3, y: -4 },
    ]
    expect(rounded(byTriangles([4, 3, 5], null, { start, way: south }))?.[2]).toEqual([-3, -4])
  })
})

describe('how sure the way between two corners is', () => {
  const wall = (sigma: number, x: number, y: number) =>
    ({ sigma, direction: { x, y } }) as unknown as ReadWall
  const square = [wall(3, 1, 0), wall(1, 0, -1), wall(4, -1, 0), wall(2, 0, 1)]

  test('both ways round count: 1/V = 1/V₁ + 1/V₂', () => {
    const between = pathVariance(square)
    // East: 9 one way, 16 the other. North: 1 and 4.
    expect(between(0, 1, { x: 1, y: 0 })).toBeCloseTo((9 * 16) / 25, 9)
    expect(between(1, 0, { x: 1, y: 0 })).toBeCloseTo((9 * 16) / 25, 9)
    expect(between(0, 2, { x: 0, y: 1 })).toBeCloseTo((1 * 4) / 5, 9)
    expect(between(1, 3, { x: 1, y: 0 })).toBeCloseTo((16 * 9) / 25, 9)
    expect(between(2, 2, { x: 1, y: 0 })).toBe(0)
    expect(between(0, 1, { x: 0, y: 1 })).toBe(0)
  })

  test('along a slant a wall counts with what lies along it', () => {
    const slanted = [wall(5, 0.6, 0.8), wall(5, -0.6, -0.8)]
    const between = pathVariance(slanted)
    expect(between(0, 1, { x: 1, y: 0 })).toBeCloseTo(4.5, 9)
    expect(between(0, 1, { x: 0.6, y: 0.8 })).toBeCloseTo(12.5, 9)
    expect(between(0, 1, { x: -0.8, y: 0.6 })).toBeCloseTo(0, 9)
    expect(pathVariance([wall(0, 1, 0)])(0, 0, { x: 1, y: 0 })).toBe(0)
  })
})

describe('round things', () => {
  const INCH = nm('1"')

  test('a column reaches just its radius to the four ways, and nowhere less', () => {
    const ring = roundRing({ x: 100 * INCH, y: 50 * INCH }, 5 * INCH)
    expect(ring).toHaveLength(64)
    const xs = ring.map(({ x }) => x)
    const ys = ring.map(({ y }) => y)
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([95 * INCH, 105 * INCH])
    expect([Math.min(...ys), Math.max(...ys)]).toEqual([45 * INCH, 55 * INCH])
    // Counter-clockwise from just above east.
    expect(ring[0]!.y).toBeGreaterThan(50 * INCH)
    expect(ring[1]!.y).toBeGreaterThan(ring[0]!.y)
    for (const { x, y } of ring) {
      const off = Math.hypot(x - 100 * INCH, y - 50 * INCH)
      expect(off).toBeGreaterThan(5 * INCH)
      expect(off).toBeCloseTo((5 * INCH) / Math.cos(Math.PI / 64), 0)
    }
  })

  const chord = wallFrame(
    [
      { x: 0, y: 0 },
      { x: 80 * INCH, y: 0 },
    ],
    0,
  )

  test('a wall that bows out has its corners on the arc', () => {
    // 80 in across and 20 in high: the radius is (40² + 20²)/40 = 50 in, the centre 30 in inside.
    const corners = arcCorners(chord, 20 * INCH)
    for (const { x, y } of corners) {
      expect(Math.hypot(x - 40 * INCH, y + 30 * INCH)).toBeCloseTo(50 * INCH, 0)
      expect(y).toBeGreaterThan(0)
    }
    expect(corners.map(({ x }) => x)).toEqual(corners.map(({ x }) => x).toSorted((a, b) => a - b))
    // Half the angle is 2·atan(1/2) = 53.13°: 106.26° in pieces of at most 5.625°.
    expect(corners).toHaveLength(18)
    expect(corners[0]!.x + corners[17]!.x).toBe(80 * INCH)
  })

  test('one that bows in is touched by its pieces from the room', () => {
    const corners = arcCorners(chord, -20 * INCH)
    expect(corners).toHaveLength(19)
    for (const { x, y } of corners) {
      const off = Math.hypot(x - 40 * INCH, y - 30 * INCH)
      expect(off).toBeGreaterThan(50 * INCH)
      expect(off).toBeLessThan(50.1 * INCH)
    }
    expect(corners[9]!.x).toBe(40 * INCH)
    expect(corners[9]!.y).toBeLessThan(-20 * INCH)
  })

  test('a slight bow has four pieces at least', () => {
    expect(arcCorners(chord, INCH / 4)).toHaveLength(3)
    expect(arcCorners(chord, -INCH / 4)).toHaveLength(4)
  })
})
