import { describe, expect, test } from 'vitest'
import { twiceAreaOf } from '../../server/src/geometry/exact.ts'
import type { Point } from '../../server/src/geometry/point.ts'
import { groundOf, widthOf } from '../../server/src/report/drawing/letter.ts'
import { holds, overlap } from '../../server/src/report/drawing/occupied.ts'
import { direction, distance, middle, plate } from '../../server/src/report/drawing/vector.ts'
import type { Lettering, Scene, Shape } from '../../server/src/report/scene.ts'
import { sceneOf } from '../../server/src/report/scene-of.ts'
import { house } from './house.ts'
import { at, box, doorway, room, SPAN } from './rooms.ts'

const scene = sceneOf(house())

function shapes<K extends Shape['kind']>(kind: K, from: Scene = scene) {
  return from.shapes.filter((shape): shape is Extract<Shape, { kind: K }> => shape.kind === kind)
}

/** Every point in a shape, wherever it stands. */
function pointsIn(value: unknown): Point[] {
  if (typeof value !== 'object' || value === null) return []
  if ('x' in value && 'y' in value) return [value as Point]
  return Object.entries(value).flatMap(([key, one]) => (key === 'along' ? [] : pointsIn(one)))
}

function letterings(shape: Shape): Lettering[] {
  switch (shape.kind) {
    case 'dimension':
    case 'rip label':
    case 'note':
      return [shape.lettering]
    case 'label':
      return [...shape.lines]
    default:
      return []
  }
}

describe('the scene of a house', () => {
  test('lies on its sheet, in whole nanometres', () => {
    const points = scene.shapes.flatMap(pointsIn)
    expect(points.length).toBeGreaterThan(1000)
    const off = points.filter(
      ({ x, y }) =>
        !Number.isInteger(x) ||
        !Number.isInteger(y) ||
        x < scene.low.x ||
        x > scene.high.x ||
        y < scene.low.y ||
        y > scene.high.y,
    )
    expect(off).toEqual([])
  })

  test('letters nothing beyond the sheet', () => {
    const corners = scene.shapes.flatMap(letterings).flatMap(groundOf)
    const beyond = corners.filter(({ x, y }) => x > scene.high.x || y < scene.low.y)
    expect(beyond).toEqual([])
  })

  test('gives each shape a name of its own', () => {
    const ids = scene.shapes.map((shape) => shape.id)
    expect(new Set(ids).size).toBe(ids.length)
  })

  test('is the same again from the same', () => {
    expect(sceneOf(house())).toEqual(scene)
  })

  test('draws every piece once, numbered inside itself', () => {
    const published = house().floors[0]!.published.pieces
    const pieces = shapes('piece')
    expect(pieces.map(({ piece }) => piece)).toEqual(published.map(({ piece }) => piece))
    const astray = pieces.filter(({ number, ring }) => !holds(ring, number.at))
    expect(astray.map(({ piece }) => piece)).toEqual([])
  })

  test('keeps lettering clear of other lettering', () => {
    expect(clashesIn(scene)).toEqual([])
  })

  test('hides no piece number under a label, a dimension or a door', () => {
    const plates = [...shapes('label'), ...shapes('rip label')].map(({ plate }) => plate)
    const leaves = shapes('opening').flatMap((opening) => opening.leaves)
    const hidden = shapes('piece').filter(({ number }) =>
      [...plates, ...leaves].some((ring) => overlap(ring, groundOf(number))),
    )
    // A sliver wholly under a label has no place that is free.
    expect(hidden.length).toBeLessThanOrEqual(3)
  })

  test('takes for wall what no room, closet or opening takes', () => {
    const walls = shapes('masonry')[0]!.region
    const floors = house().rooms.flatMap(({ outline, closets }) => [
      outline,
      ...closets.flatMap((closet) => [closet.outline, closet.throat]),
    ])
    expect(twiceAreaOf(walls)).toBeGreaterThan(0n)
    for (const ring of floors)
      for (const outer of walls.filter((one) => twiceAreaOf([one]) < 0n))
        for (const corner of outer) expect(holds(ring, corner)).toBe(false)
  })

  test('breaks a wall’s face at its doors', () => {
    const north = shapes('wall face').find(({ id }) => id === 'hall: wall 0')!
    const inches = north.lines.map(([a, b]) => [a.x / 25_400_000, b.x / 25_400_000])
    expect(
      inches.map((line) => line.toSorted((a, b) => a - b)).sort((a, b) => a[0]! - b[0]!),
    ).toEqual([
      [0, 96],
      [128, 160],
      [190, 240],
    ])
  })

  test('labels a room with its size and area', () => {
    const hall = shapes('label').find(({ id }) => id === 'hall: label')!
    // 20' × 4' 4" = 86 2/3 sq ft [C]; what stands in the room is not taken off.
    expect(hall.lines.map(({ text }) => text)).toEqual(['hall', `20' 0" × 4' 4"`, '86.7 sq ft'])
  })

  test('writes each reading outside the house where it can', () => {
    const texts = shapes('dimension').map(({ lettering }) => lettering.text)
    for (const read of [`12' 4"`, `7' 3 1/2"`, `13' 11 1/2"`, `11' 0"`, `9' 0"`])
      expect(texts).toContain(read)
  })

  test('points the working line the way a course is laid, at the first course’s far edge', () => {
    const [line] = shapes('working line')
    const first = house().floors[0]!.published.courses[0]!
    expect(line!.from.y).toBe(first.high)
    expect(line!.to.x).toBeGreaterThan(line!.from.x)
  })
})

