import { expect, test } from 'vitest'
import { VULGAR, vulgarFraction } from '../../server/src/units/signs.ts'

test('each one-character fraction is worth what the Unicode standard takes it apart into', () => {
  expect(VULGAR).toHaveLength(18)
  for (const sign of VULGAR) {
    const [over, under] = sign.normalize('NFKD').split('\u2044').map(Number)
    expect(vulgarFraction(sign), sign).toEqual([over, under])
  }
})

test('other signs are no fraction', () => {
  expect(vulgarFraction('5')).toBeNull()
})
