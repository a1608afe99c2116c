import { describe, expect, test } from 'vitest'
import { definition } from '../../server/src/features/definition.ts'
import { highlights } from '../../server/src/features/highlights.ts'
import { references } from '../../server/src/features/references.ts'
import { view } from './marked.ts'

const HOUSE = `job Heron Cottage
include rooms.floor

product «P»river larch
  plank       6 3/4" x 47 7/8"

floor up
  rooms       «R»hall, «D»den, «C»den closet
  lay         «P»river larch, running along «W»long wall of «R»hall
  start       along «N»north of «D»den
  edge        «R»hall to «D»den, called «O»main
`
const ROOMS = `room «R»hall
  north       12'
  east        4'
  south       12', called «W»long wall
    door      30", 1' from right, to «D»den, called «O»main
  west        4'
  tie         5', 1' along «W»south, 1' along west
room «D»den
  «n»north       12'
    door      30", 1' from left, to «R»hall, called «O»main
  east        9'
  south       12'
  west        9'
    «c»closet    4', 1' from left, 2' deep
  across      12', from «N»north to south, middle
  corner      «K»nook
  square      «K»nook
  diagonal    15', from «K»nook to south-east
`
const PRICES = `prices spring
  price       «P»river larch, 4.19 per sq ft
`

const SOURCES: Readonly<Record<string, string>> = {
  'job.floor': HOUSE.replace('include rooms.floor', 'include rooms.floor\ninclude prices.floor'),
  'rooms.floor': ROOMS,
  'prices.floor': PRICES,
}

/** The sources with the mark of one thing as ranges, and the cursor at its nth place. */
function at(letter: string, nth = 0) {
  let left = nth
  const marked = Object.fromEntries(
    Object.entries(SOURCES).map(([file, source]) => [
      file,
      source.replace(
        /«(.)»([a-z]+(?: (?:larch|wall|closet))?)/g,
        (_, own: string, word: string) => {
          if (own !== letter) return word
          left -= 1
          return left === -1 ? `‹‹|›${word}›` : `‹${word}›`
        },
      ),
    ]),
  )
  return view(marked)
}

const NAMES = [
  ['a product, price lines too', 'P'],
  ['a room', 'R'],
  ['a room of another line', 'D'],
  ['a wall by its name and by its way', 'W'],
  ['a wall by its way', 'N'],
  ['a doorway that both rooms tell', 'O'],
  ['a corner', 'K'],
  ['a closet by the name of its room', 'C'],
] as const

describe('every place where a thing is named', () => {
  test.each(NAMES)('%s', (_, letter) => {
    const { view: seen, cursor, allRanges } = at(letter)
    expect(allRanges.length).toBeGreaterThan(letter === 'C' ? 0 : 1)
    const places = references(seen, cursor, true)
    const inOrder = (spans: typeof allRanges) =>
      spans.map(({ file, start, end }) => `${file} ${start} ${end}`).sort()
    expect(inOrder(places)).toEqual(inOrder(allRanges))
  })

  test.each(NAMES)('of the file alone: %s', (_, letter) => {
    const { view: seen, cursor, ranges } = at(letter)
    expect(highlights(seen, cursor).map(({ span }) => span)).toEqual(ranges)
  })

  test('from whichever place it is asked', () => {
    const first = at('R', 0)
    for (const nth of [1, 2, 3, 4]) {
      const other = at('R', nth)
      expect(references(other.view, other.cursor, true)).toEqual(
        references(first.view, first.cursor, true),
      )
    }
  })

  test('the line that gives the name may be left out', () => {
    const { view: seen, cursor } = at('R')
    expect(references(seen, cursor, false)).toHaveLength(references(seen, cursor, true).length - 1)
    expect(highlights(at('W', 1).view, at('W', 1).cursor).map(({ gives }) => gives)).toEqual([
      true,
      false,
    ])
  })

  test('a wall from the word of its line', () => {
    const { view: seen, cursor } = at('n')
    expect(references(seen, cursor, true)).toHaveLength(2)
  })

  test.each(['', 'north', 'outside'])('nothing is named: %j', (name) => {
    const { view: seen, cursor } = view(`room den\n  north 12'\n    door 30", to ‹|›${name}`)
    expect(references(seen, cursor, true)).toEqual([])
    expect(highlights(seen, cursor)).toEqual([])
    expect(definition(seen, cursor)).toBeNull()
  })
})

describe('where a thing is told', () => {
  const textAt = (letter: string, nth = 0) => {
    const { view: seen, cursor, texts } = at(letter, nth)
    const places = definition(seen, cursor)?.places ?? []
    return places.map(({ file, start, end }) => [file, texts.get(file)!.slice(start, end)])
  }

  test.each([
    ['a product', 'P', 1, [['job.floor', 'river larch']]],
    ['a room of an included file', 'R', 0, [['rooms.floor', 'hall']]],
    ['a wall by its own name', 'W', 0, [['rooms.floor', 'long wall']]],
    ['a wall by its way', 'N', 0, [['rooms.floor', "north       12'"]]],
    [
      'a doorway, in both of its rooms',
      'O',
      0,
      [
        ['rooms.floor', 'main'],
        ['rooms.floor', 'main'],
      ],
    ],
    ['a closet', 'C', 0, [['rooms.floor', "closet    4', 1' from left, 2' deep"]]],
    ['a corner', 'K', 2, [['rooms.floor', 'nook']]],
  ] as const)('%s', (_, letter, nth, told) => {
    expect(textAt(letter, nth).map(([file, text]) => [file, text!.trim()])).toEqual(told)
  })

  test('an include line leads to its file', () => {
    const { view: seen, cursor } = view({
      'job.floor': 'job Open\ninclude roo‹|›ms.floor\n',
      'rooms.floor': 'room den\n',
    })
    expect(definition(seen, cursor)?.places).toEqual([{ file: 'rooms.floor', start: 0, end: 0 }])
    const missing = view('job Open\ninclude roo‹|›ms.floor\n')
    expect(definition(missing.view, missing.cursor)).toBeNull()
  })
})
