import { describe, expect, test } from 'vitest'
import { lineHelp } from '../../server/src/features/line-help.ts'
import { view } from './marked.ts'

function help(source: string) {
  const { view: seen, cursor } = view(source)
  return lineHelp(seen, cursor)
}

function active(source: string): string | null {
  const found = help(source)
  return found === null || found.active === null ? null : found.forms[found.active]!.example
}

test('the forms of the word, in the units of the file', () => {
  expect(help('room den\n  square ‹|›')).toMatchObject({
    word: 'square',
    says: 'A corner tested 3-4-5.',
    forms: [{ example: 'NAME' }],
    active: null,
  })
  const gap = help('units mm\nproduct larch\n  gap ‹|›')!
  expect(gap.forms).toEqual([
    { example: '610 mm', says: 'How far the floor stays off a wall, to be free to grow.' },
  ])
  expect(help("room den\n  north 12'‹|›")!.span).toMatchObject({ start: 16, end: 20 })
})

const DOOR = "room den\n  north 12'\n    door "
test.each([
  [`${DOOR}‹|›`, null],
  [`${DOOR}30"‹|›`, '2\' 0"'],
  [`${DOOR}30", ‹|›`, null],
  [`${DOOR}30", 1' 2"‹|› from left`, '2\' 0" from left or right'],
  [`${DOOR}30", 1' 2" fr‹|›`, '2\' 0" from left or right'],
  [`${DOOR}30", 1' 2" from le‹|›`, '2\' 0" from left or right'],
  [`${DOOR}30", 1' 2" from west‹|›`, '2\' 0" from WALL'],
  [`${DOOR}30", to h‹|›`, 'to ROOM'],
  [`${DOOR}30", to hall‹|›, cased`, 'to ROOM'],
  [`${DOOR}30", to hall, cas‹|›`, 'cased'],
  [`${DOOR}30", swings ‹|›`, 'swings in or out'],
  [`${DOOR}30", nonsense‹|›`, null],
  [`floor up\n  start along north ‹|›`, 'along WALL of ROOM'],
  [`floor up\n  rooms hall, d‹|›`, 'NAME, NAME'],
])('%j stands in %s', (source, form) => {
  expect(active(source)).toBe(form)
})

describe('no help', () => {
  test.each([
    '‹|›',
    'room den\n  nor‹|›',
    'room den\n  note any ‹|›',
    "room den\n  north 12'  # so ‹|›",
    'job My ‹|›',
    'what ‹|›',
  ])('%j', (source) => {
    expect(help(source)).toBeNull()
  })
})
