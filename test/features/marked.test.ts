import { expect, test } from 'vitest'
import { readMarks, view } from './marked.ts'

test('cursors and ranges are taken out of the text and told where they stood', () => {
  expect(readMarks('room ‹den›\n  no‹|›rth ‹12\' ‹4"››')).toEqual({
    text: 'room den\n  north 12\' 4"',
    cursors: [13],
    ranges: [
      { start: 5, end: 8 },
      { start: 17, end: 23 },
      { start: 21, end: 23 },
    ],
  })
})

test.each(['room ‹den', 'room den›'])('a range mark alone is a slip of the test: %s', (source) => {
  expect(() => readMarks(source)).toThrow('range mark')
})

test('the file that holds the cursor is looked at, in the job of the first', () => {
  const { view: seen, cursor } = view({
    'job.floor': 'job Open\ninclude rooms.floor\n',
    'rooms.floor': 'room ‹|›den\n',
  })
  expect(seen.file).toBe('rooms.floor')
  expect(seen.tree.text.slice(cursor)).toBe('den\n')
  expect(seen.measured.job.rooms.map(({ name }) => name.text)).toEqual(['den'])
  expect(seen.counted).not.toBeNull()
})

test('counts may still be to come', () => {
  expect(view('job Open\n', { counted: false }).view.counted).toBeNull()
})
