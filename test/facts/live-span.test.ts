import { expect, test } from 'vitest'
import { LiveSpan } from '../../server/src/facts/live-span.ts'
import { same, sameThings } from '../../server/src/facts/same.ts'
import { cover } from '../../server/src/facts/span.ts'

const anchor = () => ({ file: 'a.floor', at: 100, line: 7 })

test('a span moves with its stretch, and so does what covers two', () => {
  const here = anchor()
  const both = cover(new LiveSpan(here, 2, 5), new LiveSpan(here, 9, 12))
  expect([both.start, both.end]).toEqual([102, 112])
  here.at = 40
  expect([both.start, both.end, both.file]).toEqual([42, 52, 'a.floor'])
  expect(JSON.parse(JSON.stringify(both))).toEqual({ file: 'a.floor', start: 42, end: 52 })
})

test('plain spans are covered as they are', () => {
  const span = (start: number, end: number) => ({ file: 'a.floor', start, end })
  expect(cover(span(5, 9), span(1, 6))).toEqual(span(1, 9))
})

test('spans of two stretches are covered where they lie now', () => {
  const span = cover(new LiveSpan(anchor(), 0, 4), new LiveSpan({ ...anchor(), at: 50 }, 0, 4))
  expect(span).toEqual({ file: 'a.floor', start: 50, end: 104 })
})

test('values are the same by what they are made of, and a span that moves by itself', () => {
  const span = new LiveSpan(anchor(), 1, 2)
  expect(same({ a: [1, 2n, 'x'], span }, { a: [1, 2n, 'x'], span })).toBe(true)
  expect(same({ span }, { span: new LiveSpan(anchor(), 1, 2) })).toBe(false)
  expect(same({ a: 1 }, { a: 1, b: undefined })).toBe(false)
  expect(same({ a: undefined }, { b: undefined })).toBe(false)
  expect(same([1, 2], [1, 3])).toBe(false)
  expect(same(null, {})).toBe(false)
  expect(sameThings([span, 1], [span, 1])).toBe(true)
  expect(sameThings([span], [span, 1])).toBe(false)
  expect(sameThings([{}], [{}])).toBe(false)
})
