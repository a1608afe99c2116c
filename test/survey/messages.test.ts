import { readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { GALLERY } from './gallery.ts'

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url))

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
