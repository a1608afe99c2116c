import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { headingLines } from '../../client/src/heading-lines.ts'
import { HOME } from '../house/sources.ts'

test('the line of a code is the line of its heading on the reference page', () => {
  const page = readFileSync(join(HOME, 'server/LANGUAGE.md'), 'utf8')
  const lines = headingLines(page)
  expect(lines.size).toBeGreaterThan(50)
  const line = lines.get('word-unknown')!
  expect(page.split('\n')[line - 1]).toBe('### word-unknown')
  expect(lines.get('no-such-code')).toBeUndefined()
})
