import { describe, expect, test } from 'vitest'
import { printAmount } from '../../server/src/takeoff/amount.ts'
import { summingTo } from '../../server/src/takeoff/summing.ts'
import type { Quantity } from '../../server/src/takeoff/takeoff.ts'
import { ratio } from '../../server/src/units/ratio.ts'

/** Lengths in hundredths of a foot, each printed by itself. */
function parts(...hundredths: readonly bigint[]): Quantity[] {
  return hundredths.map((n) => {
    const value = ratio(n, 100n)
    const printed = printAmount(value, 'ft')
    return {
      ...{ key: 'trim', label: 'trim', room: null, value, unit: 'ft', printed, complete: true },
      derivation: { value: printed, rule: 'as measured' } as Quantity['derivation'],
    }
  })
}

const printed = (total: bigint, ...of: readonly bigint[]) =>
  summingTo(ratio(total, 100n), parts(...of)).map((part) => part.printed)

describe('parts of a total, printed to a tenth', () => {
  test('are rounded so that they sum to it', () => {
    // 0.14 three times are 0.42, printed 0.4: one tenth is left over, for the first of those alike.
    expect(printed(42n, 14n, 14n, 14n)).toEqual(['0.2 ft', '0.1 ft', '0.1 ft'])
    // 0.16 three times are 0.48, printed 0.5: two are left over.
    expect(printed(48n, 16n, 16n, 16n)).toEqual(['0.2 ft', '0.2 ft', '0.1 ft'])
    expect(printed(50n, 10n, 10n, 30n)).toEqual(['0.1 ft', '0.1 ft', '0.3 ft'])
  })

  test('the one that lost most gets a tenth first, wherever it stands', () => {
    // 0.13, 0.28 and 0.19 are 0.60: down to 0.1, 0.2 and 0.1, two left for those that lost 0.08 and 0.09.
    expect(printed(60n, 13n, 28n, 19n)).toEqual(['0.1 ft', '0.3 ft', '0.2 ft'])
    // 0.12, 0.14 and 0.13 are 0.39: one left for the one that lost 0.04.
    expect(printed(39n, 12n, 14n, 13n)).toEqual(['0.1 ft', '0.2 ft', '0.1 ft'])
    expect(printed(39n, 14n, 12n, 13n)).toEqual(['0.2 ft', '0.1 ft', '0.1 ft'])
  })

  test('say so where they are printed otherwise than by themselves, and keep their value', () => {
    const given = parts(14n, 14n, 14n)
    const [raised, ...others] = summingTo(ratio(42n, 100n), given)
    expect(raised).toEqual({
      ...given[0]!,
      printed: '0.2 ft',
      derivation: { value: '0.2 ft', rule: 'rounded so that the rooms sum to the total' },
    })
    expect(others).toEqual(given.slice(1))
    expect(others.every((part, i) => part === given[i + 1])).toBe(true)
  })
})
