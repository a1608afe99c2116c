import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { NM_PER_64TH, NM_PER_FOOT, NM_PER_INCH, NM_PER_MM } from '../../server/src/units/length.ts'
import { printExact, printLength } from '../../server/src/units/print.ts'
import { type BareUnit, readLength, type TapeOptions } from '../../server/src/units/tape.ts'
import { canonicalLength } from '../../server/src/units/tape-canonical.ts'

const FEET: TapeOptions = { bare: null, style: 'feet-inches' }
const bare = (unit: BareUnit): TapeOptions => ({ bare: unit, style: 'feet-inches' })

function nm(text: string, options = FEET): number | null {
  return readLength(text, options).nm
}

function refusal(text: string, options = FEET) {
  const { refusal } = readLength(text, options)
  expect(refusal, `${text} was taken`).not.toBeNull()
  return refusal!
}

describe('tape notation', () => {
  // 12' 4 1/2" = 148 1/2 in = 3771.9 mm exactly (25.4 mm to the inch, 16 CFR 500.19(a)).
  const SAME = [
    `12' 4 1/2"`,
    `12'4-1/2"`,
    `12'-4 1/2"`,
    `12' - 4-1/2"`,
    `12’ 4 1/2”`,
    `12‘ 4 1/2“`,
    `12′ 4 1/2″`,
    `12ʹ 4 1/2ʺ`,
    `12＇ 4 1/2＂`,
    `12' 4 1/2''`,
    `12′ 4 1/2′′`,
    `12 ' 4 1/2 "`,
    `12\u00a0ft 4\u202f1/2\tin`,
    `12ft 4 1/2in`,
    `12 feet 4 1/2 inches`,
    `12' 4½"`,
    `12' 4 ½"`,
    `12' 4 1\u20442"`,
    `12' 4 32/64"`,
    `12' 4.5"`,
    `148 1/2"`,
    `148.5 in`,
    `148½ inch`,
    `12.375'`,
    `12.3750 ft`,
    `3771.9 mm`,
    `377.19cm`,
    `3.7719 m`,
  ]
  test.each(SAME)('%s is 3771.9 mm', (text) => {
    expect(nm(text)).toBe(3_771_900_000)
  })

  test.each([
    [`1/2"`, NM_PER_INCH / 2],
    [`½"`, NM_PER_INCH / 2],
    [`7/64"`, 7 * NM_PER_64TH],
    [`12' ½"`, 12 * NM_PER_FOOT + NM_PER_INCH / 2],
    [`0"`, 0],
    [`12'`, 12 * NM_PER_FOOT],
    [`3.76 m`, 3760 * NM_PER_MM],
    [`376 cm`, 3760 * NM_PER_MM],
    [`12' 4.333"`, 12 * NM_PER_FOOT + 4.333 * NM_PER_INCH],
    // The decimal foot of the trade's notation table is exact too: 12.2917 × 304.8 mm.
    [`12.2917 ft`, 3_746_510_160],
  ])('%s', (text, value) => {
    expect(nm(text)).toBe(value)
  })

  test.each([
    [`148 1/2`, 'inches', 3_771_900_000],
    [`12' 4 1/2`, 'inches', 3_771_900_000],
    [`12.4`, 'inches', 12.4 * NM_PER_INCH],
    [`3760`, 'mm', 3760 * NM_PER_MM],
    [`3.76`, 'm', 3760 * NM_PER_MM],
    [`376`, 'cm', 3760 * NM_PER_MM],
    [`12' 4"`, 'mm', 148 * NM_PER_INCH],
    [`12'`, 'mm', 12 * NM_PER_FOOT],
    [`12'`, 'inches', 12 * NM_PER_FOOT],
    [`4-1/2`, 'inches', 4.5 * NM_PER_INCH],
    [`½`, 'inches', NM_PER_INCH / 2],
    [`3 m`, 'inches', 3000 * NM_PER_MM],
    [`3 m`, 'cm', 3000 * NM_PER_MM],
  ] as const)('%s with bare %s', (text, unit, value) => {
    expect(nm(text, bare(unit))).toBe(value)
  })

  test.each([`12-4`, `12'-`, `12'"`, `12' m`, `12' 4 m`, `4 1/2 m`, `12.5' 4`, `5' 12`, `-4`])(
    '%s stays refused with bare inches',
    (text) => {
      expect(nm(text, bare('inches'))).toBeNull()
    },
  )
})

