import { describe, expect, test } from 'vitest'
import { surveyOf, toInches } from './text.ts'

const PARLOUR = `room old parlour
  out of square
  north       14' 3 1/2"
  east        12' 3 7/8"
    again     12' 4"
  south       about 14' 7 1/4"
  west        12' 0 1/4"
  diagonal    18' 11 3/8", from north-west to south-east
  diagonal    18' 10 1/4", from north-east to south-west
  across      12' 0 3/8", from north to south, 6" from left
  across      12' 2 1/8", from north to south, middle
  across      12' 3 3/4", from north to south, 6" from right
`

const side = (a: { x: number; y: number }, b: { x: number; y: number }) =>
  toInches(Math.hypot(b.x - a.x, b.y - a.y))

describe('an out-of-square parlour', () => {
  const { rooms, messages } = surveyOf(PARLOUR)
  const { corners, checks, closing } = rooms[0]!
  const [a, b, c, d] = [0, 1, 2, 3].map((i) => corners[i]!) as [
    { x: number; y: number },
    { x: number; y: number },
    { x: number; y: number },
    { x: number; y: number },
  ]

  test('its walls and its first diagonal are as read, the first wall keeps its way', () => {
    expect(side(a, b)).toBeCloseTo(171.5, 3)
    expect(side(b, c)).toBeCloseTo(147.9375, 3)
    expect(side(c, d)).toBeCloseTo(175.25, 3)
    expect(side(d, a)).toBeCloseTo(144.25, 3)
    expect(side(a, c)).toBeCloseTo(227.375, 3)
    expect(b.y).toBe(0)
    expect(closing!.rule).toBe('distances')
  })

  test('the first diagonal fixes it, the other four readings check it and agree', () => {
    expect(checks.map(({ fixes }) => fixes)).toEqual([true, false, false, false, false])
    for (const { difference, allowed } of checks) expect(Math.abs(difference)).toBeLessThan(allowed)
    expect(toInches(checks[0]!.difference)).toBe(0)
    expect(messages).toEqual([])
  })
})

/** A five-sided room from known corners: its distances lead back to them. */
const FIVE = [
  [0, 0],
  [150, 0],
  [165, -90],
  [80, -140],
  [-12, -100],
] as const

const far = (i: number, j: number) => {
  const [a, b] = [FIVE[i % 5]!, FIVE[j % 5]!]
  return `${Math.hypot(b[0] - a[0], b[1] - a[1]).toFixed(5)}"`
}

test('five walls and two diagonals give back the corners that they were taken from', () => {
  const ways = ['north', 'east', 'south-east', 'south-west', 'west']
  const walls = ways.map((way, i) => `  ${way} ${far(i, i + 1)}\n`).join('')
  const text = `room five\n  out of square\n${walls}  corner tip\n  diagonal ${far(0, 2)}, from tip to x\n`
  const named = text
    .replace('  corner tip\n', '')
    .replace('  north ', '  corner p\n  north ')
    .replace('  south-east ', '  corner r\n  south-east ')
    .replace('  south-west ', '  corner s\n  south-west ')
    .replace(`from tip to x`, 'from p to r')
  const { rooms } = surveyOf(`${named}  diagonal ${far(0, 3)}, from p to s\n`)
  const { corners, status, checks } = rooms[0]!
  expect(status).toBe('measured')
  expect(checks.map(({ fixes }) => fixes)).toEqual([true, true])
  corners.forEach(({ x, y }, i) => {
    expect(Math.abs(toInches(x) - FIVE[i]![0])).toBeLessThan(0.002)
    expect(Math.abs(toInches(y) - FIVE[i]![1])).toBeLessThan(0.002)
  })
})

/** An L whose first wall is short: its four triangles are stout, wherever the room is begun. */
const ELL = [
  [0, 0],
  [25, 0],
  [25, -135],
  [210, -135],
  [210, -295],
  [2, -294],
] as const

test.each([0, 1, 2, 3, 4, 5])('triangles hold a room, begun at its wall %i', (first) => {
  const at = (i: number) => ELL[i % 6]!
  const apart = (i: number, j: number) => Math.hypot(at(j)[0] - at(i)[0], at(j)[1] - at(i)[1])
  const ways = ['north', 'east', 'north', 'east', 'south', 'west']
  const walls = [0, 1, 2, 3, 4, 5].map((step) => {
    const wall = (first + step) % 6
    return `  corner c${wall}\n  ${ways[wall]} ${apart(wall, wall + 1).toFixed(4)}"\n`
  })
  const fan = [3, 4, 5].map((to) => `  diagonal ${apart(1, to).toFixed(4)}", from c1 to c${to}\n`)
  const { rooms, messages } = surveyOf(`room ell\n  out of square\n${[...walls, ...fan].join('')}`)
  expect(messages).toEqual([])
  expect(rooms[0]!.checks.map(({ fixes }) => fixes)).toEqual([true, true, true])
})

test('a triangle is fixed by its walls', () => {
  const { rooms } = surveyOf(
    `room eaves\n  out of square\n  north 4'\n  south-east 5'\n  west 3'\n`,
  )
  const { corners, status } = rooms[0]!
  expect(status).toBe('measured')
  expect(corners.map(({ x, y }) => [toInches(x), toInches(y)])).toEqual([
    [0, 0],
    [48, 0],
    [0, -36],
  ])
})

test('a width fixes a room only where it says how far the walls are pushed over', () => {
  const walls = `  north 12'\n  east 9'\n  south 12'\n  west 9'\n`
  const width = `  across 9', from north to south, middle\n`
  const room = (checks: string) => surveyOf(`room a\n  out of square\n${walls}${checks}`).rooms[0]!
  expect(room(width).status).toBe('unfinished')
  const fixed = room(`${width}  diagonal 15', from north-west to south-east\n`)
  expect(fixed.checks.map(({ fixes }) => fixes)).toEqual([false, true])
})

test('a tie in a corner fixes a room that furniture leaves no diagonal', () => {
  const { rooms } = surveyOf(
    `room a\n  out of square\n  north 12'\n  east 9'\n  south 12'\n  west 9'\n  tie 5', 4' along north, 3' along west\n`,
  )
  expect(rooms[0]!.status).toBe('measured')
  expect(rooms[0]!.checks.map(({ fixes }) => fixes)).toEqual([true])
  expect(toInches(rooms[0]!.corners[3]!.x)).toBeCloseTo(0, 3)
})
