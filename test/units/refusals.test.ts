import { readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { readLength, type TapeOptions } from '../../server/src/units/tape.ts'
import { refuseNumber } from '../../server/src/units/tape-refusals.ts'
import { expectGolden } from '../golden.ts'

const GOLDEN = new URL('refusals.golden.txt', import.meta.url).pathname
const FEET: TapeOptions = { bare: null, style: 'feet-inches' }

function refused(text: string, options = FEET): readonly string[] {
  const { code, text: said, fix } = readLength(text, options).refusal!
  return [`  ${code}: ${said}`, ...(fix === null ? [] : [`  write ${fix}`])]
}

test('each reading in the list is refused in these words, with the fix where one is surely meant', () => {
  const lines = readFileSync(GOLDEN, 'utf8').split('\n')
  const asked = lines.filter((line) => !line.startsWith('  '))
  const said = asked.flatMap((line) => (/^(?:#|$)/.test(line) ? [line] : [line, ...refused(line)]))
  expectGolden(GOLDEN, said.join('\n'))
})

describe('the units of the file', () => {
  test.each([
    ['inches', '148', `148 reads two ways: 148", or 148'. A bare number needs "bare inches"`],
    ['inches', '12.4', `12.4 reads two ways: 12.4", or 12.4 cm. A bare number needs "bare inches"`],
    ['mm', '148', '148 reads two ways: 148 mm, or 148 cm. A bare number needs "bare mm"'],
    ['cm', '148', '148 reads two ways: 148 cm, or 148 mm. A bare number needs "bare cm"'],
    ['m', '12.4', '12.4 reads two ways: 12.4 m, or 12.4 cm. A bare number needs "bare m"'],
  ] as const)('without a unit in %s: %s', (style, text, said) => {
    const whole = `  length-two-ways: ${said} on the units line.`
    expect(refused(text, { bare: null, style })).toEqual([whole])
  })

  test('bare metric numbers are no feet and have no fraction', () => {
    for (const bare of ['mm', 'cm', 'm'] as const) {
      const read = (text: string) => readLength(text, { bare, style: 'cm' }).refusal?.code
      const codes = ['4 1/2', '½', `5' 6`].map(read)
      expect(codes).toEqual(['length-two-ways', 'length-two-ways', 'inch-mark-missing'])
    }
  })
})

test('a number that is no length is refused for its digits, points and sign', () => {
  expect(refuseNumber('-4')?.code).toBe('number-unreadable')
  expect(refuseNumber('12.5')).toBeNull()
  const codes = ['1'.repeat(41), '١٢', '1,5', '.5'].map((text) => refuseNumber(text)?.code)
  expect(codes).toEqual(['number-too-long', 'digits-not-plain', 'comma-in-number', 'point-astray'])
})
