import { describe, expect, test } from 'vitest'
import { floorArea } from '../../server/src/layout/area.ts'
import { crosswise } from '../../server/src/layout/direction.ts'
import { EAST_WEST, type Frame, NORTH_SOUTH } from '../../server/src/layout/frame.ts'
import { startOf } from '../../server/src/layout/start-wall.ts'
import { viewFrom } from '../../server/src/layout/view-from.ts'
import type { SurveyedRoom } from '../../server/src/survey/survey.ts'
import { floor, job, ring, room, survey } from './house.ts'

const SPAN = { file: 'test.floor', start: 0, end: 1 }

type Hand = 'left to right' | 'right to left' | 'either way'

/** A room 12 ft by 9 ft with a post, its longest walls equal; its south-west corner lies at (x, y). */
function den(x: number, y: number, post: readonly [number, number]): SurveyedRoom {
  const [u, v] = [x + post[0], y + post[1]]
  const obstacle = { kind: 'column', label: 'column', gap: null, span: SPAN } as const
  const corners = ring([u, v], [u + 6, v], [u + 6, v + 6], [u, v + 6])
  return room('den', [x, y, 144, 108], {
    surveyed: { obstacles: [{ ...obstacle, ring: corners }] },
  })
}

function started(at: SurveyedRoom, laid: Hand, run: Frame = EAST_WEST) {
  const rooms = survey([at])
  const area = floorArea(job(), rooms, floor(['den']))
  const start = startOf({ floor: floor(['den']), survey: rooms, area, laid }, run)
  return { start, view: viewFrom(area, { ...start, inMirror: start.fromRight }) }
}

describe('of two longest walls', () => {
  const plain = started(den(0, 0, [20, 10]), 'left to right')

  test('the one is taken that the post lies before in the same way, wherever the house lies', () => {
    const moved = started(den(500, -70, [20, 10]), 'left to right')
    expect(moved.start.wall[0]!.label).toBe(plain.start.wall[0]!.label)
    expect(moved.view).toEqual(plain.view)
  })

  test('the other is taken once the house is turned by half a turn', () => {
    const turned = started(den(0, 0, [144 - 26, 108 - 16]), 'left to right')
    expect(turned.start.wall[0]!.label).not.toBe(plain.start.wall[0]!.label)
    expect(turned.view).toEqual(plain.view)
  })

  test('a mirrored house looks the same to a lock of the other hand', () => {
    const image = started(den(0, 0, [144 - 26, 10]), 'right to left')
    expect(image.start.fromRight).toBe(true)
    expect(image.view).toEqual(plain.view)
  })

  test('a lock that leaves it open begins where the house and its image look alike', () => {
    const [house, image] = [den(0, 0, [20, 10]), den(0, 0, [144 - 26, 10])].map((at) =>
      started(at, 'either way'),
    )
    expect(house!.view).toEqual(image!.view)
    expect(house!.start.fromRight).not.toBe(image!.start.fromRight)
  })

  test('a run said the other way round is the same run', () => {
    const reversed = started(den(0, 0, [20, 10]), 'left to right', crosswise(NORTH_SOUTH))
    expect(reversed.view).toEqual(plain.view)
  })
})
