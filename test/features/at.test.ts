import { expect, test } from 'vitest'
import { meaningOf } from '../../server/src/features/names/meaning.ts'
import { definitionOf } from '../../server/src/features/names/thing.ts'
import { at } from '../../server/src/features/place/at.ts'
import { thingOn } from '../../server/src/features/place/line-thing.ts'
import { view } from './marked.ts'

const HOUSE = `floorscribe 1
job House
walls 4 1/2" thick
room den
  north       12' 4", called window wall
    door      30", 14" from left, to hall, called wide door
    again     12' 4 1/8"
  note        a remark between
    note      one deeper: about the door
  east        10' 8 1/4"
  corner      throat
  south       12' 4 1/8"
    closet    4' 0", 2' 0" from left, 2' 0" deep
    hearth    2' 0", 6" from right, 1' 0" deep
  west        10' 8 1/8"
  diagonal    16' 3 7/8", from north-west to throat
  across      12' 4", from east to west, middle
  column      8" round, 4' 0" from west, 3' 0" from window wall
  accept      corner not square, because old house
room hall
  north       4' 0"
  east        9' 0"
  south       4' 0"
    door      30", 9" from right, to den, called wide door
  west        9' 0"
product ash
  plank       6" x 48"
  box         12 planks
floor ground
  rooms       den, den closet, hall
  lay         ash, running along window wall of den
  start       along east of den
  edge        den to outside, called wide door, with end cap
`

/** The house with a cursor put after the first `before`, in the line that begins with `line`. */
function looking(line: string, before: string) {
  const from = HOUSE.indexOf(line)
  const offset = HOUSE.indexOf(before, from) + before.length
  const { view: seen, cursor } = view(`${HOUSE.slice(0, offset)}‹|›${HOUSE.slice(offset)}`)
  return { seen, here: at(seen.tree, cursor) }
}

test.each([
  ['  north       12', 'nor', ['den', 'north'], 'head', null, null],
  ['  north       12', "12' ", ['den', 'north'], 'figure', 'LENGTH', `12' 4"`],
  [
    '    door      30", 14"',
    '14',
    ['den', 'north', 'door'],
    'figure',
    'LENGTH from left|right',
    '14"',
  ],
  ['    again', 'again', ['den', 'north', 'door', 'again'], 'head', null, null],
  ['  note        a', 'remark', ['den', 'note'], 'text', null, null],
  ['    note      one', 'deeper', ['den', 'north', 'door', 'note'], 'text', null, null],
  ['  across', 'mid', ['den', 'across'], 'word', 'middle', null],
])('%s at %s', (line, before, path, token, form, measure) => {
  const { here } = looking(line, before)
  const words = here.path.map((entry, i) => (i === 0 ? here.block?.name?.text : entry.word))
  expect(words).toEqual(path)
  expect([here.token?.kind, here.phrase?.form ?? null, here.measure?.figure.text ?? null]).toEqual([
    token,
    form,
    measure,
  ])
  expect(here.onWord).toBe(token === 'head')
})

