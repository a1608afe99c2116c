import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
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

test('no message says the same twice in one job, and all end as sentences do', () => {
  for (const { survey } of GALLERY) {
    const texts = survey().messages.map(({ text }) => text)
    expect(new Set(texts).size).toBe(texts.length)
    for (const text of texts) expect(text).toMatch(/[.?…]$/)
  }
})
