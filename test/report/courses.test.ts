import { describe, expect, test } from 'vitest'
import type { PublishedFloor } from '../../server/src/layout/published.ts'
import { ripWidth } from '../../server/src/report/drawing/courses.ts'
import { NM_PER_INCH } from '../../server/src/units/length.ts'
import { at, box } from './rooms.ts'
import { tiled } from './tiling.ts'

const inch = (n: number) => Math.round(n * NM_PER_INCH)

/** The same floor begun at one of its courses: on to one side, then backwards to the other. */
function begunAt(floor: PublishedFloor, first: number, onward: 'up' | 'down'): PublishedFloor {
  const numbers = floor.courses.map(({ course }) => course)
  const up = numbers.filter((course) => course >= first)
  const down = numbers.filter((course) => course <= first).toReversed()
  const order = [...new Set(onward === 'up' ? [...up, ...down] : [...down, ...up])]
  return {
    ...floor,
    courses: floor.courses.map((course) => ({
      ...course,
      order: order.indexOf(course.course) + 1,
    })),
  }
}

/** A room of 20 ft by 30 in, a doorway through its north wall, planks of 6 3/4 in from 4 in up. */
const hall = [box(0, 0, 240, 30), box(100, 30, 132, 36)].flat()
const outline = [...hall.slice(0, 3), at(132, 30), at(132, 36), at(100, 36), at(100, 30), hall[3]!]

describe('the width of the first and the last course', () => {
  const floor = tiled([outline], inch(4))

  test('runs from the seam to the wall', () => {
    expect(ripWidth(floor, 'first')).toEqual({ least: inch(4), most: inch(4) })
  })

  test('takes no notice of a doorway that the course runs into', () => {
    // Seams at 4, 10 3/4, 17 1/2, 24 1/4, 31 in: the last course along the wall is 5 3/4 in wide.
    const throughDoor = begunAt(floor, 5, 'down')
    expect(ripWidth(throughDoor, 'first')).toEqual({ least: inch(5.75), most: inch(5.75) })
  })

  test('is measured to the far wall when the last course is laid backwards', () => {
    const middle = begunAt(floor, 3, 'up')
    expect(ripWidth(middle, 'last')).toEqual({ least: inch(4), most: inch(4) })
  })

  test('has two ends along a slanted wall', () => {
    const slanted = [at(0, 0), at(240, 0), at(240, 10.25), at(0, 9.25)]
    const { least, most } = ripWidth(tiled([slanted], inch(5)), 'last')!
    expect(Math.abs(least - inch(4.25))).toBeLessThan(2)
    expect(Math.abs(most - inch(5.25))).toBeLessThan(2)
  })

  test('is none where the wall runs out of the course', () => {
    const triangle = [at(0, 0), at(240, 0), at(120, 10)]
    expect(ripWidth(tiled([triangle], inch(0)), 'last')).toBe(null)
  })
})
