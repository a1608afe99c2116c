import { describe, expect, it } from 'vitest'
import type { Room } from '../../server/src/job/job.ts'
import { bound, HEAD, said, WALLS } from './bound.ts'

const room = (line: string): string => `${HEAD}room den\n${WALLS}  ${line}\nroom hall\n${WALLS}`
const den = (line: string): Room => bound(room(line)).job.rooms[0]!

describe('checks', () => {
  it.each([
    [
      "diagonal 16'",
      'ends-not-said: This diagonal line still needs the corners that it joins, such as from north-west to south-east.',
    ],
    [
      "across 12', middle",
      'ends-not-said: This across line still needs the walls that it joins, such as from north to south.',
    ],
    [
      "across 12', from north to south",
      'ends-not-said: This across line still needs its place along the first wall: middle, or 6" from left.',
    ],
    [
      "tie 10', 6' along north",
      'ends-not-said: This tie line still needs its two ends, such as 6\' 0" along north, 8\' 0" along east; or from west to east of den.',
    ],
    [
      "tie 10', 6' along north, ? along east",
      'ends-not-said: This tie line still needs how far its marks are from the corner.',
    ],
  ])('%s is unfinished', (line, text) => {
    expect(said(room(line))).toEqual([`10 incomplete ${text}`])
    expect(den(line).checks).toEqual([])
  })

  it.each(['diagonal', 'across', 'tie'])('a %s of nothing is none', (word) => {
    const ends = {
      diagonal: 'from north-west to south-east',
      across: 'from north to south, middle',
      tie: "6' along north, 8' along east",
    }
    expect(said(room(`${word} 0", ${ends[word as keyof typeof ends]}`))[0]).toContain(
      'size-of-nothing',
    )
  })

  it('a tie between marks along two walls of a corner, named in either order', () => {
    for (const [marks, first, second] of [
      ['6\' 0" along north, 8\' 0" along east', 0, 1],
      ['8\' 0" along east, 6\' 0" along north', 1, 0],
    ] as const) {
      expect(den(`tie 10' 0", ${marks}`).checks).toMatchObject([
        { kind: 'corner tie', corner: 1, first, second, reading: { text: '10\' 0"' } },
      ])
    }
    expect(said(room("tie 10', 6' along north, 8' along south"))).toEqual([
      '10 error wall-does-not-meet: north and south do not meet in a corner, so the marks of this tie have none to be read from. Name two walls that meet.',
    ])
  })

  it('a tie through a door to a wall of another room', () => {
    expect(den('tie 24\' 0", from west to east of hall').checks).toMatchObject([
      { kind: 'room tie', from: 3, room: { key: 'hall' }, to: 1 },
    ])
    expect(said(room("tie 24', from west to east of hal"))[0]).toContain(
      'No room is called hal. Is hall meant?',
    )
  })

  it('a corner tested 3-4-5', () => {
    expect(den('square south-east').checks).toMatchObject([{ kind: 'square', corner: 2 }])
  })
})

describe('obstacles', () => {
  it('from two walls that meet, to the nearest face', () => {
    expect(
      den('column 8" round, 4\' 0" from west, 3\' 2" from north, 1/2" gap').obstacles,
    ).toMatchObject([
      {
        kind: 'column',
        round: { text: '8"' },
        eastWest: null,
        from: [{ wall: 3, distance: { text: '4\' 0"' } }, { wall: 0 }],
        gap: 12_700_000,
      },
    ])
  })

  it('by alone is east-west by north-south, with a note unless it is square', () => {
    const line = (size: string) => `vent ${size}, 4' from west, 3' from north`
    expect(den(line('4" x 10"')).obstacles).toMatchObject([
      { eastWest: { nm: 101_600_000 }, northSouth: { nm: 254_000_000 } },
    ])
    expect(said(room(line('4" x 10"')), { notes: true })).toEqual([
      '10 note size-order-taken: 4" x 10" is read as east-west by north-south. If it lies the other way, exchange the two.',
    ])
    expect(said(room(line('8" x 8"')), { notes: true })).toEqual([])
  })

  it.each([
    [
      "island 6' east-west, 3' from east, 4' from north",
      'incomplete size-not-said: How large is this island? Write 8" round, or 6\' 0" east-west, 3\' 0" north-south.',
    ],
    [
      'column 8" round, 8" x 8", 3\' from east, 4\' from north',
      'error size-said-twice: This column says its size twice. Keep one: round, or east-west and north-south.',
    ],
    [
      'column 8" round, 3\' from east',
      'incomplete place-not-said: Where is this column? Write how far its nearest faces are from two walls that meet, such as 4\' 0" from west, 3\' 2" from north.',
    ],
    [
      "column 8\" round, 3' from east, 4' from west",
      'error place-not-clear: east and west do not place this column: two distances are needed, from walls that are not in line and do not face each other.',
    ],
    [
      "column 8\" round, 3' from east, 4' from west, 2' from north",
      'error place-not-clear: east, west and north do not place this column: two distances are needed, from walls that are not in line and do not face each other.',
    ],
    [
      "column 0\" round, 3' from east, 4' from north",
      'error size-of-nothing: 0" is no size for this column. Write what the tape shows, or ? while it is still to be taken.',
    ],
  ])('%s', (line, text) => {
    expect(said(room(line))).toEqual([`10 ${text}`])
  })

  it('an unknown wall is said once and not asked for again', () => {
    expect(said(room("column 8\" round, 3' from bay, 4' from north"))).toEqual([
      '10 error name-unknown: No wall of den is called bay. Its walls are north, east, south and west.',
    ])
  })
})

describe('recesses', () => {
  const recess = (line: string) => `${HEAD}room den\n${WALLS}    ${line}\n`

  it('a hearth and an alcove want their depth', () => {
    expect(said(recess('hearth 5\' 0", 2\' 0" from left'))).toEqual([
      '10 incomplete depth-not-said: How deep is the hearth? Write it as in 2\' 0" deep.',
    ])
    expect(said(recess('alcove 4\' 0", 2\' 0" from left, 0" deep'))).toEqual([
      '10 error size-of-nothing: 0" is no size for this alcove. Write what the tape shows, or ? while it is still to be taken.',
    ])
  })
})

describe('what is still to be read', () => {
  it('is listed once for a room, and once what is to be read again', () => {
    const text = room('diagonal ?, from north-west to south-east').replace(
      '10\' 8 1/8"\n',
      '10\' 8 1/8"?\n    door ?, 14" from left, to hall\n    closet 24", ? from right, ? deep\n',
    )
    expect(said(text)).toEqual([
      '9 incomplete readings-to-take-again: To be read again in den: west.',
      '10 incomplete readings-to-take: Still to be read in den: width of the door to hall, place of the den closet, depth of the den closet and a diagonal.',
    ])
  })
})