describe('what is not ready', () => {
  test('is written across the title block, and no count stands alone', () => {
    const because = 'East of den is still to be read.'
    const notes = shapes('note', sceneOf({ ...house(), incompleteBecause: [because] })).map(
      ({ lettering }) => lettering,
    )
    expect(notes.find(({ text }) => text === 'NOT FINAL')!.tone).toBe('alarm')
    expect(notes.map(({ text }) => text).join(' ')).toContain(because)
    expect(notes.some(({ text }) => /planks so far$/.test(text))).toBe(true)
    expect(notes.some(({ text }) => /planks$/.test(text))).toBe(false)
  })

  test('a dozen causes are written once each, and how many more there are', () => {
    const causes = Array.from({ length: 30 }, (_, i) => `Cause ${i % 15}.`)
    const notes = shapes('note', sceneOf({ ...house(), incompleteBecause: causes }))
    const texts = notes.map(({ lettering }) => lettering.text)
    expect(texts.filter((text) => text.startsWith('Cause'))).toEqual(causes.slice(0, 12))
    expect(texts).toContain('and for 3 more causes')
  })

  test('a room without a shape is named, not drawn', () => {
    const corners = [
      [0, 0],
      [0, 0],
      [0, 0],
      [0, 0],
    ] as const
    const loft = room('loft', corners, { status: 'unfinished', corners: [], outline: [] })
    const drawn = sceneOf({ ...house(), floors: [], rooms: [loft], doorways: [] })
    expect(shapes('room', drawn)).toEqual([])
    expect(
      shapes('note', drawn)
        .map(({ lettering }) => lettering.text)
        .join(' '),
    ).toContain('Not drawn: loft')
  })

  test('a job without any room still has a sheet', () => {
    const empty = sceneOf({ ...house(), floors: [], rooms: [], doorways: [] })
    expect(empty.high.x).toBeGreaterThan(empty.low.x)
    expect(empty.high.y).toBeGreaterThan(empty.low.y)
  })
})

/** A dimension's line but for its ends, as broad as a stroke of a pencil. */
function bandOf({ line: [a, b] }: { readonly line: readonly [Point, Point] }, em: number) {
  return plate(middle(a, b), direction(a, b), distance(a, b) * 0.8, em * 0.3)
}

/** Which lettering stands on which, the lines of the title block aside: those stand closer. */
function clashesIn(drawn: Scene): string[] {
  const set = drawn.shapes.flatMap((shape) =>
    letterings(shape).map((lettering) => ({ shape, ground: groundOf(lettering) })),
  )
  const clashes = set.flatMap((one, i) =>
    set
      .slice(i + 1)
      .filter((other) => other.shape !== one.shape && overlap(one.ground, other.ground))
      .map((other) => `${one.shape.id} on ${other.shape.id}`),
  )
  return clashes.filter((clash) => !/^sheet \d+ on sheet \d+$/.test(clash))
}

