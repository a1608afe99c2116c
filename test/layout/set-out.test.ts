import { describe, expect, test } from 'vitest'
import type { Floor, Way } from '../../server/src/job/job.ts'
import { EAST_WEST, NORTH_SOUTH } from '../../server/src/layout/frame.ts'
import { type Moved, setOutMessages, shiftAcross } from '../../server/src/layout/set-out.ts'
import type { Start } from '../../server/src/layout/start-wall.ts'
import { floor, inch, job } from './house.ts'

const span = { file: 'test.floor', start: 0, end: 1 }
const shift = (way: Way, distance = 1000): NonNullable<Floor['shift']> => ({ way, distance, span })

describe('how far a shift of 1000 moves the seams towards high v', () => {
  const ways = [
    'north',
    'north-east',
    'east',
    'south-east',
    'south',
    'south-west',
    'west',
    'north-west',
  ] as const

  test.each([
    ['east-west', EAST_WEST, [1000, 707, 0, -707, -1000, -707, 0, 707]],
    ['north-south', NORTH_SOUTH, [0, -707, -1000, -707, 0, 707, 1000, 707]],
    ['north-east', { east: 5, north: 5 }, [707, 0, -707, -1000, -707, 0, 707, 1000]],
    // 3-4-5: north is 3/5 across; north-east (3 − 4) ÷ 5 ÷ √2.
    ['by 3 and 4', { east: 3, north: 4 }, [600, -141, -800, -990, -600, 141, 800, 990]],
  ] as const)('planks running %s', (_, frame, across) => {
    expect(ways.map((way) => shiftAcross(shift(way), frame) + 0)).toEqual(across)
  })
})

describe('what is said of the set-out', () => {
  const wall = (label: string, itself: string | null = label) =>
    ({ label, wall: itself }) as unknown as Start['wall'][number]
  const north = wall('north of hall')

  function said(
    given: Partial<Floor>,
    start: Partial<Start> = {},
    moved: Moved = { by: 0, why: 'breaches' },
    direction = { frame: EAST_WEST, said: true },
  ): readonly string[] {
    const found = { frame: EAST_WEST, walls: [north], wall: [north], fromRight: false, ...start }
    return setOutMessages({
      job: job(),
      floor: floor(['hall'], given),
      direction,
      start: { said: 'said', ...found } as Start,
      moved,
    }).map(({ weight, code, text }) => `${weight} ${code}: ${text}`)
  }

  test('nothing where all is said', () => {
    expect(said({})).toEqual([])
  })

  test.each([
    ['east-west', EAST_WEST],
    ['north-south', NORTH_SOUTH],
  ] as const)('which way planks run: %s', (way, frame) => {
    expect(said({}, {}, undefined, { frame, said: false })).toEqual([
      `note direction-chosen: The planks run ${way}, along the longest side of a room, for the floor does not say. "running ${way}" in its lay line settles it.`,
    ])
  })

  const CHOSEN =
    'note start-chosen: Laying starts along north of hall, the longest wall along the planks, for the floor does not say. '
  const SETTLES = `${CHOSEN}"start along north of hall" settles it.`

  test('where laying starts, and what settles it', () => {
    const notSaid = { said: 'not said' } as const
    expect(said({}, notSaid)).toEqual([SETTLES])
    expect(said({}, { ...notSaid, walls: [north, wall('south of hall')] })).toEqual([SETTLES])
    expect(said({}, { ...notSaid, walls: [north, wall('north of hall', 'another')] })).toEqual([
      `${CHOSEN}Two walls there have one name: call this one something, and say that it starts along it.`,
    ])
    const across = { said: 'said, but across the planks' } as const
    expect(said({ start: null }, across)).toEqual([SETTLES])
  })

  test('that the planks run across the wall that is said', () => {
    const start = { room: floor(['hall']).rooms[0]!, wall: 1, span } as NonNullable<Floor['start']>
    expect(said({ start }, { said: 'said, but across the planks' })).toEqual([
      'warning start-across-planks: The first course cannot lie along this wall: the planks run across it, or the floor has no edge there. Laying starts along north of hall instead.',
    ])
    expect(said({ start }, { said: 'not said' })).toEqual([SETTLES])
  })

  test('that a shift moves nothing', () => {
    const still: Moved = { by: 0, why: 'breaches' }
    expect(said({ shift: shift('east') }, {}, still)).toEqual([
      'warning shift-along-planks: A shift east runs along the planks and moves no seam. It would have to be across them.',
    ])
    expect(said({ shift: shift('north') }, {}, { by: 1000, why: 'breaches' })).toEqual([])
    expect(said({ shift: shift('east', 0) }, {}, still)).toEqual([])
  })

  test.each([
    ['towards', inch(2), 'breaches', 'fewer pieces elsewhere come out too narrow so'],
    ['away from', -inch(2), 'boxes', 'fewer boxes are needed so'],
  ] as const)('that the line is moved %s the wall', (way, by, why, gain) => {
    expect(said({}, {}, { by, why })).toEqual([
      `note line-moved: The line is moved 2" ${way} north of hall from where first and last course would be equal: ${gain}.`,
    ])
  })
})
