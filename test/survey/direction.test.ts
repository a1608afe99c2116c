import { describe, expect, test } from 'vitest'
import type { Heading, Way } from '../../server/src/job/job.ts'
import { directionsOf, wayAlong } from '../../server/src/survey/direction.ts'
import { turnRight } from './build.ts'

const look = (way: Way): Heading => ({ kind: 'way', way })
const directions = (...headings: Heading[]) => directionsOf(headings).map(({ x, y }) => [x, y])
const HALF = Math.SQRT1_2

test('looking north you walk east, and so on to the right', () => {
  expect(directions(look('north'), look('east'), look('south'), look('west'))).toEqual([
    [1, 0],
    [0, -1],
    [-1, 0],
    [0, 1],
  ])
  expect(directions(look('north-east'), look('south-west'))).toEqual([
    [HALF, -HALF],
    [-HALF, HALF],
  ])
})

describe('a turn goes by the wall before', () => {
  test('two turns of 45 degrees are a right angle, exactly', () => {
    expect(directions(look('north'), turnRight(45), turnRight(45), look('west'))[2]).toEqual([
      0, -1,
    ])
    expect(directions(look('north'), turnRight(-90))[1]).toEqual([0, 1])
  })

  test('as the first wall, by the last', () => {
    expect(directions(turnRight(90), look('east'), look('south'), look('west'))[0]).toEqual([1, 0])
  })

  test('after a slant given by where it takes you', () => {
    const slant: Heading = { kind: 'offset', east: 3, north: -4 }
    expect(directions(slant, turnRight(90))).toEqual([
      [0.6, -0.8],
      [-0.8, -0.6],
    ])
  })
})

test('a miss is said to lie the nearest of the eight ways', () => {
  expect(wayAlong({ x: 1, y: 0.1 })).toBe('east')
  expect(wayAlong({ x: -1, y: -0.9 })).toBe('south-west')
  expect(wayAlong({ x: 0, y: -12 })).toBe('south')
})