describe('lettering in tight places', () => {
  test('of a bay window finds room', () => {
    const bay = [
      [0, 100],
      [40, 100],
      [60, 120],
      [90, 120],
      [110, 100],
      [150, 100],
      [150, 0],
      [0, 0],
    ] as const
    const drawn = sceneOf({ ...house(), floors: [], rooms: [room('bay', bay)], doorways: [] })
    const sizes = shapes('dimension', drawn)
    expect(sizes.length).toBeGreaterThan(6)
    expect(clashesIn(drawn)).toEqual([])
    const crossed = sizes.filter((size) => {
      const thin = bandOf(size, drawn.em)
      return sizes.some(
        (other) =>
          other !== size &&
          (overlap(thin, groundOf(other.lettering)) || overlap(thin, bandOf(other, drawn.em))),
      )
    })
    expect(crossed.map(({ id }) => id)).toEqual([])
  })

  test('of a room keeps off the column in its middle', () => {
    const square = [
      [0, 100],
      [100, 100],
      [100, 0],
      [0, 0],
    ] as const
    const column = { kind: 'column', label: 'column', gap: null, span: SPAN } as const
    const posted = room('a', square, { obstacles: [{ ...column, ring: box(46, 46, 54, 54) }] })
    const drawn = sceneOf({ ...house(), floors: [], rooms: [posted], doorways: [] })
    const [label] = shapes('label', drawn)
    expect(label!.lines.map(({ text }) => text)).toContain('a')
    expect(overlap(label!.plate, box(46, 46, 54, 54))).toBe(false)
  })

  test('of a long title stays on the sheet, bold as it is', () => {
    const title = 'Heron Cottage, the back bedroom and the landing before it'
    const drawn = sceneOf({ ...house(), title })
    const bold = shapes('note', drawn).filter(({ lettering }) => lettering.tone === 'title')
    expect(bold.map(({ lettering }) => lettering.text).join(' ')).toBe(title)
    for (const { lettering } of bold) {
      // Common faces run about a tenth wider in bold (from memory).
      const width = 1.1 * widthOf(lettering.text, lettering.height)
      expect(lettering.at.x + width).toBeLessThan(drawn.high.x)
    }
  })
})

describe('a doorway whose wall has no thickness yet', () => {
  const square = [
    [0, 100],
    [100, 100],
    [100, 0],
    [0, 0],
  ] as const
  const face = [at(30, 100), at(62, 100)] as const
  const drawn = sceneOf({
    ...house(),
    floors: [],
    rooms: [room('a', square)],
    doorways: [doorway('a', 'hall', { near: face, far: face })],
  })

  test('is drawn in a wall all the same, its door into the room', () => {
    expect(twiceAreaOf(shapes('masonry', drawn)[0]!.region)).toBeGreaterThan(0n)
    const [leaf] = shapes('opening', drawn)[0]!.leaves
    expect(Math.min(...leaf!.map(({ y }) => y))).toBe(at(0, 68).y)
  })
})

describe('rooms that nothing ties together', () => {
  const square = [
    [0, 100],
    [100, 100],
    [100, 0],
    [0, 0],
  ] as const

  test('stand beside each other', () => {
    const rooms = [room('a', square), room('b', square, { network: 1 })]
    const drawn = sceneOf({ ...house(), floors: [], rooms, doorways: [] })
    const [a, b] = shapes('room', drawn)
    expect(overlap(a!.ring, b!.ring)).toBe(false)
    expect(Math.max(...a!.ring.map(({ y }) => y))).toBe(Math.max(...b!.ring.map(({ y }) => y)))
  })
})

describe('the scale bar', () => {
  test.each([
    ['feet-inches', / ft$/],
    ['inches', / ft$/],
    ['mm', / m$/],
    ['cm', / m$/],
    ['m', / m$/],
  ] as const)('of a job in %s ends in %s', (units, unit) => {
    const [bar] = shapes('scale bar', sceneOf({ ...house(), units }))
    expect(bar!.marks.at(-1)!.text).toMatch(unit)
    expect(bar!.marks[0]!.text).toBe('0')
  })

  test('is as long as it says', () => {
    const [bar] = shapes('scale bar')
    const feet = /^(\d+) ft$/.exec(bar!.marks.at(-1)!.text)![1]!
    const [left, right] = bar!.frame
    expect(right!.x - left!.x).toBe(Number(feet) * 304_800_000)
    expect(right!.x - left!.x).toBeGreaterThan(6 * scene.em)
  })
})
