import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { usualForms } from '../../server/src/features/completion/usual-lines.ts'
import { complete } from '../../server/src/features/completion.ts'
import { plainText } from '../../server/src/features/writing/insert.ts'
import { parse } from '../../server/src/language/parse.ts'
import { WORDS } from '../../server/src/language/words.ts'
import { effort } from '../effort.ts'
import { view } from './marked.ts'

const FOLDER = new URL('../../examples/', import.meta.url)
const EXAMPLES = Object.fromEntries(
  readdirSync(FOLDER)
    .filter((name) => name.endsWith('.floor'))
    .map((name) => [name, readFileSync(new URL(name, FOLDER), 'utf8')]),
)

describe.each(Object.keys(EXAMPLES))('at every place of %s', (file) => {
  const { view: seen } = view(EXAMPLES, { file, root: file, counted: false })
  const { text } = seen.tree
  const all = Array.from({ length: text.length + 1 }, (_, offset) => ({
    offset,
    items: complete(seen, offset).items,
  }))

  test('what is offered replaces a stretch of the line at the cursor', () => {
    for (const { offset, items } of all) {
      for (const { span } of items) {
        expect(span.start <= offset && offset <= span.end).toBe(true)
        expect(text.slice(span.start, span.end)).not.toMatch(/[\r\n]/)
      }
    }
  })

  test('no two offers look alike', () => {
    for (const { items } of all) {
      const labels = items.map(({ label }) => label)
      expect(new Set(labels).size).toBe(labels.length)
    }
  })

  test('a word that is taken gives a line that reads', () => {
    const places = all.filter(({ offset }) => text[offset - 1] === '\n' && text[offset] === '\n')
    expect(places.length).toBeGreaterThan(0)
    for (const { offset, items } of places.filter((_, i) => i % effort(4, 1) === 0)) {
      for (const { label, insert, kind } of items) {
        if (kind !== 'line' && kind !== 'block') continue
        const typed = plainText(insert)
        const { messages } = parse(file, `${text.slice(0, offset)}${typed}${text.slice(offset)}`)
        const wrong = messages.filter(
          ({ weight, code }) => weight === 'error' && code !== 'name-missing',
        )
        expect(wrong, label).toEqual([])
      }
    }
  })
})

test.each(WORDS.filter(({ takes, home }) => takes === 'phrases' && home !== 'file'))(
  'what a $word line of a $home goes on with reads there',
  ({ word, home }) => {
    const wall = word !== home && home === 'room' ? "  north 12'\n  east 9'\n" : ''
    const { view: seen, cursor } = view(`${home} den\n${wall}  ${word} ‹|›`, { counted: false })
    const { items } = complete(seen, cursor)
    expect(items.length > 0 || word === 'out of square').toBe(true)
    for (const { label, insert } of items) {
      const { messages } = parse('job.floor', seen.tree.text + plainText(insert))
      const line = messages.filter(
        ({ span, weight }) => span.start > cursor - word.length - 2 && weight === 'error',
      )
      expect(line, label).toEqual([])
    }
  },
)

test('the usual forms of a line are forms of its word', () => {
  for (const word of WORDS.filter(({ takes }) => takes === 'phrases')) {
    expect(word.forms).toEqual(expect.arrayContaining([...usualForms(word)]))
  }
})
