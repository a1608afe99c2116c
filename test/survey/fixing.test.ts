import { describe, expect, test } from 'vitest'
import type { Check } from '../../server/src/job/job.ts'
import { checkValue } from '../../server/src/survey/check-value.ts'
import { closetOf } from '../../server/src/survey/closets.ts'
import { directionsOf } from '../../server/src/survey/direction.ts'
import { shapeOf } from '../../server/src/survey/shape.ts'
import { allowedShapeDifference, missesWall } from '../../server/src/survey/shape-checks.ts'
import { shapeFault } from '../../server/src/survey/shape-faults.ts'
import { NM_PER_INCH } from '../../server/src/units/length.ts'
import {
  across,
  diagonal,
  four,
  nm,
  reading,
  recess,
  room,
  turnRight,
  type WallSaid,
} from './build.ts'
import { surveyOf, toInches } from './text.ts'

const ring = (...inches: readonly (readonly [number, number])[]) =>
  inches.map(([x, y]) => ({ x: x * NM_PER_INCH, y: y * NM_PER_INCH }))
const WALLS = four(`12'`, `9'`, `12'`, `9'`)

describe('what fixes an out-of-square room', () => {
  const loose = (walls: readonly string[], ...checks: readonly string[]) =>
    surveyOf(
      `room bunk\n  out of square\n${[...walls, ...checks].map((one) => `  ${one}\n`).join('')}`,
    )
  const walls = [`north 12'`, `east 9'`, `south 12'`, `west 9'`]

  test('a diagonal before a tie, whichever is written first', () => {
    const { rooms, messages } = loose(
      walls,
      `tie 5', 4' along north, 3' along west`,
      `diagonal 15', from north-west to south-east`,
    )
    expect(messages).toEqual([])
    expect(rooms[0]!.checks.map(({ fixes }) => fixes)).toEqual([false, true])
  })

  test('a diagonal that it does not have yet is asked for', () => {
    const five = [
      `corner p`,
      `north 12'`,
      `corner q`,
      `east 9'`,
      `corner r`,
      `south 9'`,
      `corner s`,
      `south-west 4' 3"`,
      `corner t`,
      `west 6'`,
    ]
    const asked = (...checks: readonly string[]) => loose(five, ...checks).messages[0]!.text
    expect(asked()).toContain('two more distances must hold it. Take the diagonal from p to r.')
    expect(asked(`diagonal 15', from p to r`)).toContain(
      'one more distance must hold it. Take the diagonal from p to s.',
    )
  })

  test('a wall longer than the others together', () => {
    const { messages } = loose([`north 12'`, `south-east 5'`, `west 3'`])
    expect(messages.map(({ code, text }) => [code, text.split(':')[0]])).toEqual([
      ['distances-cannot-meet', 'The walls of bunk cannot meet'],
    ])
  })
})

describe('a room has a shape', () => {
  const status = (walls: readonly WallSaid[], more: Parameters<typeof room>[2] = {}) => {
    const shape = shapeOf(room('bunk', walls, more), 'feet-inches')
    return [shape.status, shape.corners.length, shape.messages.length]
  }

  test.each<readonly [string, ReturnType<typeof status>, readonly unknown[]]>([
    ['measured', status(WALLS), ['measured', 4, 0]],
    ['not when a line of it is broken', status(WALLS, { broken: true }), ['broken', 0, 0]],
    ['not while it is being written', status(WALLS, { unfinished: true }), ['unfinished', 0, 0]],
    ['nor of two walls', status(WALLS.slice(0, 2)), ['unfinished', 0, 0]],
    ['nor of none', status([]), ['not measured', 0, 0]],
  ])('%s', (_, found, expected) => {
    expect(found).toEqual(expected)
  })
})

describe('corners that are no shape', () => {
  const fault = (...corners: readonly (readonly [number, number])[]) => {
    const walls = corners.map((_, i): WallSaid => ['north', `1'`, { called: `wall ${i}` }])
    const found = shapeFault(room('bunk', walls), ring(...corners), 'feet-inches')
    return found && [found.code, found.text.split('. ')[0]!.split(', so')[0]]
  }

  test.each([
    [
      'a square',
      [
        [0, 0],
        [9, 0],
        [9, -9],
        [0, -9],
      ],
      null,
    ],
    [
      'the first wall of no length',
      [
        [0, 0],
        [0, 0],
        [9, -9],
        [0, -9],
      ],
      ['wall-without-length', 'wall 0 has no length'],
    ],
    [
      'the last wall of no length',
      [
        [0, 0],
        [9, 0],
        [9, -9],
        [0, 0],
      ],
      ['wall-without-length', 'wall 3 has no length'],
    ],
    [
      'the first wall back along the last',
      [
        [0, 0],
        [90, 0],
        [90, -50],
        [120, -50],
        [120, 20],
        [-30, 20],
        [-30, -9],
        [50, -9],
        [50, 0],
      ],
      ['walls-double-back', 'wall 0 runs straight back along wall 8'],
    ],
    [
      'right to left',
      [
        [0, 0],
        [0, -9],
        [9, -9],
        [9, 0],
      ],
      ['walls-run-left', 'The walls of bunk run right to left'],
    ],
    [
      'crossed 4 along the first',
      [
        [0, 0],
        [9, 0],
        [9, -9],
        [4, -9],
        [4, 5],
        [0, 5],
      ],
      ['walls-cross', 'wall 3 crosses or touches wall 0, 4" from the left of wall 0'],
    ],
  ] as const)('%s', (_, corners, expected) => {
    expect(fault(...corners)).toEqual(expected)
  })
})

