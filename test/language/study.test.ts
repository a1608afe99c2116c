import { describe, expect, test } from 'vitest'
import { format } from '../../server/src/language/format.ts'
import type { Figure } from '../../server/src/language/tree.ts'
import { NM_PER_64TH, NM_PER_FOOT, NM_PER_INCH } from '../../server/src/units/length.ts'
import { codes, outline, read, sample, samples } from './said.ts'

describe('the five situations, products and prices', () => {
  test.each(samples)('$name reads without a message', ({ text }) => {
    expect(codes(text)).toEqual([])
  })

  test.each(samples)('$name has no broken line', ({ text }) => {
    expect(read(text).lines.filter((line) => line.broken)).toEqual([])
  })

  test.each(samples.filter(({ name }) => name !== 'each-kind.floor'))(
    '$name is in its canonical form',
    ({ text }) => {
      expect(format(read(text))).toBe(text)
    },
  )
})

describe('what a tree holds', () => {
  test('a room with openings under their walls, and readings that go across', () => {
    expect(outline(sample('bedroom'))).toBe(`floorscribe: COUNT 1
job: Plover Lodge, bedroom 1
  site: 4 Alder Row, flat #2
  date: 2027-04-12
units: feet-inches|inches|mm|cm|m feet-inches
tape: LENGTH + LENGTH per LENGTH 1/16" 1/32" 10'
walls: LENGTH thick 4 1/2"
include: products.floor
include: prices.floor
room: NAME <bedroom 1>
  north: LENGTH 12' 4"
  east: LENGTH 10' 8 1/4"
  south: LENGTH 12' 4 1/8"
    door: LENGTH 30" | LENGTH from left|right 1' 2" right | to ROOM <hall>
  west: LENGTH 10' 8 1/8"
    closet: LENGTH 4' 0" | LENGTH from left|right 3' 2" left | LENGTH deep 2' 0 1/4" | LENGTH inside 6' 0" | LENGTH left return 1' 0"
  diagonal: LENGTH 16' 3 7/8" | from CORNER to CORNER <north-west> <south-east>
  diagonal: LENGTH 16' 3 3/4" | from CORNER to CORNER <north-east> <south-west>
room: NAME <hall>
  existing: NAME <carpet> | NAME <stays>
floor: NAME <bedroom>
  rooms: NAME <bedroom 1> | NAME <bedroom 1 closet>
  lay: PRODUCT <larch plank> | running east-west|north-south|north-east|north-west east-west
  start: along WALL of ROOM <north> <bedroom 1>`)
  })

  test('doubts are part of the reading', () => {
    const parlour = read(sample('old-parlour')).blocks.find((block) => block.word === 'room')!
    const south = parlour.under.find((entry) => entry.word === 'south')!
    expect(south.phrases[0]!.measures[0]).toMatchObject({ about: true, doubtful: false })
    const north = parlour.under.find((entry) => entry.word === 'diagonal' && entry.phrases.length)!
    expect(north.phrases[0]!.measures[0]).toMatchObject({ about: false, doubtful: false })
    const asked = parlour.under.filter((entry) => entry.word === 'across').at(-1)!
    expect(asked.phrases[0]!.measures[0]!.figure).toEqual({ kind: 'asked', text: '?' })
  })

  test.each<[string, string, Partial<Figure>]>([
    ['room a\n  north 4\' within 1/4"?', 'LENGTH', { kind: 'length', nm: 4 * NM_PER_FOOT }],
    [
      "room a\n  slant 4', 30.5° right",
      'ANGLE left|right',
      { kind: 'angle', degrees: { n: 61n, d: 2n } },
    ],
    [
      'room a\n  hold slab, cleared 2027-04-12',
      'cleared DATE',
      { kind: 'date', text: '2027-04-12' },
    ],
    ['allowance 7.5 %', 'PERCENT', { kind: 'percent', value: { n: 15n, d: 2n } }],
    [
      'product p\n  box 23.64 sq ft',
      'NUMBER sq ft',
      { kind: 'number', value: { n: 591n, d: 25n } },
    ],
    [
      'product p\n  plank 6 3/4"x47 7/8"',
      'SIZE',
      { kind: 'size', nm: [432 * NM_PER_64TH, 47 * NM_PER_INCH + 56 * NM_PER_64TH] },
    ],
  ])('%j', (text, form, figure) => {
    const entries = read(text).blocks.flatMap((block) => [block, ...block.under])
    const phrase = entries.flatMap((entry) => entry.phrases).find((found) => found.form === form)!
    expect(phrase.measures[0]!.figure).toMatchObject(figure)
    expect(codes(text)).toEqual([])
  })

  test('the worth of one reading, and a reading to take again', () => {
    const [room] = read('room a\n  north about 4\' within 1/4"?').blocks
    expect(room!.under[0]!.phrases[0]!.measures[0]).toMatchObject({
      about: true,
      within: NM_PER_INCH / 4,
      doubtful: true,
    })
  })
})

describe('names', () => {
  const key = (line: string): string | undefined => read(line).blocks[0]!.name?.key

  test('case, blanks, accents of either form and apostrophes do not part two names', () => {
    expect(key('room  Kids’   Room')).toBe(key("room kids' room"))
    expect(key('room Café')).toBe(key('room Cafe\u0301'))
    expect(read('room  Kids’   Room').blocks[0]!.name!.text).toBe('Kids’ Room')
  })

  test('quotes are not part of a name', () => {
    expect(key('room "hall of mirrors"')).toBe('hall of mirrors')
    expect(key('room “12 steps”')).toBe('12 steps')
  })

  test('words of the language, words with digits and signs of any script are names', () => {
    for (const name of ['floor', '2nd bath', 'x2', 'bedroom 2', 'AC/DC', 'חדר שינה', '__proto__']) {
      expect(codes(`room ${name}`), name).toEqual([])
      expect(key(`room ${name}`)).toBe(name.toLowerCase())
    }
  })
})
