import { describe, expect, test } from 'vitest'
import type { Message } from '../../server/src/facts/message.ts'
import type { Opening, Room } from '../../server/src/job/job.ts'
import { obstaclesOf } from '../../server/src/survey/obstacles.ts'
import { placesOf } from '../../server/src/survey/places.ts'
import { shapeOf } from '../../server/src/survey/shape.ts'
import { door, four, nm, obstacle, room, type WallSaid } from './build.ts'
import { toInches } from './text.ts'

function placed(made: Room) {
  const messages: Message[] = []
  const places = placesOf(shapeOf(made, 'feet-inches'), 'feet-inches', (one) => messages.push(one))
  return {
    said: messages.map(({ code }) => code),
    at: places.openings.map(({ stretch }) => [toInches(stretch.left), toInches(stretch.right)]),
  }
}

const PLAIN = four(`12'`, `9'`, `12'`, `9'`)
const withDoor = (opening: Opening, walls: readonly WallSaid[] = PLAIN) =>
  placed(room('bunk', walls, { openings: [opening] }))

describe('a door at the end of its wall', () => {
  // West was read as 9' 0 3/4" and comes out 3/8" shorter; the readings of the door allow 0.284".
  test.each<readonly [string, readonly string[] | null, string]>([
    [`6' 4 1/4"`, [], 'ends on it'],
    [`6' 4 5/8"`, [], 'ends past it by no more than its readings allow: moved back'],
    [`6' 4 3/4"`, ['opening-past-wall'], 'ends past it as it comes out'],
    [`6' 5"`, ['opening-past-wall'], 'ends past what was read by no more than allowed'],
    [`6' 5 1/8"`, null, 'ends past what was read, which is said where it is typed'],
  ])('%s from left', (from, said) => {
    const walls = PLAIN.with(3, ['west', `9' 0 3/4"`])
    const found = withDoor(door(3, `32"`, `${from} from left`), walls)
    expect(found.said).toEqual(said ?? [])
    expect(found.at).toHaveLength(said?.length === 0 ? 1 : 0)
  })

  test.each([
    ['the far jamb past the wall', `6'`, `9' 3"`],
    ['the far jamb before the near one', `3'`, `1'`],
    ['both jambs at one place', `3'`, `3'`],
  ])('%s is said where it is typed', (_, near, far) => {
    const found = withDoor(door(3, `24"`, `${near} from left`, { far }))
    expect(found.at).toEqual([])
    expect(found.said.filter((code) => code === 'opening-past-wall')).toEqual([])
  })
})

describe('both jambs and the width', () => {
  // σ of 1' 2", 3' 8" and 30": 0.066", 0.074", 0.070"; twice their root of squares is 0.243".
  test.each([
    [`3' 8"`, []],
    [`3' 8 3/16"`, []],
    [`3' 7 13/16"`, []],
    [`3' 8 1/4"`, ['jambs-disagree']],
    [`3' 7 3/4"`, ['jambs-disagree']],
  ])('far jamb at %s', (far, said) => {
    const found = withDoor(door(0, `30"`, `1' 2" from left`, { far }))
    expect(found.said).toEqual(said)
    expect(found.at).toEqual([[14, toInches(nm(far))]])
  })
})

const ELL: readonly WallSaid[] = [
  ['south', `20'`],
  ['west', `8'`],
  ['north', `8'`],
  ['west', `6'`],
  ['north', `12'`],
  ['east', `14'`],
]

describe('a base half an inch thick comes off, and the tape touched it', () => {
  const base = { fate: 'off and back', thickness: nm(`1/2"`) } as unknown as Room['base']
  const based = (opening: Opening) => {
    const made = room('l', ELL, { openings: [opening] })
    const walls = made.walls.map((wall) => ({
      ...wall,
      reading: { ...wall.reading, plane: 'base' as const },
    }))
    return placed({ ...made, base, walls }).at
  }

  // The floor begins half an inch before the room's inside corner, and after its outside one.
  test.each([
    ['an inside corner', 2, `1' from left`, [12.5, 42.5]],
    // The wall keeps its 96": 96 − 11.5 − 30 and 96 − 11.5.
    ['an outside corner', 2, `1' from right`, [54.5, 84.5]],
    ['an outside corner to the left', 3, `1' from left`, [11.5, 41.5]],
    ['the last wall, to the first corner', 5, `1' from right`, [126.5, 156.5]],
  ])('%s', (_, wall, at, stretch) => {
    expect(based(door(wall, `30"`, at))).toEqual([stretch])
  })
})

