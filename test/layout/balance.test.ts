import { describe, expect, test } from 'vitest'
import { balanceCourses, type CourseWidths } from '../../server/src/layout/balance.ts'
import { ratio } from '../../server/src/units/ratio.ts'
import { inches } from './made-floors.ts'

const clear = (width: number, least = width) => ({ least: inches(least), most: inches(width) })

function inInches({ way, first, full, last, lastAtLeast }: CourseWidths) {
  const plain = (value: { n: bigint; d: bigint } | null) =>
    value === null ? null : Number(value.n) / Number(value.d) / inches(1)
  return { way, first: plain(first), full, last: plain(last), lastAtLeast: plain(lastAtLeast) }
}

describe('where the width is the same all along (7 in planks, no rip under 2 in; computed)', () => {
  const ways = (width: number) => balanceCourses(clear(width), inches(7), inches(2)).map(inInches)

  test('a room narrower than a plank takes one, ripped', () => {
    expect(ways(5)).toEqual([{ way: 'one plank', first: null, full: 0, last: 5, lastAtLeast: 5 }])
  })

  test('a room of whole planks takes them all full', () => {
    expect(ways(140)).toEqual([
      { way: 'all full', first: null, full: 20, last: null, lastAtLeast: 7 },
    ])
  })

  test('a rest that is wide enough may stay at the far wall', () => {
    // 142 in: 20 planks and 2 in, or 19 and twice (7 + 2) ÷ 2.
    expect(ways(142)).toEqual([
      { way: 'balanced', first: 4.5, full: 19, last: 4.5, lastAtLeast: 4.5 },
      { way: 'full to the last', first: null, full: 20, last: 2, lastAtLeast: 2 },
    ])
  })

  test('a rest that is too narrow may not', () => {
    expect(ways(141.5).map(({ way, last }) => [way, last])).toEqual([['balanced', 4.25]])
  })
})

describe('where the width varies', () => {
  test('a wedge running to nothing is avoided by a rip to start with (computed)', () => {
    // 7 in plank, clear 139 1/2 to 141: 20 full and 1 at one end, 19 full and 6 1/2 at the other.
    const [taken, ...others] = balanceCourses(clear(141, 139.5), inches(7), inches(2))
    expect(inInches(taken!)).toEqual({
      way: 'balanced',
      first: 4,
      full: 19,
      last: 4,
      lastAtLeast: 2.5,
    })
    expect(others).toEqual([])
  })

  test('the first course gives way so that the last stays wide enough', () => {
    const [taken] = balanceCourses(clear(141, 138), inches(7), inches(2))
    expect(inInches(taken!)).toMatchObject({ first: 3, full: 19, last: 5, lastAtLeast: 2 })
  })

  test('as far as the first course can', () => {
    const [taken] = balanceCourses(clear(141, 134), inches(7), inches(2))
    expect(inInches(taken!)).toMatchObject({ first: 2, last: 6, lastAtLeast: -1 })
  })
})

test('half of an odd nanometre stays exact', () => {
  const [taken] = balanceCourses({ least: 106, most: 106 }, 7, 2)
  expect(taken).toMatchObject({ first: ratio(8, 2), full: 14 })
  const [odd] = balanceCourses({ least: 107, most: 107 }, 8, 5)
  expect(odd).toMatchObject({ first: ratio(11, 2), full: 12, last: ratio(11, 2) })
})