test.each([
  ['room den', 'den', 'room gives', 'den'],
  ['  north       12', 'window', 'wall gives', 'window wall'],
  ['    door      30", 14"', 'hal', 'room uses', 'hall'],
  ['    door      30", 14"', 'wide', 'opening gives', 'wide door'],
  ['  corner', 'thr', 'corner gives', 'throat'],
  ['  diagonal', 'north-w', 'corner uses', `  north       12' 4", called window wall`],
  ['  diagonal', 'to thr', 'corner uses', 'throat'],
  ['  across', 'from ea', 'wall uses', `  east        10' 8 1/4"`],
  ['  column', 'from win', 'wall uses', 'window wall'],
  ['  accept', 'corner no', 'code uses', null],
  ['  accept', 'because old', 'free uses', null],
  ['product ash', 'as', 'product gives', 'ash'],
  ['  rooms', 'den clo', 'room uses', `    closet    4' 0", 2' 0" from left, 2' 0" deep`],
  ['  lay', 'as', 'product uses', 'ash'],
  ['  lay', 'window', 'wall uses', 'window wall'],
  ['  start', 'of d', 'room uses', 'den'],
  ['  edge', 'outs', 'room uses', null],
  ['  edge', 'wide', 'opening uses', null],
  ['  edge', 'end c', 'trim uses', null],
])('the name on %s at %s is a %s', (line, before, use, told) => {
  const { seen, here } = looking(line, before)
  const { name, kind, gives } = here.name!
  expect(`${kind} ${gives ? 'gives' : 'uses'}`).toBe(use)
  expect(name.span.start <= here.offset && here.offset <= name.span.end).toBe(true)
  const thing = meaningOf(seen.measured, here.block!, here.name!)
  const span = thing === null ? null : definitionOf(thing)
  expect(span === null ? null : HOUSE.slice(span.start, span.end)).toBe(told)
})

test.each([
  ['room den', 'room'],
  ['  north       12', 'wall'],
  ['    door', 'opening'],
  ['    closet', 'closet'],
  ['    hearth', 'recess'],
  ['  column', 'obstacle'],
  ['  across', 'check'],
  ['  corner', 'corner'],
  ['product', 'product'],
  ['floor ground', 'floor'],
  ['    again', undefined],
  ['job', undefined],
])('the line %s tells a %s', (line, kind) => {
  const { seen, here } = looking(line, line)
  expect(thingOn(seen.measured, here.block!, here.entry!)?.kind).toBe(kind)
})

test('a second room of one name is not the first, and its name means the first', () => {
  const {
    view: seen,
    cursor,
    ranges,
  } = view(`job Two\nroom ‹den›\n  north 4' 0"\nroom d‹|›en\n  north 6' 0"\n`)
  const here = at(seen.tree, cursor)
  expect(definitionOf(meaningOf(seen.measured, here.block!, here.name!)!)).toEqual(ranges[0])
  expect(thingOn(seen.measured, here.block!, here.entry!)).toBeNull()
})

test('a way that two walls share means none', () => {
  const { view: seen, cursor } = view(
    `job L\nroom den\n  north 4' 0"\n  north 2' 0"\n  across 3' 0", from no‹|›rth to east\n`,
  )
  const here = at(seen.tree, cursor)
  expect(meaningOf(seen.measured, here.block!, here.name!)).toBeNull()
})

test.each(['__proto__', 'constructor', 'toString', 'חדר', '<b>&amp;'])(
  'a room called %s is found by its name',
  (name) => {
    const { view: seen, cursor } = view(
      `job Odd\nroom ${name}\n  north 4' 0"\nfloor all\n  rooms ${name}‹|›\n`,
    )
    const here = at(seen.tree, cursor)
    expect(meaningOf(seen.measured, here.block!, here.name!)?.kind).toBe('room')
  },
)

test.each([-5, 1_000_000])(
  'an offset outside the text (%d) counts as its nearest end',
  (offset) => {
    const { view: seen } = view('job End\nroom den')
    expect(at(seen.tree, offset).block?.word).toBe(offset < 0 ? 'job' : 'room')
    expect(at(view('').view.tree, offset).block).toBeNull()
  },
)

test('every offset of a text in any state has an answer', () => {
  const damaged = `${HOUSE.replaceAll(', ', ',').replace('corner', 'cor')}\r\nwhat is\n  this "\r  north 12'`
  const { view: seen } = view(damaged, { counted: false })
  for (let offset = 0; offset <= damaged.length; offset++) {
    const here = at(seen.tree, offset)
    expect(here.line.span.start <= offset).toBe(true)
    if (here.entry !== null) expect(here.entry.line).toBe(here.line)
    if (here.name !== null) meaningOf(seen.measured, here.block!, here.name)
    if (here.entry !== null) thingOn(seen.measured, here.block!, here.entry)
  }
})
