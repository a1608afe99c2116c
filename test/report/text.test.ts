import { describe, expect, test } from 'vitest'
import type { Compiled } from '../../server/src/report/compiled.ts'
import { estimateText } from '../../server/src/report/text/estimate.ts'
import { explainText } from '../../server/src/report/text/explain.ts'
import { layoutText } from '../../server/src/report/text/layout.ts'
import { table } from '../../server/src/report/text/table.ts'
import { wrap } from '../../server/src/report/text/wrap.ts'
import { laid } from './laid.ts'

const BEDROOM = `floorscribe 1
job Heron Cottage, bunk room
units feet-inches
tape 1/16" + 1/32" per 10'
walls 4 1/2" thick

room bunk room
  existing    carpet, pad, tack strip
  north       12' 4"
  east        10' 8 1/4"
  south       12' 4 1/8"
    door      30", 1' 2" from right, to landing
  west        10' 8 1/8"
  diagonal    16' 3 7/8", from north-west to south-east

room landing
  existing    tile, stays

product river larch
  plank       6 3/4" x 47 7/8", 3/16" thick
  box         10 planks
  pad         attached
  joints      8" stagger, 10" shortest end, 2" narrowest rip
  gap         1/4"

floor upstairs
  rooms       bunk room
  lay         river larch, running east-west
  start       along north of bunk room
  edge        bunk room to landing, with end cap
`

const bedroom = laid(BEDROOM)

/** The line of a text that begins with a label. */
function lineOf(text: string, label: string): string {
  return text.split('\n').find((line) => line.trim().startsWith(label)) ?? ''
}

describe('a table', () => {
  test('aligns its columns and leaves no blanks at the end', () => {
    expect(
      table(
        [
          ['a', '1', 'x'],
          ['long', '100', ''],
        ],
        ['left', 'right', 'left'],
      ),
    ).toEqual(['  a       1  x', '  long  100'])
  })

  test('shows what no eye can see, and counts it', () => {
    expect(
      table(
        [
          ['a\u202e', 'b'],
          ['c', 'd'],
        ],
        ['left', 'left'],
        '',
      ),
    ).toEqual(['a‹U+202E›  b', 'c          d'])
  })
})

describe('words in lines', () => {
  test('never pass the width unless one word does', () => {
    const lines = wrap('one two three four incomprehensibilities five', 12, {
      first: '- ',
      hang: '  ',
    })
    expect(lines).toEqual(['- one two', '  three four', '  incomprehensibilities', '  five'])
  })
})

describe('the estimate in words', () => {
  const text = estimateText(bedroom)

  test('says how the room closes, by the vector and against what the tape allows', () => {
    // 12' 4" − 12' 4 1/8" and 10' 8 1/8" − 10' 8 1/4": the sums of departures and latitudes [C].
    expect(lineOf(text, 'bunk room')).toMatch(/^ {2}bunk room +4 +-1\/8", -1\/8" /)
    expect(lineOf(text, 'bunk room')).toContain('transit rule')
    expect(lineOf(text, 'bunk room')).toContain(' sq ft')
  })

  test('sets the percentage beside the layout, for comparison only', () => {
    expect(lineOf(text, 'planks by area plus percentage')).toMatch(
      /\d+ planks {2}for comparison only, /,
    )
  })

  test('fits a terminal', () => {
    expect(text.split('\n').filter((line) => line.length > 120)).toEqual([])
  })

  test('ends with the cautions and where each comes from', () => {
    expect(text).toMatch(/Reminders only, not legal, engineering or medical\s+advice/)
    expect(text).toContain('[NIOSH 94-110]')
    expect(text).toContain('[common practice, no source]')
  })
})

