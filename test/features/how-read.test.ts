import { expect, test } from 'vitest'
import { fineLength, inAllUnits, signedLength } from '../../server/src/features/hover/how-read.ts'
import { NM_PER_INCH, NM_PER_MM, type UnitStyle } from '../../server/src/units/length.ts'

// By hand: 148 1/2 in × 25.4 = 3771.9 mm; 3760 mm ÷ 25.4 = 148.0315 in, nearest sixteenth 148 1/16.
test.each([
  [148.5 * NM_PER_INCH, 'feet-inches', `12' 4 1/2", 148 1/2", 3771.9 mm`],
  [8 * NM_PER_INCH, 'feet-inches', '8", 203.2 mm'],
  [148.5 * NM_PER_INCH, 'inches', '148 1/2", 3771.9 mm'],
  [3771.9 * NM_PER_MM, 'mm', `3771.9 mm, 12' 4 1/2"`],
  [3760 * NM_PER_MM, 'cm', `376 cm, about 12' 4 1/16"`],
  [3760 * NM_PER_MM, 'm', `3.76 m, about 12' 4 1/16"`],
] satisfies [number, UnitStyle, string][])('%d nm in a job of %s is %s', (nm, units, text) => {
  expect(inAllUnits(Math.round(nm), units)).toBe(text)
})

test.each([
  [0.1 * NM_PER_INCH, 'feet-inches', '3/32"', '+3/32"'],
  [-0.1 * NM_PER_INCH, 'inches', '-3/32"', '-3/32"'],
  [0.001 * NM_PER_INCH, 'feet-inches', '0"', '0"'],
  [2.57 * NM_PER_MM, 'mm', '2.6 mm', '+2.6 mm'],
  [0.04 * NM_PER_MM, 'mm', '0 mm', '0 mm'],
] satisfies [number, UnitStyle, string, string][])(
  '%d nm in %s is %s',
  (nm, units, fine, signed) => {
    expect(fineLength(nm, units)).toBe(fine)
    expect(signedLength(nm, units)).toBe(signed)
  },
)
