import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { expectGolden } from '../golden.ts'
import { LAWS, tableOfLaws } from './laws.ts'

test('the table of laws says what they are', () => {
  expectGolden(fileURLToPath(new URL('laws.golden.md', import.meta.url)), tableOfLaws())
})

test('no two laws have one name', () => {
  const names = [...LAWS.values()].flat().map(({ name }) => name)
  expect(new Set(names).size).toBe(names.length)
  expect(names.length).toBeGreaterThan(50)
})
