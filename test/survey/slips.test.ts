import { describe, expect, test } from 'vitest'
import type { Check } from '../../server/src/job/job.ts'
import { settlingDiagonal } from '../../server/src/survey/settling.ts'
import { type Slip, traverseSlips } from '../../server/src/survey/slip.ts'
import { readWalls } from '../../server/src/survey/walls.ts'
import { NM_PER_INCH } from '../../server/src/units/length.ts'
import { across, diagonal, four, name, reading, room, type WallSaid } from './build.ts'
import { surveyOf } from './text.ts'

const EAST_A_FOOT_LONG = four(`12'`, `10'`, `12'`, `9'`)

function slipsIn(walls: readonly WallSaid[], checks: readonly Check[] = []) {
  const made = room('bunk', walls, { checks })
  const found = traverseSlips(made, readWalls(made)!, 'feet-inches')
  return found.map(({ of, likely, checks: agreeing }) => [
    made.walls[of.index]!.label,
    likely / NM_PER_INCH,
    agreeing,
  ])
}

const BOTH = [
  ['east', 9 * 12, 0],
  ['west', 10 * 12, 0],
]

describe('walls of which a likely slip would explain a miss', () => {
  test('either wall that lies along it', () => {
    expect(slipsIn(EAST_A_FOOT_LONG)).toEqual(BOTH)
  })

  test('none that was read twice', () => {
    expect(
      slipsIn(four(`12'`, `10'`, `12'`, `9'`).with(1, ['east', `10'`, { again: [`10'`] }])),
    ).toEqual(BOTH.slice(1))
  })

  test('not while it misses the other way too', () => {
    expect(slipsIn(four(`12' 5"`, `10'`, `12'`, `9'`))).toEqual([])
    expect(slipsIn(four(`12'`, `10'`, `12'`, `9' 4"`))).toEqual([])
  })

  test('by the amount that closes best', () => {
    // An inch too long to within 1/16": half an inch would leave 9/16", more than 0.3" is allowed.
    expect(slipsIn(four(`12'`, `9' 1 1/16"`, `12'`, `9'`))).toEqual([
      ['east', 9 * 12 + 1 / 16, 0],
      ['west', 9 * 12 + 1, 0],
    ])
    // Rough readings allow a foot and an inch as well: the amount nearest to the miss of 8" is taken.
    const rough: readonly WallSaid[] = [
      ['north', `12'`],
      ['east', `9' 8"`, { sigma: `4"` }],
      ['south', `12'`],
      ['west', `9'`, { sigma: `4"` }],
    ]
    expect(slipsIn(rough)).toEqual([
      ['east', 8 * 12 + 8, 0],
      ['west', 10 * 12, 0],
    ])
  })

  const corner = { kind: 'square', corner: 0, span: reading(`1"`).span } as Check
  const roomTie = {
    kind: 'room tie',
    from: 0,
    to: 2,
    room: name('hall'),
    reading: reading(`40'`),
    span: reading(`1"`).span,
  } as Check

  test.each<readonly [string, readonly Check[], readonly unknown[]]>([
    ['a diagonal of one', [diagonal(`15'`, 0, 2)], [['east', 108, 1]]],
    ['a diagonal of the other', [diagonal(`15' 7 1/2"`, 0, 2)], [['west', 120, 1]]],
    ['a width of one', [across(`9'`, 0, 2)], [['east', 108, 1]]],
    ['both of one', [diagonal(`15'`, 0, 2), across(`9'`, 0, 2)], [['east', 108, 2]]],
    ['one of each', [diagonal(`15'`, 0, 2), across(`10'`, 0, 2)], BOTH],
    ['a diagonal of neither', [diagonal(`16'`, 0, 2)], BOTH],
    ['a corner tested square', [corner], BOTH],
    ['a tie to another room', [roomTie], BOTH],
    ['a reading still to be taken', [diagonal('?', 0, 2)], BOTH],
    ['a width that meets no wall', [across(`9'`, 0, 1)], BOTH],
    [
      'all that tell nothing and one that does',
      [corner, roomTie, diagonal('?', 1, 3), diagonal(`15'`, 0, 2)],
      [['east', 108, 1]],
    ],
  ])('told apart by checks: %s', (_, checks, left) => {
    expect(slipsIn(EAST_A_FOOT_LONG, checks)).toEqual(left)
  })
})

