import { expect, test } from 'vitest'
import { selections } from '../../server/src/features/selection.ts'
import { view } from './marked.ts'

/** The selections at the cursor as texts, line ends shown. */
function grown(source: string): readonly string[] {
  const { view: seen, cursor } = view(source, { counted: false })
  return selections(seen.tree, cursor).map(({ start, end }) => seen.tree.text.slice(start, end))
}

test('a selection grows from figure to phrase, line, wall, room and file', () => {
  const door = `door 30", about 14" from left`
  const wall = `  north 4' 0"  # bright\n    ${door}`
  const room = `room den\n${wall}\n  east 4' 0"`
  const text = `job A\n${room}\n\n# end\n`
  const at = text.indexOf('14"') + 1
  expect(grown(`${text.slice(0, at)}‹|›${text.slice(at)}`)).toEqual([
    '14"',
    'about 14"',
    'about 14" from left',
    door,
    `    ${door}`,
    wall,
    room,
    text,
  ])
})

test('from a name it grows by its phrase and line', () => {
  expect(grown(`room sun room\n  across 4' 0", from nor‹|›th to south`).slice(0, 4)).toEqual([
    'north',
    'from north to south',
    `across 4' 0", from north to south`,
    `  across 4' 0", from north to south`,
  ])
})

test.each(['‹|›', 'job A\n‹|›\n', '# ab‹|›c', '  ‹|›'])('%j has the file at least', (source) => {
  const { view: seen, cursor } = view(source)
  const found = selections(seen.tree, cursor)
  expect(found.at(-1)).toEqual({ file: 'job.floor', start: 0, end: seen.tree.text.length })
})

test('at every offset each selection holds the offset and the one before, and is larger', () => {
  const { view: seen } = view(
    'floorscribe 1\r\njob A, b\nroom "x y"\n  north 4\' 0" within 1/4", called long one\n  huh?\n    again ?\n  note  some words  # and\n',
  )
  for (let offset = 0; offset <= seen.tree.text.length; offset++) {
    let before = { start: offset, end: offset }
    for (const [i, { start, end }] of selections(seen.tree, offset).entries()) {
      expect(start <= before.start && before.end <= end).toBe(true)
      if (i > 0) expect(end - start).toBeGreaterThan(before.end - before.start)
      before = { start, end }
    }
  }
})
