import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import type { Message } from '../../server/src/facts/message.ts'
import { expectGolden } from '../golden.ts'
import { LANGUAGE_CODES } from './codes.ts'
import { provoke } from './provoke.ts'

const HERE = new URL('./', import.meta.url)

/** One small file for each message, named by its code. */
const files = readdirSync(HERE)
  .filter((name) => name.endsWith('.floor'))
  .sort()
  .map((name) => ({
    code: name.slice(0, -'.floor'.length),
    text: readFileSync(new URL(name, HERE), 'utf8'),
  }))

/** Messages that only a file of some megabytes provokes; the reference page repeats theirs. */
const LARGE = ['file-too-large', 'messages-cut']

/** The message under the line it is about, as a terminal would show it. */
function shown(message: Message, text: string): string {
  const start = text.lastIndexOf('\n', message.span.start - 1) + 1
  const end = text.indexOf('\n', message.span.start)
  const line = text.slice(start, end < 0 ? text.length : end)
  const length = Math.max(1, Math.min(message.span.end, start + line.length) - message.span.start)
  const number = `${text.slice(0, start).split('\n').length}`.padStart(4)
  return [
    `${number} | ${visible(line)}`,
    `     | ${' '.repeat(message.span.start - start)}${'^'.repeat(length)}`,
    `${message.weight}: ${message.text}`,
    ...message.related.map((related) => `see: ${related.text}`),
    ...message.fixes.map((fix) => `fix: ${fix.title}`),
  ].join('\n')
}

/** Signs that show nothing stand as a dot, so that the page can be read. */
function visible(line: string): string {
  return line.replace(/\p{Cc}|\p{Cf}/gu, '·')
}

describe('one small file for each message', () => {
  test.each(files)('$code is provoked', ({ code, text }) => {
    expect(provoke(code, text).map((message) => message.code)).toContain(code)
  })

  test('every message of the language has one', () => {
    const named = files.map((file) => file.code)
    expect(LANGUAGE_CODES.filter((code) => !named.includes(code))).toEqual(LARGE)
  })

  test('a message of the language comes alone', () => {
    for (const { code, text } of files.filter((file) => LANGUAGE_CODES.includes(file.code))) {
      expect(provoke(code, text).length, code).toBe(1)
    }
  })

  test('the gallery', () => {
    const pages = files.map(({ code, text }) =>
      [`== ${code}`, ...provoke(code, text).map((message) => shown(message, text))].join('\n'),
    )
    expectGolden(new URL('gallery.golden.txt', HERE).pathname, `${pages.join('\n\n')}\n`)
  })
})
