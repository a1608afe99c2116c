import { describe, expect, test } from 'vitest'
import { box, inches, surveyOf, toInches } from './text.ts'

const PLAIN = `12', 9', 12', 9'`
const corner = (text: string, room: number) => inches(surveyOf(text).rooms[room]!.corners)[0]

describe('rooms are placed by their doorways', () => {
  const hall = box('hall', PLAIN, `door 30", 1' from left, in south, to bath`)
  const bath = box('bath', PLAIN, `door 30", 1' from right, in north, to hall`)

  test('in either order, the first one at the origin', () => {
    expect(corner(hall + bath, 0)).toEqual([0, 0])
    expect(corner(hall + bath, 1)).toEqual([0, -112.5])
    expect(corner(bath + hall, 0)).toEqual([0, 0])
    expect(corner(bath + hall, 1)).toEqual([0, 112.5])
  })

  test('a doorway is one, seen from the room written first', () => {
    const { doorways } = surveyOf(hall + bath)
    expect(doorways).toHaveLength(1)
    const [door] = doorways
    expect([door!.room, door!.to, door!.label]).toEqual(['hall', 'bath', 'hall to bath'])
    expect(inches([...door!.near, ...door!.far])).toEqual([
      [132, -108],
      [102, -108],
      [132, -112.5],
      [102, -112.5],
    ])
    expect(toInches(door!.thickness)).toBe(4.5)
  })

  test('an own thickness goes before the job’s', () => {
    const thick = hall.replace('to bath', 'to bath, 6" thick')
    expect(corner(thick + bath, 1)).toEqual([0, -114])
    expect(corner(hall + bath.replace('to hall', 'to hall, 6" thick'), 1)).toEqual([0, -114])
  })

  test('names tell two doors between the same rooms apart', () => {
    const two = (first: string, second: string) =>
      box(
        'hall',
        PLAIN,
        `door 30", 1' from left, in south, to bath, called ${first}`,
        `door 30", 6' from left, in south, to bath, called ${second}`,
      )
    const back = box(
      'bath',
      PLAIN,
      `door 30", 1' from right, in north, to hall, called east door`,
      `door 30", 6' from right, in north, to hall, called west door`,
    )
    const { loops, messages, doorways } = surveyOf(two('east door', 'west door') + back)
    expect(messages).toEqual([])
    expect(doorways.map(({ label }) => label)).toEqual(['east door', 'west door'])
    expect(loops.map(({ east, north, doorway }) => [east, north, doorway])).toEqual([
      [0, 0, 'west door'],
    ])
    const crossed = surveyOf(two('west door', 'east door') + back)
    expect(crossed.messages.map(({ code }) => code)).toEqual(['loop-does-not-close'])
  })
})

test('a side without a wall: the rooms abut', () => {
  const { rooms, doorways, messages } = surveyOf(
    `room kitchen\n  north 12'\n  east 9'\n  south 12'\n  west 9', open to den\n` +
      `room den\n  north 10'\n  east 9' 0 1/4", open to kitchen\n  south 10'\n  west 9' 0 1/4"\n`,
  )
  expect(messages).toEqual([])
  expect(inches(rooms[1]!.corners)).toEqual([
    [-120, 0.125],
    [0, 0.125],
    [0, -108.125],
    [-120, -108.125],
  ])
  expect(doorways[0]!.near).toEqual(doorways[0]!.far)
  expect(doorways[0]!.kind).toBe('open side')
})

test('what nothing ties stands a whole metre or more apart, to the east, and nothing is said', () => {
  const { rooms, messages } = surveyOf(
    `${box('a', PLAIN) + box('b', PLAIN)}room c\n${box('d', PLAIN)}`,
  )
  expect(messages).toEqual([])
  expect(rooms.map(({ status }) => status)).toEqual([
    'measured',
    'measured',
    'not measured',
    'measured',
  ])
  expect(rooms.map(({ network }) => network)).toEqual([0, 1, 2, 3])
  // 12 ft are 3.6576 m: the first whole metres that are a metre past 3.6576 and 8.6576.
  expect([0, 1, 3].map((i) => rooms[i]!.corners[0]!.x)).toEqual([0, 5e9, 10e9])
})

test('a doorway written from one side meets the room that other doorways placed', () => {
  const hall = box(
    'hall',
    PLAIN,
    `door 30", 1' from left, in south, to bath, called first`,
    `opening 30", 6' from left, in south, to bath, called second`,
  )
  const bath = box(
    'bath',
    `12', 9', 12', 9'`,
    `door 30", 1' from right, in north, to hall, called first`,
  )
  const { doorways, messages } = surveyOf(hall + bath)
  expect(messages).toEqual([])
  const second = doorways.find(({ label }) => label === 'second')!
  expect(second.other).toBeNull()
  expect(inches(second.far)).toEqual([
    [72, -112.5],
    [42, -112.5],
  ])
})

test('a doorway to a room that is still being written waits with it', () => {
  const hall = box('hall', PLAIN, `door 30", 1' from left, in south, to bath`)
  const { rooms, messages } = surveyOf(`${hall}room bath\n  north 12'\n  east ?\n`)
  expect(rooms.map(({ status }) => status)).toEqual(['measured', 'unfinished'])
  expect(messages).toEqual([])
})

test('a broken room leaves the figures of the others as they were', () => {
  const hall = box('hall', PLAIN, `door 30", 1' from left, in south, to bath`)
  const whole = surveyOf(hall + box('bath', PLAIN))
  const broken = surveyOf(hall + box('bath', `12', 9', 5', 9'`, 'column nonsense'))
  expect(broken.rooms[0]!.corners).toEqual(whole.rooms[0]!.corners)
  expect(broken.doorways[0]!.near).toEqual(whole.doorways[0]!.near)
})

test('a loop that does not come round moves no room', () => {
  const rooms = (at: string) =>
    box(
      'a',
      PLAIN,
      `door 30", 1' from right, in south, to b`,
      `door 30", 1' from right, in east, to c`,
    ) +
    box(
      'b',
      PLAIN,
      `door 30", 1' from left, in north, to a`,
      `door 30", 1' from left, in east, to d`,
    ) +
    box(
      'c',
      PLAIN,
      `door 30", 1' from left, in west, to a`,
      `door 30", 1' from left, in south, to d`,
    ) +
    box(
      'd',
      PLAIN,
      `door 30", 1' from right, in west, to b`,
      `door 30", ${at} from right, in north, to c`,
    )
  const [good, bad] = [surveyOf(rooms(`1'`)), surveyOf(rooms(`1' 6"`))]
  expect(bad.rooms.map(({ corners }) => corners)).toEqual(good.rooms.map(({ corners }) => corners))
  expect(bad.loops.map(({ within }) => within)).toEqual([false])
})
