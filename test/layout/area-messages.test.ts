import { describe, expect, test } from 'vitest'
import type { Room } from '../../server/src/job/job.ts'
import { floorArea } from '../../server/src/layout/area.ts'
import { doorway, floor, job, ring, room, survey } from './house.ts'

type Rooms = Parameters<typeof survey>[0]

function said(rooms: Rooms, given: Parameters<typeof floor>[1] = {}, names?: readonly string[]) {
  const listed = names ?? rooms.map(({ room: { name } }) => name.text)
  const { messages } = floorArea(job(), survey(rooms), floor(listed, given))
  return messages.map(({ weight, code, text }) => `${weight} ${code}: ${text}`)
}

const hall = room('hall', [0, 0, 120, 48])
const shapeless = (status: 'not measured' | 'unfinished' | 'broken') =>
  room('bath', [0, 0, 10, 10], {
    surveyed: { status, outline: [], corners: [], edges: [] } as never,
  })

describe('what is said of rooms without a shape', () => {
  test('that nothing is written of it', () => {
    expect(said([hall, shapeless('not measured')])[0]).toBe(
      'incomplete room-without-shape: bath is not measured: no walls are written below "room bath". Floor upstairs is not complete without it.',
    )
  })

  test('that a reading is still to come', () => {
    expect(said([hall, shapeless('unfinished')])[0]).toBe(
      'incomplete room-without-shape: bath has no shape yet: a reading is still to come. Floor upstairs is not complete without it.',
    )
  })

  test('nothing where its own lines are at fault', () => {
    expect(said([hall, shapeless('broken')])).toEqual([])
  })
})

describe('a floor that a stairwell takes all of', () => {
  const { span } = hall.room
  const well = { kind: 'stairwell', label: 'stairwell', gap: null, span } as const
  const all = ring([-1, -1], [121, -1], [121, 49], [-1, 49])
  const full = room('hall', [0, 0, 120, 48], { surveyed: { obstacles: [{ ...well, ring: all }] } })

  test('is an error', () => {
    expect(said([full])).toEqual([
      'error floor-without-area: Floor upstairs has no area left: what stands in its rooms takes all of them. Look at the sizes of the stairwells, islands and hearths.',
    ])
  })

  test('is none where something else is at fault', () => {
    expect(said([full], { broken: true })).toEqual([])
    expect(said([full, shapeless('broken')])).toEqual([])
  })

  test('has an open edge round it where some is left', () => {
    const hole = ring([40, 10], [70, 10], [70, 40], [40, 40])
    const some = room('hall', [0, 0, 120, 48], {
      surveyed: { obstacles: [{ ...well, ring: hole }] },
    })
    const { rim } = floorArea(job(), survey([some]), floor(['hall']))
    const edges = rim.filter(({ label }) => label === 'stairwell in hall')
    expect(edges.map(({ kind, gap, wall }) => [kind, gap, wall])).toEqual(
      Array(4).fill(['open edge', 0, null]),
    )
  })
})

test('rooms that nothing joins are told with what to write', () => {
  expect(said([hall, room('den', [0, 52, 120, 100])])).toEqual([
    'note rooms-apart: No opening joins den to hall within floor upstairs, so it is laid as an area of its own. If there is one, write it under its wall: door 30", 1\' 2" from left, to hall.',
  ])
})

test('rooms joined one through another are not apart', () => {
  const [den, bath] = [room('den', [0, 52, 120, 100]), room('bath', [0, 156, 120, 60])]
  const door = (from: string, to: string, y: number) =>
    doorway(
      from,
      to,
      [
        [40, y],
        [70, y],
      ],
      [
        [40, y + 4],
        [70, y + 4],
      ],
    )
  const doors = [door('den', 'bath', 152), door('hall', 'den', 48)]
  const { messages } = floorArea(
    job(),
    survey([hall, den, bath], doors),
    floor(['hall', 'bath', 'den']),
  )
  expect(messages).toEqual([])
})

describe('walls of whose base nothing is said', () => {
  const bare = (text: string, y: number) => room(text, [0, y, 120, 48], { room: { base: null } })

  test('three are named, the others counted', () => {
    expect(said([bare('hall', 0)])).toEqual([
      "note base-not-said: Nothing says what becomes of the base at south of hall, east of hall, north of hall and 1 more: floor upstairs keeps the product's gap there. A line in the room says it: base off and back.",
    ])
  })

  test('no more are counted than there are', () => {
    const walls = {
      west: { edge: { kind: 'base new', gap: null, trim: null, span: null } },
    } as const
    const three = room('hall', [0, 0, 120, 48], { room: { base: null }, walls })
    expect(said([three])[0]).toContain(
      'at south of hall, east of hall, north of hall: floor upstairs',
    )
    expect(said([room('hall', [0, 0, 120, 48], { walls })])).toEqual([])
  })

  test.each([
    ['kept', 'base kept'],
    ['off and back', 'base off and back'],
    ['new', 'base new'],
    ['none', 'no base'],
  ] as const)('said to be %s', (fate, kind) => {
    const { span } = hall.room
    const base: Room['base'] = { thickness: null, fate, span }
    const told = room('hall', [0, 0, 120, 48], { room: { base } })
    const { rim } = floorArea(job(), survey([told]), floor(['hall']))
    expect(rim.map((edge) => edge.kind)).toEqual(Array(4).fill(kind))
  })
})