describe('what can be read two ways is refused with both readings', () => {
  test.each([
    [`12.4`, `12' 4"`, `12.4'`],
    [`12.40`, `12.40"`, `12.40'`],
    [`12-4`, `12' 4"`, '12 and 4'],
    [`12 4 1/2"`, `12' 4 1/2"`, '12 and 4 1/2'],
    [`148`, `148"`, `148'`],
    [`5' 6`, `5' 6"`, `5', 6`],
    [`1,250`, '1250', '1.250'],
    [`1.234,5 m`, '1234.5 m', '1.2345 m'],
    [`1,234.5 m`, '1.2345 m', '1234.5 m'],
    [`112/16"`, `1 12/16"`, `11 2/16"`],
    [`12" 4'`, `12' 4"`, `12", 4'`],
    [`12 1/2'`, `12 1/2"`, `12' 6"`],
    [`12,4 m`, '12.4 m', '12, 4 m'],
    [`2,14"`, `2.14"`, `2, 14"`],
  ])('%s: %s or %s', (text, one, other) => {
    const said = refusal(text).text
    expect(said).toContain(one)
    expect(said).toContain(other)
  })

  test('the readings offered go with the units of the file', () => {
    expect(refusal('376', { bare: null, style: 'cm' }).text).toContain('376 cm, or 376 mm')
    expect(refusal('3760', { bare: null, style: 'mm' }).text).toContain('3760 mm, or 3760 cm')
    expect(refusal('3.76', { bare: null, style: 'm' }).text).toContain('3.76 m, or 3.76 cm')
  })
})

describe('what no tape shows is refused', () => {
  test.each([
    [`5' 14"`, 'inches-past-twelve', null],
    [`5' 12"`, 'inches-past-twelve', null],
    [`5' 12.5"`, 'inches-past-twelve', null],
    [`10' 8'`, 'foot-mark-twice', `10' 8"`],
    [`12' 41/2"`, 'fraction-too-large', `12' 4 1/2"`],
    [`3 5/4"`, 'fraction-too-large', null],
    [`4/4"`, 'fraction-too-large', null],
    [`12' 4 1/3"`, 'fraction-not-on-tape', null],
    [`⅓"`, 'fraction-not-on-tape', null],
    [`1/0"`, 'fraction-not-on-tape', null],
    [`7/16/2"`, 'fraction-not-on-tape', null],
    [`7/"`, 'fraction-not-on-tape', null],
    [`1/128"`, 'fraction-not-on-tape', null],
    [`-4"`, 'length-negative', `4"`],
    [`−4"`, 'length-negative', `4"`],
    [`.5"`, 'point-astray', `0.5"`],
    [`5."`, 'point-astray', `5"`],
    [`1.2.3"`, 'point-astray', null],
    [`1２' 4"`, 'digits-not-plain', `12' 4"`],
    [`١٢' ٤"`, 'digits-not-plain', `12' 4"`],
    [`𝟙𝟚"`, 'digits-not-plain', `12"`],
    [`12.5' 4"`, 'length-mixed', null],
    [`4.5 1/2"`, 'length-mixed', null],
    [`4 1/2 m`, 'length-mixed', null],
    [`1.0000001 mm`, 'length-too-fine', null],
    [`101 000 m`, 'length-mixed', null],
    [`100001 m`, 'length-too-long', null],
    [`${'1'.repeat(41)}"`, 'number-too-long', null],
    [`${'1 '.repeat(200)}"`, 'number-too-long', null],
    [`"`, 'length-unreadable', null],
    [``, 'length-unreadable', null],
    [`twelve`, 'length-unreadable', null],
    [`1e309 m`, 'length-unreadable', null],
    [`0x10"`, 'length-unreadable', null],
    [`1_000 mm`, 'length-unreadable', null],
  ])('%s: %s', (text, code, fix) => {
    const said = refusal(text)
    expect([said.code, said.fix]).toEqual([code, fix])
  })

  test('forty digits are read, and are too long', () => {
    expect(refusal(`${'1'.repeat(40)}"`).code).toBe('length-too-long')
    expect(nm(`${'0'.repeat(39)}1"`)).toBe(NM_PER_INCH)
    expect(nm('100000 m')).toBe(100_000_000_000_000)
  })

  test('a fix is always itself a good reading', () => {
    for (const text of [`5' 6`, `10' 8'`, `12' 41/2"`, `-4"`, `.5"`, `１２' 4"`, `12,4 m`]) {
      expect(nm(refusal(text).fix!), text).not.toBeNull()
    }
  })

  test('no text throws', () => {
    const sign = fc.constantFrom(...`0123456789 '"/.,-½⅓−１٣mcinft${'\u2044'}x`)
    fc.assert(
      fc.property(fc.array(sign, { maxLength: 14 }), (signs) => {
        const { nm, refusal } = readLength(signs.join(''), FEET)
        expect((nm === null) !== (refusal === null)).toBe(true)
        if (nm !== null)
          expect(Number.isSafeInteger(nm) && nm >= 0 && !Object.is(nm, -0)).toBe(true)
      }),
      { numRuns: 20_000, seed: 20270412 },
    )
  })
})

