import { describe, expect, test } from 'vitest'
import { twiceArea } from '../../server/src/geometry/exact.ts'
import { firstFault } from '../../server/src/geometry/simple.ts'
import { cos, PI } from '../../server/src/units/functions.ts'
import { box, inches, surveyOf, toInches } from './text.ts'

const PLAIN = `12', 9', 12', 9'`
const first = (text: string) => surveyOf(text).rooms[0]!
const squareFeet = (ring: Parameters<typeof twiceArea>[0]) =>
  Number(twiceArea(ring)) / 2 / 304_800_000 ** 2
const under = (wall: string, ...below: string[]) => {
  const walls = [`north 12'`, `east 9'`, `south 12'`, `west 9'`]
  const lines = walls.flatMap((line) => [
    line,
    ...(line.startsWith(wall) ? below.map((b) => `  ${b}`) : []),
  ])
  return `room bunk\n${lines.map((line) => `  ${line}\n`).join('')}`
}

test('the outline runs counter-clockwise and knows its walls', () => {
  const { corners, outline, edges } = first(box('bunk', PLAIN))
  expect(inches(corners)).toEqual([
    [0, 0],
    [144, 0],
    [144, -108],
    [0, -108],
  ])
  expect(squareFeet(outline)).toBe(108)
  expect(edges.map(({ wall, recess }) => [wall, recess])).toEqual([
    [2, null],
    [1, null],
    [0, null],
    [3, null],
  ])
  edges.forEach(({ wall }, i) => {
    expect(outline[i]).toEqual(corners[(wall + 1) % 4])
  })
})

test('an alcove extends the outline, and its three sides are its own', () => {
  const room = first(under('north', `alcove 4' 0", 1' 0" from left, 1' 6" deep`))
  expect(squareFeet(room.outline)).toBe(108 + 6)
  const sides = room.edges.filter(({ recess }) => recess === 0)
  expect(sides).toHaveLength(3)
  expect(inches(room.outline)).toContainEqual([12, 18])
  expect(inches(room.outline)).toContainEqual([60, 18])
})

test('an alcove as wide as its wall leaves no edge without length', () => {
  const room = first(under('north', `alcove 12', 0" from left, 1' 6" deep`))
  expect(squareFeet(room.outline)).toBe(108 + 18)
  room.outline.forEach((point, i) => {
    expect(point).not.toEqual(room.outline[(i + 1) % room.outline.length])
  })
})

describe('a closet is a room behind its opening', () => {
  const closet = (line: string) => first(under('west', `closet ${line}`)).closets[0]!

  test('outside the wall by its thickness, wider than its opening', () => {
    const { outline, throat, name } = closet(
      `4' 0", 3' 2" from left, 2' deep, 6' inside, 1' left return`,
    )
    expect(name).toBe('bunk closet')
    expect(inches(outline)).toEqual([
      [-4.5, -82],
      [-4.5, -10],
      [-28.5, -10],
      [-28.5, -82],
    ])
    expect(inches(throat)).toEqual([
      [0, -70],
      [0, -22],
      [-4.5, -22],
      [-4.5, -70],
    ])
    for (const ring of [outline, throat]) expect(twiceArea(ring)).toBeGreaterThan(0n)
  })

  test('no wider than its opening unless it says so', () => {
    expect(squareFeet(closet(`4' 0", 3' 2" from left, 2' deep`).outline)).toBe(8)
  })

  test('a right return places it too, and both make its width', () => {
    const right = closet(`4' 0", 3' 2" from left, 2' deep, 6' inside, 6" right return`)
    expect(inches(right.outline)[0]).toEqual([-4.5, -88])
    const both = closet(`4' 0", 3' 2" from left, 2' deep, 1' left return, 6" right return`)
    expect(squareFeet(both.outline)).toBe(11)
  })
})

test('a hearth lies in the room against its wall', () => {
  const { obstacles } = first(under('west', `hearth 4' 0", 3' from left, 1' 6" deep, 1/2" gap`))
  expect(obstacles[0]!.kind).toBe('hearth')
  expect(toInches(obstacles[0]!.gap!)).toBe(0.5)
  expect(inches(obstacles[0]!.ring)).toEqual([
    [18, -72],
    [18, -24],
    [0, -24],
    [0, -72],
  ])
})

test('a column is 64 sides drawn round it, its nearest faces where they were read', () => {
  const { obstacles } = first(box('bunk', PLAIN, `column 8" round, 4' from west, 3' 2" from north`))
  const ring = obstacles[0]!.ring
  expect(ring).toHaveLength(64)
  expect(toInches(Math.min(...ring.map(({ x }) => x)))).toBe(48)
  expect(toInches(Math.max(...ring.map(({ y }) => y)))).toBe(-38)
  for (const { x, y } of ring) {
    const reach = Math.hypot(x / 25_400_000 - 52, y / 25_400_000 + 42)
    expect(reach).toBeCloseTo(4 / cos(PI / 64), 6)
  }
})

test('an island is placed by its nearest faces, off any two walls that meet', () => {
  const at = (from: string) =>
    inches(
      first(box('bunk', PLAIN, `island 3' east-west, 2' north-south, ${from}`)).obstacles[0]!.ring,
    )
  const ring = [
    [24, -36],
    [60, -36],
    [60, -12],
    [24, -12],
  ]
  expect(at(`2' from west, 1' from north`)).toEqual(ring)
  expect(at(`6' from south, 7' from east`)).toEqual(ring)
})

