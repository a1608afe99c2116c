import { describe, expect, test } from 'vitest'
import { format } from '../../server/src/language/format.ts'
import { LARGEST_FILE, MOST_MESSAGES, parse } from '../../server/src/language/parse.ts'
import { print } from '../../server/src/language/print.ts'
import { codes, read, sample } from './said.ts'

describe('limits', () => {
  test('a file that is too large gets one message, and is not lost', () => {
    const text = 'room a\n'.repeat(LARGEST_FILE / 7 + 1)
    const tree = read(text)
    expect(tree.messages.map((message) => message.code)).toEqual(['file-too-large'])
    expect(print(tree)).toBe(text)
    expect(format(tree)).toBe(text)
  })

  test('at most a thousand messages, and a last one that says so', () => {
    const { messages } = read('wibble\n'.repeat(5000))
    expect(messages.length).toBe(MOST_MESSAGES + 1)
    expect(messages.at(-1)!.code).toBe('messages-cut')
    expect(codes('wibble\n'.repeat(MOST_MESSAGES)).at(-1)).toContain('word-unknown')
  })

  test('nested and unclosed signs are not deep', () => {
    for (const sign of ['(', '[', '{', '"', "'", '“', '<', '#', '?', '+', ',']) {
      const text = `room a\n  north ${sign.repeat(100_001)}`
      const tree = read(text)
      expect(print(tree)).toBe(text)
      expect(tree.messages.length).toBeLessThanOrEqual(3)
    }
  })
})

describe('what is very long is read whole, and none of it is lost', () => {
  const LONG: readonly (readonly [string, (n: number) => string])[] = [
    ['a job', (n) => sample('upper-hall').repeat(n / 20)],
    ['blanks', (n) => `room a\n  north${' '.repeat(n * 40)}9' x`],
    ['blanks before a mark', (n) => `room a\n  north 12'${' '.repeat(n * 40)}x`],
    ['blanks in a note', (n) => `room a\n  note${' '.repeat(n * 40)}x${' '.repeat(n * 40)}`],
    ['digits', (n) => `room a\n  north ${'1'.repeat(n * 40)}x`],
    ['numbers', (n) => `room a\n  north ${'1 '.repeat(n * 20)}x`],
    ['fractions', (n) => `room a\n  north ${'1/'.repeat(n * 20)}x`],
    ['phrases', (n) => `room a\n  north 9', ${'called x, '.repeat(n)}`],
    ['words', (n) => `room a\n  lay ${'wide '.repeat(n * 4)}`],
    ['names', (n) => `floor a\n  rooms ${'b 2, '.repeat(n * 4)}c`],
    ['quotes', (n) => `room a\n  north ${'"'.repeat(n * 10)}`],
    ['hidden signs', (n) => `room a\n  north ${'\u200b \u202e'.repeat(n * 10)}`],
    ['merge marks', (n) => '<<<<<<< a\n'.repeat(n)],
    ['lines without blanks', (n) => 'x\n'.repeat(n * 4)],
    ['empty lines', (n) => '\r\n'.repeat(n * 10)],
  ]

  test.each(LONG)('%s', (_, make) => {
    const text = make(1600)
    expect(print(parse('job.floor', text))).toBe(text)
  })
})