describe('a job that is not complete', () => {
  const unread = laid(BEDROOM.replace(`east        10' 8 1/4"`, 'east        ?'))
  const half: Compiled = {
    ...bedroom,
    takeoff: {
      ...bedroom.takeoff,
      complete: false,
      incompleteBecause: ['A slab reading is outstanding.'],
      products: bedroom.takeoff.products.map((product) => ({
        ...product,
        quantities: product.quantities.map((one) => ({ ...one, complete: false })),
      })),
    },
  }

  test('has no box count when a wall is still to be read, and says which', () => {
    const text = estimateText(unread)
    expect(text).not.toMatch(/^ +boxes +\d+ boxes$/m)
    expect(text).toContain('Totals are incomplete')
    expect(text).toContain('bunk room')
  })

  test('never prints a count alone', () => {
    expect(lineOf(estimateText(bedroom), 'boxes')).toMatch(/^ +boxes +\d+ boxes$/)
    expect(lineOf(estimateText(half), 'boxes')).toMatch(/incomplete, \d+ boxes so far$/)
    expect(estimateText(half)).toContain('A slab reading is outstanding.')
    expect(layoutText(half)).toContain('Not final')
    expect(layoutText(bedroom)).not.toContain('Not final')
  })

  test('has no cut list before a floor can be laid', () => {
    expect(layoutText(unread)).toBe('No floor can be laid yet.\n')
  })
})

describe('why a number is what it is', () => {
  const boxes = bedroom.takeoff.products[0]!.quantities.find(({ key }) => key === 'boxes')!
  const area = bedroom.takeoff.floors[0]!.quantities.find(({ key }) => key === 'room area')!

  test('goes from the formula to the inputs, each with its source', () => {
    const text = explainText(boxes, bedroom)
    expect(text).toMatch(/^boxes: \d+ boxes {2}\[computed\]\n {2}= \(planks \+ spoil \+ spares\)/)
    expect(text).toContain('rounded up once')
    expect(text).toMatch(/planks in a box: 10 {2}\[the job file, job\.floor:\d+\]/)
  })

  test('ends at the readings, each with its line', () => {
    const lines = BEDROOM.split('\n')
    const line = lines.findIndex((one) => one.includes(`east        10' 8 1/4"`)) + 1
    expect(explainText(area, bedroom)).toContain(
      `east: 10' 8 1/4"  [the job file, job.floor:${line}]`,
    )
  })
})

describe('the cut list', () => {
  const text = layoutText(bedroom)
  const rows = text.split('\n').filter((line) => /^ +(\d+ +)?\d+(–\d+)? +\d+(–\d+)? {2}/.test(line))

  test('has each piece once', () => {
    const numbers = rows.flatMap((row) => {
      const [, first, last] = /^ {2}.{6} {2}(\d+)(?:–(\d+))?/.exec(row)!
      const [from, to] = [Number(first), Number(last ?? first)]
      return Array.from({ length: to - from + 1 }, (_, i) => from + i)
    })
    const pieces = bedroom.floors[0]!.published.pieces.map(({ piece }) => piece)
    expect(numbers.toSorted((a, b) => a - b)).toEqual(pieces)
  })

  test('says which way everything goes', () => {
    expect(text).toContain('Planks run east-west, each course laid left to right')
    expect(text).toMatch(/The first course is .* wide, the last .*\./)
  })

  test('says where the rest of a plank goes, and where it comes from', () => {
    const [floor] = bedroom.floors
    const { published } = floor!
    const shared = published.pieces.map((piece) =>
      piece.piece === 9 ? { ...piece, plank: 1 } : piece,
    )
    const text = layoutText({
      ...bedroom,
      floors: [{ ...floor!, published: { ...published, pieces: shared } }],
    })
    const row = (piece: number) =>
      text.split('\n').find((line) => line.slice(10).startsWith(`${piece} `))
    expect(row(1)).toMatch(/ for 9$/)
    expect(row(9)).toMatch(/ from 1$/)
    expect(row(2)).not.toMatch(/ (for|from) \d+$/)
  })

  test('lists each rule that is not met with its place', () => {
    const [floor] = bedroom.floors
    const breach = {
      rule: 'shortest end',
      value: 152_400_000,
      limit: 254_000_000,
      at: [0, 0],
      pieces: [9],
      direction: '',
    } as const
    const published = { ...floor!.published, breaches: [breach] }
    const course = published.pieces.find(({ piece }) => piece === 9)!.course
    expect(layoutText({ ...bedroom, floors: [{ ...floor!, published }] })).toContain(
      `    piece 9, course ${course}: a piece 6" long, at least 10" asked for`,
    )
  })
})