describe('obstacles', () => {
  const put = (walls: readonly WallSaid[], obstacles: Room['obstacles'], outOfSquare = false) => {
    const shape = shapeOf(room('bunk', walls, { obstacles, outOfSquare }), 'feet-inches')
    const said: Message[] = []
    const outline = shape.corners.toReversed()
    const found = obstaclesOf(shape, outline, [], (one) => said.push(one))
    const centres = found.map(({ ring }) => [
      toInches(ring.reduce((sum, { x }) => sum + x, 0) / ring.length),
      toInches(ring.reduce((sum, { y }) => sum + y, 0) / ring.length),
    ])
    return {
      centres,
      said: said.map(({ code, text }) => (code === 'obstacles-overlap' ? text : code)),
    }
  }
  const island = (west: string, north: string, eastWest = `3'`, northSouth = `2'`) =>
    obstacle('island', { eastWest, northSouth }, [
      [3, west],
      [0, north],
    ])
  const column = (west: string, north: string) =>
    obstacle('column', { round: `8"` }, [
      [3, west],
      [0, north],
    ])

  test('a column off a slant: 6" from the west wall and 2" from the long side', () => {
    // A 3-4-5 triangle: the centre is 8" from west, and 4" from 3x − 4y = 144.
    const eaves: readonly WallSaid[] = [
      ['north', `4'`],
      ['slant', `5'`, { heading: { kind: 'way', way: 'south-east' } }],
      ['west', `3'`],
    ]
    const round = obstacle('column', { round: `4"` }, [
      [2, `6"`],
      [1, `2"`],
    ])
    expect(put(eaves, [round], true).centres).toEqual([[8, -25]])
  })

  test.each([
    ['without its width', island(`2'`, `1'`, '?')],
    ['without its depth', island(`2'`, `1'`, `3'`, '?')],
    ['with one distance still to be read', island('?', `1'`)],
    ['with the other still to be read', island(`2'`, '?')],
    ['from one wall only', { ...island(`2'`, `1'`), from: island(`2'`, `1'`).from.slice(0, 1) }],
    [
      'from two walls that face each other',
      obstacle('column', { round: `8"` }, [
        [0, `2'`],
        [2, `2'`],
      ]),
    ],
  ])('is left out %s', (_, unplaced) => {
    expect(put(PLAIN, [unplaced, column(`1'`, `1'`)])).toEqual({ centres: [[16, -16]], said: [] })
  })

  test.each([
    ['side by side', [island(`1'`, `1'`), island(`4'`, `1'`)], []],
    // Its square reaches 2" into the island's corner, its round does not.
    ['a column off a corner', [island(`1'`, `1'`), column(`3' 11"`, `2' 11"`)], []],
    ['apart', [island(`1'`, `1'`), island(`6'`, `5'`)], []],
    [
      'over two of them',
      [column(`1'`, `1'`), column(`2'`, `1'`), island(`1'`, `1'`)],
      [`This island and the column before it lie over each other. Look at where they stand.`],
    ],
  ])('%s', (_, obstacles, said) => {
    expect(put(PLAIN, obstacles).said).toEqual(said)
  })

  test.each([
    ['half out', island(`10'`, `1'`)],
    ['all out', island(`13'`, `1'`)],
  ])('%s of the room', (_, out) => {
    expect(put(PLAIN, [out])).toEqual({ centres: [], said: ['obstacle-outside-room'] })
  })

  test('round a pier, all its corners in the room', () => {
    const piered: readonly WallSaid[] = [
      ['north', `5'`],
      ['east', `2'`],
      ['north', `1'`],
      ['west', `2'`],
      ['north', `5'`],
      ['east', `9'`],
      ['south', `11'`],
      ['west', `9'`],
    ]
    const at = (south: string) =>
      obstacle('island', { eastWest: `3'`, northSouth: `1'` }, [
        [7, `4'`],
        [6, south],
      ])
    expect(put(piered, [at(`6' 6"`)]).said).toEqual(['obstacle-outside-room'])
    expect(put(piered, [at(`6'`)]).said).toEqual([])
  })
})
