import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { expectGolden } from '../golden.ts'
import { GALLERY } from './gallery.ts'

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url))

const page = () =>
  GALLERY.map(({ title, text, survey }) => {
    const { rooms, messages } = survey()
    const statuses = rooms.map(({ room, status }) => `${room.name.text}: ${status}`).join(', ')
    const said = messages.flatMap((message) => [
      `${message.weight} ${message.code}: ${message.text}`,
      ...message.related.map((related) => `  ${related.text}`),
    ])
    return `## ${title}\n\n${text}\n${[statuses, ...said].join('\n')}\n`
  }).join('\n')

test('what is said reads as accepted', () => {
  expectGolden(here('messages.golden.txt'), page())
})

/** Codes in the survey's own files, as they stand in `message(weight, 'code', …`. */
const codes = readdirSync(here('../../server/src/survey'))
  .map((file) => readFileSync(here(`../../server/src/survey/${file}`), 'utf8'))
  .flatMap((text) =>
    [...text.matchAll(/message\(\s*[\w' :?>*.()]+,\s*'([a-z-]+)'/g)].map((found) => found[1]!),
  )

describe('every message is provoked', () => {
  const said = new Set(GALLERY.flatMap(({ survey }) => survey().messages.map(({ code }) => code)))
  test.each([...new Set(codes)])('%s', (code) => {
    expect(said.has(code)).toBe(true)
  })
  test('no code is missed by the search', () => {
    expect([...said].filter((code) => !codes.includes(code))).toEqual([])
    expect(codes.length).toBeGreaterThan(30)
  })
})

test('no message says the same twice in one job, and all end as sentences do', () => {
  for (const { survey } of GALLERY) {
    const texts = survey().messages.map(({ text }) => text)
    expect(new Set(texts).size).toBe(texts.length)
    for (const text of texts) expect(text).toMatch(/[.?…]$/)
  }
})
