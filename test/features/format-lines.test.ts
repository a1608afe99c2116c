import { describe, expect, test } from 'vitest'
import { formatFile, formatRange, formatTyped } from '../../server/src/features/format-lines.ts'
import { format } from '../../server/src/language/format.ts'
import { parse } from '../../server/src/language/parse.ts'
import { applied } from './applied.ts'
import { view } from './marked.ts'

const UNTIDY = `ROOM den
 north 12'4"
   east   10' 8",called  Bay Window
      Door 30" ,1'2" from LEFT
  south 12' 4
`

function edited(text: string, edits: ReturnType<typeof formatFile>): string {
  return applied(new Map([['job.floor', text]]), edits).get('job.floor')!
}

test('a file comes into the canonical form, and edits change no more than they must', () => {
  const tree = parse('job.floor', UNTIDY)
  const edits = formatFile(tree)
  expect(edited(UNTIDY, edits)).toBe(format(tree))
  expect(edits).toHaveLength(4)
  for (const { span, text } of edits) {
    const typed = UNTIDY.slice(span.start, span.end)
    expect(typed === '' || text === '' || typed[0] !== text[0]).toBe(true)
    expect(typed === '' || text === '' || typed.at(-1) !== text.at(-1)).toBe(true)
  }
})

test('a second time there is nothing to do', () => {
  expect(formatFile(parse('job.floor', format(parse('job.floor', UNTIDY))))).toEqual([])
})

describe('of a stretch only the lines that it touches', () => {
  test.each([
    [
      'within a line',
      'room den\n no‹rt›h 12\'4"\n east 9\'4"\n',
      'room den\n  north       12\' 4"\n east 9\'4"\n',
    ],
    [
      'to the start of the next',
      'room den\n‹ north 12\'4"\n› east 9\'4"\n',
      'room den\n  north       12\' 4"\n east 9\'4"\n',
    ],
    [
      'over two',
      'room den\n nor‹th 12\'4"\n e›ast 9\'4"\n',
      'room den\n  north       12\' 4"\n  east        9\' 4"\n',
    ],
    [
      'of nothing',
      'room den\n north 12\'4"\n‹› east 9\'4"\n',
      'room den\n north 12\'4"\n  east        9\' 4"\n',
    ],
  ])('%s', (_, source, formatted) => {
    const { view: seen, ranges, texts } = view(source)
    const [{ start, end }] = ranges as [(typeof ranges)[0]]
    expect(edited(texts.get('job.floor')!, formatRange(seen.tree, start, end))).toBe(formatted)
  })
})

describe('as one types', () => {
  test.each([
    ['the line just left', 'room den\n north 12\'4"\n‹|›', 'room den\n  north       12\' 4"\n'],
    [
      'not the line being typed',
      'room den\n north 12\'4"\n east 9\'4"‹|›\n',
      'room den\n  north       12\' 4"\n east 9\'4"\n',
    ],
    [
      'nor the one below',
      'room den\n north 12\'4"\n‹|›\n east 9\'4"\n',
      'room den\n  north       12\' 4"\n\n east 9\'4"\n',
    ],
    ['in the first line nothing', '  room den‹|›\n north 12\'4"', '  room den\n north 12\'4"'],
    ['a line that cannot be read stays', 'room den\n north 12 4\n‹|›', 'room den\n north 12 4\n'],
  ])('%s', (_, source, formatted) => {
    const { view: seen, cursor, texts } = view(source)
    expect(edited(texts.get('job.floor')!, formatTyped(seen.tree, cursor))).toBe(formatted)
  })
})
