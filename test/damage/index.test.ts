import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { FILES, GEOMETRY, INJECTION, NUMBERS, TEXT } from './abuse-list.ts'

const TESTS = new URL('../', import.meta.url)

/** What a text, a number, a room, a file or a name may do: each has its test, and here is where. */
describe.each([
  ['text', TEXT],
  ['numbers', NUMBERS],
  ['geometry', GEOMETRY],
  ['files', FILES],
  ['injection', INJECTION],
] as const)('%s', (_, list) => {
  test.each(list)('$what', ({ file, test: name }) => {
    const at = new URL(file, TESTS)
    expect(existsSync(at), `${file} is not there`).toBe(true)
    expect(readFileSync(at, 'utf8')).toContain(name)
  })
})

test('nothing is listed twice', () => {
  const all = [TEXT, NUMBERS, GEOMETRY, FILES, INJECTION].flatMap((list) =>
    list.map(({ what }) => what),
  )
  expect(all.filter((what, i) => all.indexOf(what) !== i)).toEqual([])
  expect(all.length).toBeGreaterThan(100)
})
