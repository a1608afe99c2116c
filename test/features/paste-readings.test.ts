import { describe, expect, test } from 'vitest'
import { pasteReadings } from '../../server/src/features/paste-readings.ts'
import { readMeterList } from '../../server/src/features/writing/meter-list.ts'
import { applied } from './applied.ts'
import { view } from './marked.ts'

const FEET = { bare: null, style: 'feet-inches' } as const
const MILLIMETRES = { bare: 'mm', style: 'mm' } as const

function textsOf(pasted: string, options: Parameters<typeof readMeterList>[1] = FEET) {
  const list = readMeterList(pasted, options)
  return list.kind === 'readings' ? list.texts : list
}

describe('what a meter sends', () => {
  test.each([
    ['one on a line', '3.764 m\n2.51 m\r\n3.765 m\n'],
    ['parted by semicolons', '3.764 m; 2.51 m; 3.765 m'],
    ['parted by tabs', '3.764 m\t2.51 m\t3.765 m'],
    ['parted by commas with blanks', '3.764 m, 2.51 m, 3.765 m'],
    ['parted by blanks', '3.764m 2.51m 3.765m'],
    ['numbered with a point', '1. 3.764 m\n2. 2.51 m\n3. 3.765 m'],
    ['numbered with a bracket', '1) 3.764 m\n2) 2.51 m\n3) 3.765 m'],
    ['numbered with a colon', '01: 3.764 m\n02: 2.51 m\n03: 3.765 m'],
    ['numbered with blanks', '7  3.764 m\n8  2.51 m\n9  3.765 m'],
    ['numbered with a hash', '#1 3.764 m\n#2 2.51 m\n#3 3.765 m'],
    ['labelled', 'Wall 1: 3.764 m\nWall 2: 2.51 m\nWall 3: 3.765 m'],
    ['with blank lines', '\n3.764 m\n\n  2.51 m\n3.765 m\n\n'],
  ])('%s', (_, pasted) => {
    expect(textsOf(pasted)).toEqual(['3.764 m', '2.51 m', '3.765 m'])
  })

  test('feet and inches, marks and blanks as the formatter writes them', () => {
    expect(textsOf('12\'4-1/2"\n10′ 8″\n12 ft 4 1/4 in')).toEqual([
      '12\' 4 1/2"',
      '10\' 8"',
      '12 ft 4 1/4 in',
    ])
  })

  test('feet and inches parted by blanks stay whole', () => {
    expect(textsOf('12\' 4 1/2"')).toEqual(['12\' 4 1/2"'])
  })

  test('bare figures where the file says what they are', () => {
    expect(textsOf('3764\n2510', MILLIMETRES)).toEqual(['3764', '2510'])
    expect(textsOf('3764 2510', MILLIMETRES)).toEqual(['3764', '2510'])
  })

  test.each([
    ['1,234', ['1234', '1.234']],
    ['3,764 m\n2,510 m', ['3764 m', '3.764 m']],
    ['1.234,5 mm\n1.300,0 mm', ['1234.5 mm', '1.2345 mm']],
    ['12.4\n10.8', ['12\' 4"', "12.4'"]],
    ['12 4\n10 8', ['12\' 4"', '12 and 4']],
  ])('%s is refused with both readings', (pasted, readings) => {
    const list = readMeterList(pasted, FEET)
    expect(list.kind).toBe('refused')
    for (const reading of readings)
      expect(list).toHaveProperty('why', expect.stringContaining(reading))
  })

  test('numbers of the list that may be inches are refused with both readings', () => {
    expect(readMeterList('1 1/2"\n2 3/4"', FEET)).toEqual({
      kind: 'refused',
      why: '"1 1/2"" reads two ways: one length, or number 1 of the list and 1/2". Paste the readings without their numbers.',
    })
  })

  test.each([
    '',
    '  \n',
    'north',
    'the north wall is 12 ft',
    'room den\n  north 12\' 4"',
    'x'.repeat(30_000),
  ])('no list: %j', (pasted) => {
    expect(readMeterList(pasted, FEET)).toEqual({ kind: 'none' })
  })
})

const ROOM = `room den
  north       ?
  east        ?
    door      30", ? from left, to outside
  south‹|›       12' 4"
  west        ?

room hall
  north       ?
`

describe('into the blanks of the room at the cursor', () => {
  test('in written order, and only there', () => {
    const { view: seen, cursor, texts } = view(ROOM)
    const pasted = pasteReadings(seen, cursor, '12\' 4"\n10\' 8"\n1\' 2"\n10\' 8 1/4"')
    expect(pasted).toMatchObject({ kind: 'filled', said: '4 readings filled into den, in order.' })
    expect(
      applied(texts, pasted.kind === 'filled' ? pasted.edits : []).get('job.floor'),
    ).toBe(`room den
  north       12' 4"
  east        10' 8"
    door      30", 1' 2" from left, to outside
  south       12' 4"
  west        10' 8 1/4"

room hall
  north       ?
`)
  })

  test('too few: the first blanks are filled, and it is said how many are left', () => {
    const { view: seen, cursor } = view(ROOM)
    const pasted = pasteReadings(seen, cursor, "12'; 10'; 1'")
    expect(pasted).toMatchObject({
      kind: 'filled',
      said: '3 readings filled into den, in order. 1 blank is left.',
    })
  })

  test('too many: said, and nothing is filled', () => {
    const { view: seen, cursor } = view(ROOM)
    expect(pasteReadings(seen, cursor, "12'; 10'; 1'; 10'; 9'")).toEqual({
      kind: 'refused',
      why: 'The list has 5 readings, and den has 4 blanks. Nothing was filled in: take out of the list what is none of them.',
    })
  })

  test('no blanks: said, and nothing is filled', () => {
    const { view: seen, cursor } = view("room den\n  north 12'‹|›")
    expect(pasteReadings(seen, cursor, "12'; 10'")).toEqual({
      kind: 'refused',
      why: 'Nothing was filled in: den has no blank. Write "?" where a reading is to go.',
    })
  })

  test('what reads two ways: both readings, and nothing is filled', () => {
    const { view: seen, cursor } = view(ROOM)
    const pasted = pasteReadings(seen, cursor, '3,764 m\n2,510 m')
    expect(pasted).toHaveProperty(
      'why',
      '3,764 m is 3764 m to some and 3.764 m to others. A number has no comma: write 3764 m or 3.764 m. Nothing was filled in.',
    )
  })

  test.each([
    ['a room without blanks, what reads two ways', "room den\n  north 12'‹|›", '3,764 m'],
    ['no room', 'product larch\n  gap ?‹|›', "12'; 10'"],
    ['an empty file', '‹|›', "12'; 10'"],
    ['one reading alone', 'room den\n  north ?‹|›', "12'"],
    ['words', 'room den\n  north ?‹|›', 'east 12\neast 13'],
  ])('%s: an ordinary paste', (_, source, pasted) => {
    const { view: seen, cursor } = view(source)
    expect(pasteReadings(seen, cursor, pasted)).toEqual({ kind: 'none' })
  })
})
