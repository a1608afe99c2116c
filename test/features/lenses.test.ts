import { expect, test } from 'vitest'
import { lenses } from '../../server/src/features/lenses.ts'
import { HOUSE } from './house.ts'
import { view } from './marked.ts'

/** The first line of each lens's block, and what the lens says. */
function shown(source: string, look: Parameters<typeof view>[1] = {}): readonly string[] {
  const { view: seen } = view(source, look)
  return lenses(seen).map(
    ({ span, text }) => `${seen.tree.text.slice(span.start, span.end)}: ${text}`,
  )
}

test('over a floor stands how it is set out, over a room where it is laid', () => {
  expect(shown(HOUSE)).toEqual([
    'room den: in floor ground',
    'room hall: in floor ground',
    'floor ground: set out: 46 courses, 95 planks, 91 cut pieces, no breaches',
  ])
})

test('a lens keeps its line while counts are worked out, and where there are none', () => {
  expect(shown(HOUSE, { counted: false }).at(-1)).toBe('floor ground: set out: being counted')
  const unread = HOUSE.replace(`12' 4 1/8"`, '?')
  expect(shown(unread.replace('den, den closet, hall', 'den')).slice(1)).toEqual([
    'room hall: in no floor yet',
    'floor ground: set out: not yet',
  ])
})

test('a room that only has its name is not yet missed on a floor', () => {
  expect(shown("room attic\nroom den\n  north 12'\n")).toEqual(['room den: in no floor yet'])
})

test('a floor that is not final says so', () => {
  const held = HOUSE.replace('floor ground\n', 'floor ground\n  hold slab test\n')
  expect(shown(held).at(-1)).toMatch(/no breaches, incomplete$/)
})

test('a floor leads to its drawing, a room to the floor it is laid in', () => {
  const { view: seen } = view(HOUSE)
  const at = HOUSE.indexOf('ground')
  expect(lenses(seen).map(({ does }) => does)).toEqual([
    { kind: 'go', to: { file: 'job.floor', start: at, end: at + 6 } },
    { kind: 'go', to: { file: 'job.floor', start: at, end: at + 6 } },
    { kind: 'preview' },
  ])
})

test.each([
  [0, 'read by no job'],
  [1, 'read by 1 job'],
  [3, 'read by 3 jobs'],
])('in a shared file %d jobs are told over products', (jobs, text) => {
  const { view: part } = view(
    { 'job.floor': 'job A\ninclude p.floor\n', 'p.floor': 'product ash\nprices list\nroom\n' },
    { file: 'p.floor' },
  )
  expect(lenses(part, { jobs }).map((lens) => lens.text)).toEqual([text, text])
})

test('hidden signs in a name are spelt out', () => {
  const odd = HOUSE.replaceAll('ground', 'a\u2067b')
  expect(shown(odd)[0]).toBe('room den: in floor a‹U+2067›b')
  expect(shown(HOUSE.replaceAll('ground', '<b>x')).slice(0, 1)).toEqual(['room den: in floor <b>x'])
})