describe('the diagonal that would settle it', () => {
  const walls = readWalls(room('bunk', EAST_A_FOOT_LONG))!
  const suspect = (index: number, likely: string): Slip => ({
    of: { kind: 'wall', index },
    amount: { nm: 0, words: '' },
    likely: reading(likely).nm!,
    left: 0,
    checks: 0,
  })
  const east = suspect(1, `9'`)
  const west = suspect(3, `10'`)

  test('either one between two: the first is taken', () => {
    // 15' if east is wrong, 15' 7 7/16" if west is.
    expect(settlingDiagonal(walls, [east, west], NM_PER_INCH)).toEqual({
      from: 0,
      to: 2,
      all: true,
    })
    expect(settlingDiagonal(walls, [east, west], 7 * NM_PER_INCH)).not.toBeNull()
    expect(settlingDiagonal(walls, [east, west], 8 * NM_PER_INCH)).toBeNull()
  })

  test('none for one suspect, or for the same one twice', () => {
    expect(settlingDiagonal(walls, [east], 0)).toBeNull()
    expect(settlingDiagonal(walls, [east, east], 0)).toBeNull()
    expect(settlingDiagonal(walls, [east, east, west], 1)).toMatchObject({ all: false })
  })

  const many = (suspects: number) =>
    Array.from({ length: suspects }, (_, i) => (i % 2 ? east : west))
  const sided = (count: number) =>
    readWalls(
      room(
        'loft',
        Array.from({ length: count / 2 - 1 }, (_, i): readonly WallSaid[] => [
          ['north', i === 0 ? `4'` : `3'`],
          ['east', `1'`],
        ])
          .flat()
          .concat([
            ['south', `${3 * (count / 2 - 1)}'`],
            ['west', `${count / 2 - 1}'`],
          ]),
      ),
    )!
  const first = suspect(0, `3'`)
  const last = (count: number) => suspect(count - 4, `2'`)

  test('is looked for among eight suspects and in rooms of 24 walls', () => {
    expect(settlingDiagonal(walls, many(8), 1)).not.toBeNull()
    expect(settlingDiagonal(walls, many(9), 1)).toBeNull()
    expect(settlingDiagonal(sided(24), [first, last(24)], 1)).not.toBeNull()
    expect(settlingDiagonal(sided(26), [first, last(26)], 1)).toBeNull()
  })
})

describe('a slip among distances', () => {
  const loose = (...checks: readonly string[]) =>
    surveyOf(
      `room bunk\n  out of square\n  north 12'\n  east 9'\n  south 12'\n  west 9'\n${checks.map((check) => `  ${check}\n`).join('')}`,
    ).messages.map(({ text }) => text.split(/(?<=\.) /)[1])

  test('none in a reading taken twice', () => {
    const wrong = [
      `diagonal 15', from north-west to south-east`,
      `diagonal 16', from north-east to south-west`,
    ]
    expect(loose(...wrong)[0]).toContain('one foot')
    expect(loose(wrong[0]!, wrong[1]!, `  again 16'`)[0]).not.toContain('one foot')
  })

  test('the one among spare readings that the others leave alone', () => {
    expect(
      loose(
        `diagonal 15', from north-west to south-east`,
        `diagonal 15', from north-east to south-west`,
        `across 10', from north to south, middle`,
      ),
    ).toEqual([`The width from north to south is the likely slip, one foot: with 9' 0" all agree.`])
  })
})