describe('checks against a shape', () => {
  const square = (corner: number): Check =>
    ({ kind: 'square', corner, span: reading(`1"`).span }) as Check

  // The diagonal of the largest 3-4-5 in whole feet, within 1/8": dθ = 5 · 1/8" / (12 · its unit).
  test.each([
    [`9' by 12': 9-12-15`, 144, 108, 0.15625],
    [`6' by 20': 6-8-10`, 240, 72, 0.15625],
    [`5' by 20': 3-4-5`, 240, 60, 0.260417],
    [`2' by 2': 3-4-5 on lines drawn on`, 24, 24, 0.104167],
  ])(
    'a corner tested square may be out by, on its shorter wall of %s',
    (_, east, south, allowed) => {
      const corners = ring([0, 0], [east, 0], [east, -south], [0, -south])
      const found = allowedShapeDifference(square(0) as never, corners, () => 0)
      expect(found / NM_PER_INCH).toBeCloseTo(allowed, 5)
    },
  )

  test('a tie in a corner by its own reading only', () => {
    const tie = { kind: 'corner tie', reading: reading(`5'`, `1/8"`) } as never
    expect(allowedShapeDifference(tie, [], () => nm(`1'`) ** 2)).toBe(nm(`1/4"`))
  })

  test('a corner at a wall of no length is not out of square', () => {
    const [a, b] = [ring([0, 0], [0, 0], [5, 5]), ring([0, 0], [5, 5], [5, 5])]
    expect([a, b].map((corners) => checkValue(square(1) as never, corners))).toEqual([0, 0])
  })

  // An L: from its south wall of 20' to its north wall of 8', which lies over x from 0 to 8'.
  const ell = ring([240, 0], [0, 0], [0, 96], [96, 96], [96, 168], [240, 168])
  test.each([
    ['comes down on it', `14' from left`, false],
    ['an inch past its right end', `11' 11" from left`, false],
    ['more than an inch past it', `11' 10" from left`, true],
    ['an inch past its left end', `20' 1" from left`, false],
    ['more than that', `20' 2" from left`, true],
  ])('a width %s', (_, at, misses) => {
    expect(missesWall(across(`8'`, 0, 2, at) as never, ell)).toBe(misses)
  })

  test('a width to a wall at right angles meets it nowhere; a diagonal always ends', () => {
    expect(missesWall(across(`8'`, 0, 1) as never, ell)).toBe(true)
    expect(missesWall(diagonal(`8'`, 0, 3) as never, ell)).toBe(false)
  })

  test('is not said to miss its wall while the room is surely misread', () => {
    const said = (east: string) =>
      surveyOf(
        `room l\n  south 20', called long\n  west 8'\n  north 8', called short\n  west 6'\n  north 12'\n  east ${east}\n  across 8', from long to short, 1' from left\n`,
      ).messages.map(({ code }) => code)
    expect(said(`14'`)).toEqual(['across-misses-wall'])
    expect(said(`15'`)).toEqual(['closing-error'])
  })
})

test('a room of turns only begins with them from east', () => {
  // A quarter right of east, and so on round.
  const quarter = turnRight(90)
  expect(directionsOf([quarter, quarter, quarter, quarter])).toEqual([
    { x: 0, y: -1 },
    { x: -1, y: 0 },
    { x: 0, y: 1 },
    { x: 1, y: 0 },
  ])
})

describe('closets', () => {
  const frame = {
    wall: 0,
    length: 144,
    along: { x: 1, y: 0 },
    out: { x: 0, y: 1 },
    left: { x: 0, y: 0 },
    right: { x: nm(`12'`), y: 0 },
  }
  const put = (thing: ReturnType<typeof recess>) => {
    const said: string[] = []
    const stretch = { left: nm(`2'`), right: nm(`6'`), sigma: 0, from: 'left' as const }
    const found = closetOf({ thing, index: 0, frame, stretch }, 0, {
      style: 'feet-inches',
      say: ({ code }) => said.push(code),
    })
    const outlines = found.map(({ outline }) =>
      outline.map(({ x, y }) => [toInches(x), toInches(y)]),
    )
    return { said, first: outlines[0]?.[0], count: found.length }
  }
  const closet = (more: Parameters<typeof recess>[4], kind: 'closet' | 'hearth' = 'closet') =>
    recess(kind, 0, `4'`, `2' from left`, { deep: `2'`, ...more })

  test.each([
    ['its depth', closet({ deep: '?' })],
    ['the thickness of its wall', closet({ thick: null })],
    ['a hearth', closet({}, 'hearth')],
  ])('none without %s', (_, thing) => {
    expect(put(thing)).toEqual({ said: [], first: undefined, count: 0 })
  })

  // σ of 4': 0.075"; allowed for two of them 0.212", for two and two returns of 1' 0.28".
  test.each([
    [closet({ inside: `4'` }), []],
    [closet({ inside: `3' 11 13/16"` }), []],
    [closet({ inside: `3' 11 3/4"` }), ['closet-narrower-than-opening']],
    [closet({ inside: `6'`, left: `1'`, right: `1'` }), []],
    [closet({ inside: `6' 0 1/4"`, left: `1'`, right: `1'` }), []],
    [closet({ inside: `5' 11 3/4"`, left: `1'`, right: `1'` }), []],
    [closet({ inside: `6' 0 3/8"`, left: `1'`, right: `1'` }), ['closet-returns-disagree']],
    [closet({ inside: `5' 11 5/8"`, left: `1'`, right: `1'` }), ['closet-returns-disagree']],
    [closet({ inside: `6'` }), ['closet-centred']],
  ])('its width inside against its opening of 4 feet and its returns', (thing, said) => {
    expect(put(thing).said).toEqual(said)
  })
})
