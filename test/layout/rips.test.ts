import { describe, expect, test } from 'vitest'
import { floorArea } from '../../server/src/layout/area.ts'
import { EAST_WEST, NORTH_SOUTH } from '../../server/src/layout/frame.ts'
import { ripsAt, wallsAlong } from '../../server/src/layout/rips.ts'
import { floor, inch, job, room, survey } from './house.ts'

const walls = (wide: number, frame = EAST_WEST) => {
  const hall = room('hall', [
    0,
    0,
    frame === EAST_WEST ? 100 : wide,
    frame === EAST_WEST ? wide : 100,
  ])
  return wallsAlong(floorArea(job(), survey([hall]), floor(['hall'])), frame)
}

describe('the courses along the walls', () => {
  test('know their wall and its gap', () => {
    expect(
      walls(142.5).map(({ label, low, high, floor: side }) => [label, low, high, side]),
    ).toEqual([
      ['south of hall', inch(0.25), inch(0.25), 'above'],
      ['north of hall', inch(142.25), inch(142.25), 'below'],
    ])
    expect(
      walls(142.5, NORTH_SOUTH).map(({ label, low, floor: side }) => [label, low, side]),
    ).toEqual([
      ['east of hall', inch(-142.25), 'above'],
      ['west of hall', inch(-0.25), 'below'],
    ])
  })

  // Wall to wall, plank, gap 1/4, and the balanced rip of the table of balancing [computed].
  test.each([
    [142.5, 7, 4.5],
    [121, 6, 3.25],
    [126.5, 7, 7],
    [147.5, 7.5, 6],
  ])('%f in of floor in planks of %f in balance at %f in on both sides', (wide, plank, rip) => {
    const rips = ripsAt(walls(wide), inch(plank), inch(0.25 + rip))
    expect(rips.map(({ narrowest, widest }) => [narrowest, widest])).toEqual([
      [inch(rip), inch(rip)],
      [inch(rip), inch(rip)],
    ])
  })

  test('taper with a wall out of square, and run out where a seam meets it', () => {
    const wall = {
      label: 'north of hall',
      room: 'hall',
      wall: 'a',
      level: true,
      from: 0,
      to: inch(100),
      floor: 'below',
    } as const
    // Clear 139 1/2 to 141 in planks of 7: 6 1/2 at one end, a full plank and 1 in at the other [computed].
    const [wedge] = ripsAt([{ ...wall, low: inch(139.5), high: inch(141) }], inch(7), 0)
    expect(wedge).toMatchObject({ narrowest: 0, widest: inch(7) })
    const [taper] = ripsAt([{ ...wall, low: inch(139.5), high: inch(141) }], inch(7), inch(4))
    expect(taper).toMatchObject({ narrowest: inch(2.5), widest: inch(4) })
  })

  test('count a nanometre off a seam as a full plank', () => {
    const wall = {
      label: '',
      room: '',
      wall: null,
      level: true,
      from: 0,
      to: 1,
      low: inch(7) + 1,
      high: inch(7) + 1,
      floor: 'below',
    } as const
    expect(ripsAt([wall], inch(7), 0)[0]).toMatchObject({ narrowest: inch(7) })
  })
})
