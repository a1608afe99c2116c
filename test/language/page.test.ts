import { describe, expect, test } from 'vitest'
import { format } from '../../server/src/language/format.ts'
import { WORDS } from '../../server/src/language/words.ts'
import { LANGUAGE_CODES } from '../errors/codes.ts'
import { provoke } from '../errors/provoke.ts'
import { type Fence, fences, PAGE, provokes, rowOf } from './page.ts'
import { codes, read } from './said.ts'

const LANGUAGE = 'Messages'
const WHOLE_JOB = 'Messages of names, survey and layout'

/** Words that every block carries have one row and one example for all. */
const CARRIED = ['note', 'tag', 'hold', 'accept']

/** The section that holds the words of each kind of block. */
const SECTIONS = {
  file: 'Column one',
  job: "A job's lines",
  room: "A room's lines",
  product: "A product's lines",
  floor: "A floor's lines",
  prices: "A price book's lines",
}

const named = (fence: Fence) => ({ ...fence, name: `${fence.section}: ${fence.text.slice(0, 40)}` })
const examples = fences.filter((fence) => /^floor(?: as-typed)?$/.test(fence.info)).map(named)
const provoking = fences.filter((fence) => provokes(fence) !== null)

function section(title: string): string {
  return PAGE.split(/^## /m).find((part) => part.startsWith(`${title}\n`)) ?? ''
}

describe('the reference page', () => {
  test.each(examples)('$name reads without a message', ({ text }) => {
    expect(codes(text)).toEqual([])
  })

  test.each(examples.filter((fence) => fence.info === 'floor'))(
    '$name is in the canonical form',
    ({ text }) => {
      expect(format(read(text))).toBe(text)
    },
  )

  test.each(WORDS)('$home: $word has its row', (word) => {
    const title = CARRIED.includes(word.word) ? 'Lines of every block' : SECTIONS[word.home]
    expect(section(title)).toContain(`\n${rowOf(word)}\n`)
  })

  test.each(WORDS)('$home: $word stands in an example', ({ word, home }) => {
    const used = examples.flatMap(({ text }) =>
      read(text).blocks.flatMap((block) => {
        const under = block.under.flatMap((entry) => [entry, ...entry.under])
        return [['file', block.word], ...under.map((entry) => [block.word, entry.word])]
      }),
    )
    const isThere = ([inHome, found]: readonly string[]) =>
      found === word && (inHome === home || CARRIED.includes(word))
    expect(used.some((one) => isThere(one))).toBe(true)
  })

  test('every message of the language has an entry, and no other stands there', () => {
    const inSection = fences.filter((fence) => fence.section === LANGUAGE).map(provokes)
    expect(inSection).toEqual(LANGUAGE_CODES)
  })

  test.each(provoking.map((fence) => ({ ...fence, code: provokes(fence)! })))(
    '$code is provoked, and its text stands below',
    ({ code, heading, text, after }) => {
      expect(heading).toBe(code)
      const said = provoke(code, text).find((message) => message.code === code)
      expect(said, `${code} is not provoked`).toBeDefined()
      expect(after.trim().replace(/^> ?/gm, '').replace(/\n/g, ' ')).toBe(said!.text)
    },
  )

  test('messages of the whole job stand in their own section', () => {
    expect(section(WHOLE_JOB)).not.toBe('')
    const codes = fences.filter((fence) => fence.section === WHOLE_JOB).map(provokes)
    expect(codes.filter((code) => code === null || LANGUAGE_CODES.includes(code))).toEqual([])
  })
})
