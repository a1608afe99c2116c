import { existsSync } from 'node:fs'
import { expect, test } from 'vitest'
import { codesIn, LANGUAGE_CODES } from '../errors/codes.ts'
import { fences, provokes } from '../language/page.ts'

/** Only a chain of a hundred files, or a thousand messages, provokes these. */
const LARGE = ['include-too-deep', 'messages-cut']

const CODES = codesIn('job').filter(
  (code) => !LARGE.includes(code) && !LANGUAGE_CODES.includes(code),
)

test.each(CODES)('%s has an entry on the reference page and a file of its own', (code) => {
  expect(fences.map(provokes)).toContain(code)
  expect(existsSync(new URL(`../errors/${code}.floor`, import.meta.url))).toBe(true)
})
