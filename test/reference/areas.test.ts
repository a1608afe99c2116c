import { expect, test } from 'vitest'
import { areaFromTwice, areaIn, areaOf } from '../../server/src/units/area.ts'
import { NM_PER_FOOT, NM_PER_INCH, NM_PER_MM } from '../../server/src/units/length.ts'
import { multiply, ratio } from '../../server/src/units/ratio.ts'

/** A rectangle's area from its sides in whole nanometres. */
const rectangle = (a: number, b: number) => areaFromTwice(2n * BigInt(a) * BigInt(b))

test('12′ 3 1/2″ by 10′ 9 1/4″ is 152515/1152 sq ft, 12.299572175 sq m [computed]', () => {
  const area = rectangle(147.5 * NM_PER_INCH, 129.25 * NM_PER_INCH)
  expect(areaIn('sq ft', area)).toEqual(ratio(152_515, 1152))
  expect(areaIn('sq m', area)).toEqual(ratio(12_299_572_175n, 10n ** 9n))
})

test('20 sq m is 215.278208… sq ft [computed]', () => {
  const feet = areaIn('sq ft', areaOf('sq m', ratio(20)))
  expect((feet.n * 1_000_000n) / feet.d).toBe(215_278_208n)
})

test('8 planks 180 by 1220 mm are 1.7568 sq m, 18.910037820… sq ft [computed]', () => {
  const area = multiply(ratio(8), rectangle(180 * NM_PER_MM, 1220 * NM_PER_MM))
  expect(areaIn('sq m', area)).toEqual(ratio(17_568, 10_000))
  const feet = areaIn('sq ft', area)
  expect((feet.n * 10n ** 9n) / feet.d).toBe(18_910_037_820n)
})

test('an L of 20′ by 8′ and 12′ by 6′ is 232 sq ft, 25.777… sq yd, 21.55350528 sq m [computed]', () => {
  const f = NM_PER_FOOT
  const twice = 2n * (BigInt(20 * f) * BigInt(8 * f) + BigInt(12 * f) * BigInt(6 * f))
  const area = areaFromTwice(twice)
  expect(areaIn('sq ft', area)).toEqual(ratio(232))
  expect(areaIn('sq yd', area)).toEqual(ratio(232, 9))
  expect(areaIn('sq m', area)).toEqual(ratio(2_155_350_528n, 10n ** 8n))
})
