import fc from 'fast-check'
import { expect, test } from 'vitest'
import { twiceArea } from '../../server/src/geometry/exact.ts'
import { firstFault } from '../../server/src/geometry/simple.ts'
import type { Way } from '../../server/src/job/job.ts'
import { survey } from '../../server/src/survey/survey-job.ts'
import { door, job, room, type WallSaid } from './build.ts'

const SEED = 20_271_125
const WAYS: readonly Way[] = ['north', 'east', 'south', 'west']

/** Walls of any ways and lengths, sense or none. */
const anyWalls = fc.array(
  fc.tuple(
    fc.constantFrom<Way>(...WAYS, 'north-east', 'south-west'),
    fc.integer({ min: 0, max: 4000 }),
  ),
  { minLength: 1, maxLength: 9 },
)

const inSixteenths = (sixteenths: number) => `${(sixteenths / 16).toFixed(4)}"`
const asWalls = (walls: readonly (readonly [Way, number])[]): WallSaid[] =>
  walls.map(([way, size]) => [way, inSixteenths(size)])

/** Every number in a value, however deep. */
function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value]
  if (Array.isArray(value)) return value.flatMap(numbersIn)
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : []
}

const isClean = (n: number) => Number.isFinite(n) && !Object.is(n, -0)

test('no walls at all make it throw, and no NaN, Infinity or −0 comes out', () => {
  fc.assert(
    fc.property(anyWalls, anyWalls, fc.boolean(), (a, b, outOfSquare) => {
      const openings = [door(0, `30"`, `1' from left`, { to: 'b' })]
      const back = [door(b.length - 1, `30"`, `1' from left`, { to: 'a' })]
      const found = survey(
        job([
          room('a', asWalls(a), { openings, outOfSquare }),
          room('b', asWalls(b), { openings: back }),
        ]),
      )
      const computed = found.rooms.map(({ room: _, checks: __, ...rest }) => rest)
      expect(numbersIn([computed, found.loops]).filter((n) => !isClean(n))).toEqual([])
      for (const { outline, status } of found.rooms) {
        expect(outline.length > 0).toBe(status === 'measured')
        if (status === 'measured') {
          expect(firstFault(outline)).toBeNull()
          expect(twiceArea(outline)).toBeGreaterThan(0n)
        }
      }
    }),
    { numRuns: 400, seed: SEED },
  )
})

/** An L of readings that miss closing by a little. */
const lRoom = fc
  .record({
    width: fc.integer({ min: 1200, max: 4000 }),
    depth: fc.integer({ min: 1200, max: 4000 }),
    jog: fc.integer({ min: 200, max: 1000 }),
    cut: fc.integer({ min: 200, max: 1000 }),
    off: fc.array(fc.integer({ min: -2, max: 2 }), { minLength: 6, maxLength: 6 }),
  })
  .map(({ width, depth, jog, cut, off }) => {
    const sizes = [width - cut, jog, cut, depth - jog, width, depth]
    return sizes.map((size, i) => size + off[i]!)
  })

const L_WAYS: readonly Way[] = ['north', 'east', 'north', 'east', 'south', 'west']
const lWalls = (sizes: readonly number[], quarters: number, first: number): WallSaid[] => {
  const turned = L_WAYS.map((way) => WAYS[(WAYS.indexOf(way) + quarters) % 4]!)
  return sizes.map((_, i) => {
    const at = (first + i) % 6
    return [turned[at]!, inSixteenths(sizes[at]!)]
  })
}

test('a right-angled room is square to the nanometre, and inside its readings’ tolerance of them', () => {
  fc.assert(
    fc.property(lRoom, (sizes) => {
      const { corners } = survey(job([room('l', lWalls(sizes, 0, 0))])).rooms[0]!
      L_WAYS.forEach((way, i) => {
        const [from, to] = [corners[i]!, corners[(i + 1) % 6]!]
        expect(way === 'north' || way === 'south' ? from.y - to.y : from.x - to.x).toBe(0)
      })
    }),
    { numRuns: 200, seed: SEED },
  )
})

test('turned by quarter turns or begun at another corner, it has the same area within its rounding', () => {
  fc.assert(
    fc.property(
      lRoom,
      fc.integer({ min: 0, max: 3 }),
      fc.integer({ min: 0, max: 5 }),
      (sizes, quarters, first) => {
        const area = (walls: readonly WallSaid[]) =>
          twiceArea(survey(job([room('l', walls)])).rooms[0]!.outline)
        const difference = area(lWalls(sizes, 0, 0)) - area(lWalls(sizes, quarters, first))
        // A corner moves by half a nanometre at most: the change is within a strip of that along the rim.
        const perimeter = BigInt(sizes.reduce((sum, size) => sum + size, 0)) * 1_587_500n
        expect(difference < 0n ? -difference : difference).toBeLessThanOrEqual(4n * perimeter)
      },
    ),
    { numRuns: 200, seed: SEED },
  )
})
