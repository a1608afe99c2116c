import { describe, expect, test } from 'vitest'
import { twiceSaidMessages } from '../../server/src/survey/twice-said.ts'
import { door, four, reading, room, type WallSaid } from './build.ts'
import { box, surveyOf } from './text.ts'

const WALLS = four(`12'`, `9'`, `12'`, `9'`)
const said = (walls: readonly WallSaid[], openings = [] as ReturnType<typeof door>[]) =>
  twiceSaidMessages(room('bunk', walls, { openings }), 'feet-inches').map(({ code, text }) => [
    code,
    text,
  ])

describe('parts of a wall', () => {
  const parts = (...lengths: readonly string[]) =>
    said([['north', `12'`, { parts: lengths }], ...WALLS.slice(1)])

  // σ: 1/10" for 12', 13/160" for 6', twice: allowed is 2·√(0.01 + 2·0.0066) = 0.305".
  test.each([
    [[`6'`, `6'`], true],
    [[`6'`, `6' 0 1/4"`], true],
    [[`6'`, `5' 11 3/4"`], true],
    [[`6'`, `6' 0 3/8"`], false],
    [[`6'`, `5' 11 5/8"`], false],
  ])('%j', (lengths, agree) => {
    expect(parts(...lengths).map(([code]) => code)).toEqual(agree ? [] : ['parts-disagree'])
  })

  test('say nothing while one of them, or the wall, is still to be read', () => {
    expect(parts(`6'`, '?', `1'`)).toEqual([])
    expect(said([['north', '?', { parts: [`6'`, `5'`] }], ...WALLS.slice(1)])).toEqual([])
  })
})

describe('a slant and where it takes you', () => {
  const slant = (text: string) =>
    said([['slant', text, { heading: { kind: 'offset', east: 3 * FOOT, north: -4 * FOOT } }]])
  const FOOT = 304_800_000

  // 3 east and 4 south is 5 away; σ of 5' is 5/64", allowed 2·√2 of it: 0.221".
  test.each([
    [`5'`, []],
    [`5' 0 3/16"`, []],
    [`4' 11 13/16"`, []],
    [`5' 0 1/4"`, ['slant-disagrees']],
    [`4' 11 3/4"`, ['slant-disagrees']],
    ['?', []],
  ])('%s', (text, codes) => {
    expect(slant(text).map(([code]) => code)).toEqual(codes)
  })
})

describe('the width of an opening', () => {
  const wide = (kind: 'door' | 'opening', again: string) => {
    const made = door(0, `30"`, `1' from left`, { kind })
    return { ...made, place: { ...made.place!, width: reading(`30"`, undefined, [again]) } }
  }

  test('taken again', () => {
    expect(said(WALLS, [wide('door', `31"`)])).toEqual([
      [
        'repeats-disagree',
        `The width of this door was read as 2' 6" and as 2' 7"; two readings of it may differ by 3/16". Take it once more and strike the wrong one.`,
      ],
    ])
    expect(said(WALLS, [wide('opening', `30 1/8"`)])).toEqual([])
  })

  test('has no second one while it has no place, and a side without a wall has that of the wall', () => {
    expect(said(WALLS, [{ ...wide('door', `31"`), place: null }])).toEqual([])
    expect(said(WALLS, [{ ...wide('door', `31"`), kind: 'open side' }])).toEqual([])
  })
})

test('a tie that does not agree is called by its corner', () => {
  const { messages } = surveyOf(
    box('bunk', `12', 9', 12', 9'`, `tie 5' 6", 4' along north, 3' along west`),
  )
  expect(messages.map(({ text }) => text.split(',')[0])).toEqual([
    `The tie at north-west was read as 5' 6"`,
  ])
})
