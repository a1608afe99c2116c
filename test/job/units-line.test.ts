import { expect, test } from 'vitest'
import { unitsOf } from '../../server/src/job/settings.ts'
import { parse } from '../../server/src/language/parse.ts'

test.each([
  ['units feet-inches, bare inches', 'feet-inches'],
  ['units bare inches, feet-inches', 'feet-inches'],
  ['units bare mm, m', 'm'],
  ['job Nothing said', 'feet-inches'],
])('%s prints in %s: what a bare number is says nothing of it', (line, style) => {
  expect(unitsOf(parse('units.floor', `${line}\n`))).toBe(style)
})