test('an island against the wall is no slip', () => {
  const { messages, rooms } = surveyOf(
    box('bunk', PLAIN, `island 3' east-west, 2' north-south, 0" from west, 0" from north`),
  )
  expect(messages).toEqual([])
  expect(rooms[0]!.obstacles).toHaveLength(1)
})

describe('curved walls keep the floor inside the real room', () => {
  const curved = (bow: string) => {
    const { outline } = first(`room bunk\n  north 12', ${bow}\n  east 9'\n  south 12'\n  west 9'\n`)
    expect(firstFault(outline)).toBeNull()
    return { outline, area: squareFeet(outline) - 108 }
  }
  /** Area under an arc of rise h over a chord of 12 feet. */
  const segment = (h: number) => {
    const radius = (36 + h * h) / (2 * h)
    const half = 2 * Math.atan2(h, 6)
    return radius * radius * (half - Math.sin(half) * Math.cos(half))
  }

  const RISES = [
    [`1/4"`, 1 / 48],
    [`8"`, 2 / 3],
    [`2'`, 2],
    [`5'`, 5],
  ] as const

  test.each(RISES)('out by %s: inscribed', (bow, rise) => {
    const { area } = curved(`${bow} bow`)
    expect(area).toBeLessThan(segment(rise))
    expect(area).toBeGreaterThan(segment(rise) * 0.93)
  })

  test.each(RISES)('in by %s: drawn round', (bow, rise) => {
    const { area } = curved(`${bow} bow in`)
    expect(-area).toBeGreaterThan(segment(rise))
    expect(-area).toBeLessThan(segment(rise) * 1.04)
  })
})

test('openings from either side, and by both jambs off one hook', () => {
  const { doorways } = surveyOf(
    under(
      'north',
      `door 30", 1' from left, to outside`,
      `door 30", 1' from right, to outside`,
      `opening 4' and 7' from left, to outside`,
    ),
  )
  expect(
    doorways.map(({ near, width }) => [...inches(near).map(([x]) => x), toInches(width)]),
  ).toEqual([
    [12, 42, 30],
    [102, 132, 30],
    [48, 84, 36],
  ])
  expect(doorways.map(({ to, toText, room }) => [to, toText, room])[0]).toEqual([
    null,
    'outside',
    'bunk',
  ])
})

test('a door that reads an eighth past its corner is moved back onto the wall', () => {
  const { doorways, messages } = surveyOf(
    under('north', `door 30", 9' 6 1/8" from left, to outside`),
  )
  expect(messages).toEqual([])
  expect(inches(doorways[0]!.near)).toEqual([
    [114, 0],
    [144, 0],
  ])
})

describe('what the tape touched, and what the floor runs to', () => {
  const head = (touching: string, base: string) =>
    `floorscribe 1\njob test\nunits feet-inches\ntape 1/16", touching ${touching}\nwalls 4 1/2" thick\nbase ${base}\n`
  const north = `door 30", 1' from left, to outside, in north`
  const size = (touching: string, base: string, ...lines: string[]) => {
    const { rooms, doorways } = surveyOf(box('bunk', PLAIN, north, ...lines), head(touching, base))
    return { corners: inches(rooms[0]!.corners), door: doorways[0]!, room: rooms[0]! }
  }

  test('a base that comes off lets the floor run to the wall', () => {
    const { corners, door } = size('base', '1/2" thick, off and back')
    expect(corners).toEqual([
      [-0.5, 0.5],
      [144.5, 0.5],
      [144.5, -108.5],
      [-0.5, -108.5],
    ])
    expect(inches(door.near)).toEqual([
      [12, 0.5],
      [42, 0.5],
    ])
    expect(inches(door.far)[0]).toEqual([12, 5])
  })

  test('a base that stays stops it, and its wall lies a base farther', () => {
    const { corners, door } = size('base', '1/2" thick, kept')
    expect(corners[2]).toEqual([144, -108])
    expect(inches(door.far)[0]).toEqual([12, 5])
    expect(size('wall', '1/2" thick, kept').corners[2]).toEqual([143.5, -107.5])
    expect(size('wall', '1/2" thick, off and back').corners[2]).toEqual([144, -108])
  })

  test('obstacles stay where they were read from', () => {
    const { room } = size(
      'base',
      '1/2" thick, new',
      `island 3' east-west, 2' north-south, 2' from west, 1' from north`,
    )
    expect(inches(room.obstacles[0]!.ring)[3]).toEqual([24, -12])
  })

  test('at an outside corner the base stands the other way', () => {
    const l = `room l\n  south 20'\n  west 8'\n  north 8'\n  west 6'\n  north 12'\n  east 14'\n`
    const { rooms } = surveyOf(l, head('base', '1/2" thick, none'))
    const { corners } = rooms[0]!
    const side = (i: number) =>
      toInches(
        Math.hypot(
          corners[(i + 1) % 6]!.x - corners[i]!.x,
          corners[(i + 1) % 6]!.y - corners[i]!.y,
        ),
      )
    expect([0, 1, 2, 3, 4, 5].map(side)).toEqual([241, 97, 96, 72, 145, 169])
  })

  test('one wall read to something else is brought to the others', () => {
    const text = `room bunk\n  north 12'\n  east 9'\n  south 12' 1", touching wall\n  west 9'\n`
    const closing = surveyOf(text, head('base', '1/2" thick, kept')).rooms[0]!.closing!
    expect(closing.length).toBe(0)
  })
})
