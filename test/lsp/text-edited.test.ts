import { expect, test } from 'vitest'
import { editBetween } from '../../server/src/lsp/text-edited.ts'
import { dice } from '../generate/dice.ts'

/** The same one by one. */
function plainly(before: string, after: string) {
  const shorter = Math.min(before.length, after.length)
  let start = 0
  while (start < shorter && before[start] === after[start]) start += 1
  let behind = 0
  while (behind < shorter - start && before.at(-1 - behind) === after.at(-1 - behind)) behind += 1
  return { start, end: before.length - behind, longer: after.length - before.length }
}

test('the stretch that differs is found, however long the texts', () => {
  const chance = dice(7)
  const text = (length: number) => Array.from({ length }, () => chance.pick(['a', 'b'])).join('')
  for (let i = 0; i < 400; i++) {
    const whole = text(chance.pick([0, 1, 5, 900, 1_024, 5_000]))
    const at = chance.below(whole.length + 1)
    const end = Math.min(whole.length, at + chance.below(4))
    const after = whole.slice(0, at) + text(chance.below(4)) + whole.slice(end)
    expect(editBetween(whole, after)).toEqual(plainly(whole, after))
  }
})
