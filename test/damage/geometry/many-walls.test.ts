import { describe, expect, test } from 'vitest'
import { printExact } from '../../../server/src/units/print.ts'
import { effort } from '../../effort.ts'
import { compiled, FLOOR, HEAD, PRODUCT, pressing, quantity } from '../job.ts'

type Point = readonly [x: number, y: number]

/** Walls along the axes, clockwise from corner to corner, in units of so many nanometres. */
function wallsOf(corners: readonly Point[], unit: number): string {
  return corners
    .map(([x, y], i) => {
      const [nextX, nextY] = corners[(i + 1) % corners.length]!
      const way = nextX > x ? 'north' : nextX < x ? 'south' : nextY < y ? 'east' : 'west'
      const length = Math.abs(nextX - x) + Math.abs(nextY - y)
      const called = i === 0 ? ', called first wall' : ''
      return `  ${way} ${printExact(length * unit, 'mm')}${called}\n`
    })
    .join('')
}

/** Teeth hang down from one long wall: four walls each. */
function comb(teeth: number): readonly Point[] {
  const hanging = Array.from({ length: teeth }, (_, i): Point[] => {
    const right = 2 * (teeth - i)
    return [
      [right, -5],
      [right - 1, -5],
      [right - 1, -1],
      [right - 2, -1],
    ]
  })
  return [[0, 0], [2 * teeth, 0], ...hanging.flat().slice(0, -1), [0, -1]]
}

/** A corridor that winds inwards: eight walls each turn, a way in and the same way back beside it. */
function spiral(turns: number): readonly Point[] {
  const outer: Point[] = [[0, 0]]
  const inner: Point[] = [[0, -1]]
  const side = 4 * turns
  for (let k = 0; k < turns; k++) {
    const [near, far] = [2 * k, side - 2 * k]
    outer.push([far, -near], [far, -far], [near, -far], [near, -near - 2])
    inner.push(
      [far - 1, -near - 1],
      [far - 1, -far + 1],
      [near + 1, -far + 1],
      [near + 1, -near - 3],
    )
  }
  return [...outer, ...inner.slice(0, -1).toReversed()]
}

/** Points of a star, each with a slant out and a slant in, to the nanometre; its points are ever sharper. */
function star(points: number): string {
  const corners = Array.from({ length: 2 * points }, (_, i) => {
    const [turn, reach] = [(-Math.PI * i) / points + Math.PI / 2, i % 2 === 0 ? 30e9 : 12e9]
    return [Math.round(reach * Math.cos(turn)), Math.round(reach * Math.sin(turn))] as const
  })
  return corners
    .map(([x, y], i) => {
      const [nextX, nextY] = corners[(i + 1) % corners.length]!
      const [east, north] = [nextX - x, nextY - y]
      const length = printExact(Math.round(Math.hypot(east, north)), 'mm')
      const way = (nm: number, plus: string, minus: string) =>
        nm === 0 ? '' : `, ${printExact(Math.abs(nm), 'mm')} ${nm > 0 ? plus : minus}`
      return `  slant ${length}${way(east, 'east', 'west')}${way(north, 'north', 'south')}\n`
    })
    .join('')
}

const room = (walls: string) => `${HEAD}room bedroom\n${walls}`
const codes = (text: string) => [...new Set(pressing(compiled(text)).map(({ code }) => code))]

describe('walls without number', () => {
  const WALLS = effort(4_000, 100_000)

  test('a comb of 100 000 walls is measured', () => {
    const text = room(wallsOf(comb(WALLS / 4), 25.4e6))
    expect(compiled(text).survey.rooms[0]!.corners.length).toBe(WALLS + 2)
    expect(codes(text)).toEqual(['job-unfinished'])
  })

  test('a spiral of 10 000 walls is measured', () => {
    const corners = spiral(effort(50, 1250))
    const text = room(wallsOf(corners, 10e6))
    expect(compiled(text).survey.rooms[0]!.status).toBe('measured')
    expect(codes(text)).toEqual(['job-unfinished'])
  })

  test('a star of 20 000 walls is measured', () => {
    const text = room(star(effort(300, 10_000)))
    expect(compiled(text).survey.rooms[0]!.status).toBe('measured')
    expect(codes(text)).toEqual(['job-unfinished'])
  })

  test('a comb is laid, and counted', () => {
    const text =
      HEAD +
      PRODUCT +
      `room bedroom\n${wallsOf(comb(20), 304.8e6)}` +
      FLOOR.replace('north of', 'first wall of')
    const job = compiled(text)
    expect(pressing(job).filter(({ weight }) => weight === 'error')).toEqual([])
    expect(quantity(job, 'floor area')).toBe('120.0 sq ft')
    expect(quantity(job, 'boxes')).toMatch(/^[0-9]+ boxes$/)
  })
})