describe('printing', () => {
  test.each([
    // To the nearest 1/16 in and midway to the even one (NIST Handbook 44, 10.3); values computed.
    [10 * NM_PER_INCH + 6 * NM_PER_64TH, 16, `10 3/32"`],
    [3658 * NM_PER_MM, 16, `12' 0"`],
    [1220 * NM_PER_MM, 16, `4' 0 1/16"`],
    [3000 * NM_PER_MM, 16, `9' 10 1/8"`],
    [1217 * NM_PER_MM, 16, `3' 11 15/16"`],
    [3_771_900_000, 16, `12' 4 1/2"`],
    [0, 16, `0"`],
    [NM_PER_INCH / 2, 16, `1/2"`],
    [NM_PER_FOOT - 1, 16, `1' 0"`],
    [-NM_PER_INCH, 16, `-1"`],
    [NM_PER_FOOT + (15 * NM_PER_INCH) / 16, 16, `1' 0 15/16"`],
    [-1, 16, `0"`],
  ] as const)('%i nm to 1/%i in', (value, denominator, text) => {
    expect(printLength(value, 'feet-inches', denominator)).toBe(text)
  })

  test('between two marks, midway goes to the even one', () => {
    const half = NM_PER_INCH / 32
    const off = (n: number): number => 10 * NM_PER_INCH + n * half
    // These lie on 1/32 in, which prints exactly; one nanometre to each side shows the rounding.
    expect([3, 5, 7].map((n) => printLength(off(n), 'inches'))).toEqual([
      `10 3/32"`,
      `10 5/32"`,
      `10 7/32"`,
    ])
    expect(printLength(off(3) - 1, 'inches')).toBe(`10 1/16"`)
    expect(printLength(off(3) + 1, 'inches')).toBe(`10 1/8"`)
  })

  test.each([
    [3_759_700_000, 'mm', '3759.7 mm'],
    [3_759_750_000, 'mm', '3760 mm'],
    [3_759_700_000, 'cm', '375.97 cm'],
    [3_759_700_000, 'm', '3.7597 m'],
    [0, 'm', '0 m'],
    [-3_000_000, 'mm', '-3 mm'],
  ] as const)('%i nm in %s', (value, style, text) => {
    expect(printLength(value, style)).toBe(text)
  })

  test('exact to the last nanometre', () => {
    expect(printExact(1, 'mm')).toBe('0.000001 mm')
    expect(printExact(-396_875, 'mm')).toBe('-0.396875 mm')
    expect(printExact(25_400_000, 'm')).toBe('0.0254 m')
  })

  test('what is printed reads back as the same length', () => {
    const grid = fc.integer({ min: 0, max: 64 * 12 * 5280 }).map((n) => n * NM_PER_64TH)
    fc.assert(
      fc.property(grid, (value) => {
        expect(nm(printLength(value, 'feet-inches'))).toBe(value)
        expect(nm(printLength(value, 'inches'))).toBe(value)
        expect(nm(printExact(value, 'cm'))).toBe(value)
      }),
      { numRuns: 2000, seed: 20270412 },
    )
  })
})

describe('canonical marks', () => {
  test.each([
    [`12’4-1/2”`, `12' 4 1/2"`],
    [`12'-4½"`, `12' 4½"`],
    [`12' ½"`, `12' ½"`],
    [`4 ½ "`, `4½"`],
    [`12FT 3  1\u20442 In`, `12 ft 3 1/2 in`],
    [`12''`, `12"`],
    [`3.76m`, `3.76 m`],
    [`148 1/2"`, `148 1/2"`],
    [`6/8"`, `6/8"`],
    [`12.375 '`, `12.375'`],
    [`12' 4`, `12' 4`],
  ])('%s becomes %s', (text, written) => {
    expect(canonicalLength(text, FEET)).toBe(written)
  })

  test('a bare number of inches gets its mark, of millimetres not', () => {
    expect(canonicalLength(`12' 4`, bare('inches'))).toBe(`12' 4"`)
    expect(canonicalLength('148 1/2', bare('inches'))).toBe(`148 1/2"`)
    expect(canonicalLength('3760', bare('mm'))).toBe('3760')
  })

  test.each([`12'`, `12' 4"`, '12 ft', '4 in', '3.76 m'])('%s has its mark already', (text) => {
    expect(canonicalLength(text, bare('inches'))).toBe(text)
  })

  test('a reading that is refused comes back as it was', () => {
    for (const text of ['', `12’-`, `12’ 14”`, '12’4 m', '1,5 m']) {
      expect(canonicalLength(text, bare('inches'))).toBe(text)
    }
  })
})
