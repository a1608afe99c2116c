import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { parsePhrases } from '../../server/src/language/grammar.ts'
import { Blank, Comment, OpenQuote, StuckHash, tokenize } from '../../server/src/language/tokens.ts'

/** Each phrase as what it was cut from. */
function phrases(text: string): readonly (readonly string[])[] {
  const left = [Blank, Comment, OpenQuote, StuckHash]
  const tokens = tokenize(text, 'phrases').filter((token) => !left.includes(token.tokenType))
  return parsePhrases(tokens).map((items) => items.map((item) => text.slice(item.start, item.end)))
}

describe('phrases', () => {
  test.each([
    [`6 3/4" x 47 7/8", 3/16" thick`, [[`6 3/4" x 47 7/8"`], [`3/16"`, 'thick']]],
    [`1/16" + 1/32" per 10'`, [[`1/16"`, '+', `1/32"`, 'per', `10'`]]],
    [`about 14' 7" within 1/4"?`, [[`about 14' 7" within 1/4"?`]]],
    [`called kids' room x2, ?`, [['called', "kids'", 'room', 'x2'], ['?']]],
    // A figure and what is not one: "by" only before a figure, a name's number, a reading's parts.
    ['7x, x 7', [['7x'], ['x', '7']]],
    ['7 x', [['7', 'x']]],
    ['about town', [['about', 'town']]],
    ['within 5%', [['within', '5%']]],
    [`12' 4 north`, [[`12' 4`, 'north']]],
    [`30" 14" from left`, [[`30"`, `14"`, 'from', 'left']]],
    [`2nd bath 3`, [['2nd', 'bath', '3']]],
    [`, a,`, [[], ['a'], []]],
    ['', [[]]],
  ])('%s', (text, expected) => {
    expect(phrases(text)).toEqual(expected)
  })

  test('every token is in a phrase, whatever the row', () => {
    const bit = fc.constantFrom(
      ...['about', 'within', 'x', '?', '+', ',', 'to', `12' 4 1/2"`, '9', '10%', '30°'],
      ...['2027-04-12', '12.4', '-3', '½', `'`, '-', '/', '.', 'é', '2nd', '7x48', 'X', '×'],
    )
    fc.assert(
      fc.property(fc.array(bit, { maxLength: 12 }), (bits) => {
        const text = bits.join(' ')
        const kept = phrases(text).map((items) => items.join(' '))
        expect(kept.join(',').replace(/ /g, '')).toBe(text.replace(/ /g, ''))
      }),
      { numRuns: 20_000, seed: 20270412 },
    )
  })
})
