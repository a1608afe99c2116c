import { describe, expect, test } from 'vitest'
import {
  FARTHEST,
  flag,
  list,
  oneOf,
  orNull,
  pair,
  type Reader,
  record,
  text,
  whole,
} from '../../server/src/verify/reader.ts'
import { listed, mm, place } from '../../server/src/verify/say.ts'

/** What a reader makes of a value at a place called `x`, and what it says is wrong. */
function read<T>(reader: Reader<T>, value: unknown, path = 'x') {
  const wrong: string[] = []
  return { value: reader(value, path, wrong), wrong }
}

const wrongIn = <T>(reader: Reader<T>, value: unknown) => {
  const { value: got, wrong } = read(reader, value)
  expect(got).toBeUndefined()
  return wrong
}

describe('what is as it should be is given back as it is', () => {
  test.each<[string, Reader<unknown>, unknown]>([
    ['a whole number', whole(), -7],
    ['the farthest', whole(), FARTHEST],
    ['the farthest the other way', whole(), -FARTHEST],
    ['the least', whole(3, 5), 3],
    ['the most', whole(3, 5), 5],
    ['a text', text, ''],
    ['true', flag, true],
    ['false', flag, false],
    ['the second word of two', oneOf('a', 'b'), 'b'],
    ['a number of a few', oneOf(1, 2), 2],
    ['nothing, where there may be nothing', orNull(text), null],
    ['something, where there may be nothing', orNull(text), 'a'],
    ['an empty list', list(whole()), []],
    ['a list just long enough', list(whole(), 2), [1, 2]],
    ['a pair', pair(whole()), [1, 2]],
    ['an object', record({ a: whole(), b: text }), { a: 1, b: 'c' }],
  ])('%s', (_, reader, value) => {
    expect(read(reader, value)).toEqual({ value, wrong: [] })
  })

  test('further keys are left unread', () => {
    expect(read(record({ a: whole() }), { a: 1, b: 2 }).value).toEqual({ a: 1 })
  })
})

describe('what is not is said with its place', () => {
  test.each<[Reader<unknown>, unknown, string]>([
    [whole(), 0.5, 'x is 0.5; a whole number is wanted.'],
    [whole(), '7', 'x is "7"; a whole number is wanted.'],
    [whole(), 2 ** 53, 'x is 9007199254740992; a whole number is wanted.'],
    [whole(3, 5), 2, 'x is 2; a whole number from 3 to 5 is wanted.'],
    [whole(3, 5), 6, 'x is 6; a whole number from 3 to 5 is wanted.'],
    [
      whole(),
      FARTHEST + 1,
      'x is 1000000000000001; a whole number from -1000000000000000 to 1000000000000000 is wanted.',
    ],
    [text, 3, 'x is 3; a text is wanted.'],
    [text, undefined, 'x is missing; a text is wanted.'],
    [flag, null, 'x is null; true or false is wanted.'],
    [flag, 'true', 'x is "true"; true or false is wanted.'],
    [oneOf('a', 'b'), 'c', 'x is "c"; "a" or "b" is wanted.'],
    [oneOf(1), true, 'x is true; 1 is wanted.'],
    [orNull(text), false, 'x is false; a text is wanted.'],
    [list(whole()), {}, 'x is an object; a list is wanted.'],
    [list(whole(), 3), [1, 2], 'x has 2 entries; at least 3 are wanted.'],
    [list(whole()), [1, 'a'], 'x[1] is "a"; a whole number is wanted.'],
    [pair(whole()), [1, 2, 3], 'x is a list of 3; a list of two is wanted.'],
    [pair(whole()), 'ab', 'x is "ab"; a list of two is wanted.'],
    [pair(whole()), ['a', 2], 'x[0] is "a"; a whole number is wanted.'],
    [pair(whole()), [1, 'b'], 'x[1] is "b"; a whole number is wanted.'],
    [record({ a: whole() }), [], 'x is a list of 0; an object is wanted.'],
    [record({ a: whole() }), null, 'x is null; an object is wanted.'],
    [record({ a: whole() }), 'a', 'x is "a"; an object is wanted.'],
    [record({ a: whole() }), {}, 'x.a is missing; a whole number is wanted.'],
    [record({ a: list(text) }), { a: [1] }, 'x.a[0] is 1; a text is wanted.'],
  ])('%o given %o', (reader, value, said) => {
    expect(wrongIn(reader, value)).toEqual([said])
  })

  test('the file itself has no name, and its keys stand alone', () => {
    expect(read(text, 3, '').wrong).toEqual(['The file is 3; a text is wanted.'])
    expect(read(record({ a: text }), {}, '').wrong).toEqual(['a is missing; a text is wanted.'])
  })

  test('a long text is cut, and strange signs are not shown', () => {
    expect(wrongIn(flag, 'a'.repeat(30))[0]).toContain(`"${'a'.repeat(30)}"`)
    expect(wrongIn(flag, 'a'.repeat(31))[0]).toContain(`"${'a'.repeat(30)}…"`)
    expect(wrongIn(flag, 'a\u001b[1mé')[0]).toContain('"a?[1m?"')
  })

  test('each wrong value is said, up to a hundred', () => {
    expect(wrongIn(list(whole()), ['a', 1, 'b'])).toHaveLength(2)
    expect(wrongIn(list(whole()), Array(5000).fill('a'))).toHaveLength(100)
    expect(wrongIn(record({ a: text, b: text }), {})).toHaveLength(2)
  })

  test('what was wrong before does not spoil what is right now', () => {
    const wrong = ['before']
    expect(list(whole())([1], 'x', wrong)).toEqual([1])
    expect(record({ a: whole() })({ a: 1 }, 'x', wrong)).toEqual({ a: 1 })
    expect(wrong).toEqual(['before'])
  })
})

describe('lengths and places in words', () => {
  test.each([
    [0, '0 mm'],
    [12_700_000, '12.7 mm'],
    [-12_700_000, '-12.7 mm'],
    [1, '0.000001 mm'],
    [-1, '-0.000001 mm'],
    [3_000_000, '3 mm'],
    [30_050_000, '30.05 mm'],
  ])('%d nm is %s', (nm, said) => {
    expect(mm(nm)).toBe(said)
  })

  test('a place, and one, two or three things', () => {
    expect(place([12_700_000, 0])).toBe('12.7 mm along, 0 mm across')
    expect(listed('piece', [3])).toBe('piece 3')
    expect(listed('piece', [3, 4])).toBe('pieces 3 and 4')
    expect(listed('piece', [3, 4, 5])).toBe('pieces 3, 4 and 5')
  })
})
