import { describe, expect, it } from 'vitest'
import type { Reading } from '../../server/src/job/job.ts'
import { bound, said } from './bound.ts'

const room = (head: string, north: string, inRoom = ''): string =>
  `floorscribe 1\nunits feet-inches\n${head}room den\n${inRoom}  north ${north}\n  east 10'\n  south 10'\n  west 10'\n`
const north = (head: string, reading: string, inRoom = ''): Reading =>
  bound(room(head, reading, inRoom)).job.rooms[0]!.walls[0]!.reading

describe('what a reading is worth', () => {
  const STUDY = 'tape 1/16" + 1/32" per 10\', about 1/2"\n'

  it('grows along the tape: 1/16" + 1/32" per 10\'', () => {
    // 1/16 in = 1 587 500 nm, and 12/10 of 1/32 in more.
    expect(north(STUDY, '12\' 0"').sigma).toBe(1_587_500 + 952_500)
    expect(north(STUDY, '?').sigma).toBe(1_587_500)
  })

  it('within, before about, before the room, before the file', () => {
    const inRoom = '  tape 1/8", about 1"\n'
    expect(north(STUDY, 'about 12\' within 1/4"', inRoom).sigma).toBe(6_350_000)
    expect(north(STUDY, "about 12'", inRoom).sigma).toBe(25_400_000)
    expect(north(STUDY, "12'", inRoom).sigma).toBe(3_175_000)
    expect(north(STUDY, "about 12'").sigma).toBe(12_700_000)
  })

  it('a room line keeps what it does not say', () => {
    expect(north(STUDY, "about 12'", '  tape 1/8"\n').sigma).toBe(12_700_000)
    expect(north(STUDY, "12'", '  tape about 1"\n').sigma).toBe(1_587_500 + 952_500)
  })

  it('without a tape line: 1/16 in + 0.01 % (common practice, no source), and a note', () => {
    // 12 ft = 3 657 600 000 nm, a ten-thousandth of it 365 760 nm.
    expect(north('', "12'").sigma).toBe(1_587_500 + 365_760)
    expect(said(room('', "12'"), { notes: true })).toEqual([
      '3 note tape-worth-taken: No tape line says what a reading is worth, so 1/16" and a ten-thousandth of the length are taken (common practice).',
    ])
  })

  it('without an about: 1/4 in of the 1/8 to 1/4 that awkward readings have (common practice, no source)', () => {
    expect(north('tape 1/16"\n', "about 12'").sigma).toBe(6_350_000)
    expect(said(room('tape 1/16"\n', "about 12'"), { notes: true })).toEqual([
      '5 note about-worth-taken: No tape line says what "about" is worth, so 1/4" is taken (common practice: 1/8" to 1/4").',
    ])
  })

  it('is never nothing', () => {
    expect(said(room('tape 0"\n', "12'"))).toEqual([
      '3 error reading-worth-nothing: No reading is exact: its worth is one standard deviation and more than nothing, such as 1/16".',
    ])
    expect(said(room(STUDY, '12\' within 0"'))).toEqual([
      '5 error reading-worth-nothing: No reading is exact: what stands after "within" is one standard deviation and more than nothing, such as within 1/16".',
    ])
    expect(north(STUDY, '12\' within 0"').sigma).toBeGreaterThan(0)
  })

  it('a file has one tape line', () => {
    expect(said(room(`${STUDY}tape 1/8"\n`, "12'"))).toEqual([
      '4 error line-twice: There is a tape line already, on line 3. Keep one of the two.',
    ])
  })
})

describe('what a reading carries', () => {
  it('its own text, its doubts, its repetitions', () => {
    const reading = north(
      '',
      '12\' 4"?\n    again 12\' 4 1/8"\n    again 12\' 4 1/4", touching base',
    )
    expect(reading).toMatchObject({
      nm: 3_759_200_000,
      text: '12\' 4"',
      doubtful: true,
      about: false,
    })
    expect(reading.again).toMatchObject([
      { text: '12\' 4 1/8"', plane: 'wall' },
      { text: '12\' 4 1/4"', plane: 'base' },
    ])
  })

  it('what the tape touched: on the line, in the room, in the file, else the wall', () => {
    expect(north('', "12'").plane).toBe('wall')
    expect(north('tape touching base\n', "12'").plane).toBe('base')
    expect(north('tape touching base\n', "12'", '  tape touching toe-kick\n').plane).toBe(
      'toe-kick',
    )
    expect(north('tape touching base\n', "12', touching wall").plane).toBe('wall')
  })

  it('a base that comes off wants to know what the tape touched', () => {
    const base = 'tape 1/16"\nbase 1/2" thick, off and back\n'
    expect(said(room(base, "12'"))).toEqual([
      '5 warning touched-not-said: The base in den comes off, and that moves a wall by 1/2" if the tape touched the base. Say what it touched: "touching base" or "touching wall" on a tape line.',
    ])
    expect(said(room(base.replace('1/16"', '1/16", touching base'), "12'"))).toEqual([])
    expect(said(room(base.replace('off and back', 'kept'), "12'"))).toEqual([])
  })

  it('the base of a room: its own line over the file line, fact by fact', () => {
    const { base } = bound(room('base 1/2" thick, kept\n', "12'", '  base new\n')).job.rooms[0]!
    expect(base).toMatchObject({ thickness: 12_700_000, fate: 'new' })
    expect(bound(room('', "12'")).job.rooms[0]!.base).toBe(null)
  })
})
