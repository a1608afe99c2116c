import { expect, test } from 'vitest'
import { FULL_WIDTH, plainSigns, VULGAR, vulgarFraction } from '../../server/src/units/signs.ts'

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

test('signs of full width stand for the plain ones, as the Unicode standard has it', () => {
  const wide = Array.from({ length: 94 }, (_, i) => String.fromCharCode(0xff01 + i)).join('')
  expect(plainSigns(wide)).toBe(wide.normalize('NFKC'))
  expect(plainSigns('a １２′ ～ \u3000')).toBe('a 12′ ~ \u3000')
  const isWide = new RegExp(`^[${FULL_WIDTH}]$`)
  expect(['！', '～', '\uff00', '\uff5f', '1'].map((sign) => isWide.test(sign))).toEqual([
    true,
    true,
    false,
    false,
    false,
  ])
})
