import { expect, test } from 'vitest'
import { formSays } from '../../server/src/features/words/form-says.ts'
import { WORDS } from '../../server/src/language/words.ts'

test('every form of every word is told in one sentence', () => {
  const silent = WORDS.flatMap(({ word, forms, takes }) =>
    (takes === 'name' || takes === 'names' ? ['NAME'] : forms).flatMap((form) =>
      /^[A-Z"].*\.$/.test(formSays(word, form) ?? '') ? [] : [`${word}: ${form}`],
    ),
  )
  expect(silent).toEqual([])
})

test('what a length is depends on its line', () => {
  const said = ['north', 'door', 'gap', 'again', 'tape'].map((word) => formSays(word, 'LENGTH'))
  expect(new Set(said).size).toBe(5)
  expect(formSays('north', 'LENGTH sideways')).toBeNull()
})
