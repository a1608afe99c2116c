import { expect, test } from 'vitest'
import { wordExample } from '../../server/src/features/words/word-examples.ts'
import { parse } from '../../server/src/language/parse.ts'
import { WORDS } from '../../server/src/language/words.ts'
import type { UnitStyle } from '../../server/src/units/length.ts'

const OPENING = {
  file: '',
  job: 'job A\n',
  room: 'room den\n  north 4\' 0"\n',
  product: 'product ash\n',
  floor: 'floor all\n',
  prices: 'prices list\n',
} as const

test.each(['feet-inches', 'inches', 'mm', 'm'] satisfies UnitStyle[])(
  'the example of every word is a line of the language, in %s',
  (units) => {
    const wrong = WORDS.flatMap((word) => {
      const line = wordExample(word, units)
      const indent = word.home === 'file' ? '' : '  '
      const { messages } = parse('job.floor', `${OPENING[word.home]}${indent}${line}\n`)
      return messages.map(({ text }) => `${line}: ${text}`)
    })
    expect(wrong).toEqual([])
  },
)

test('the eight ways share one example, and value columns are the formatter’s', () => {
  expect(wordExample({ word: 'north', home: 'room' }, 'feet-inches')).toBe(
    `north         12' 4 1/2"`,
  )
  expect(wordExample({ word: 'gap', home: 'product' }, 'mm')).toBe('gap           6 mm')
  expect(wordExample({ word: 'out of square', home: 'room' }, 'mm')).toBe('out of square')
})
