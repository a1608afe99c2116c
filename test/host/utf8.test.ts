import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { decodeUtf8 } from '../../server/src/host/utf8.ts'

const bytes = (...parts: readonly (string | number)[]) =>
  Buffer.concat(
    parts.map((part) => (typeof part === 'string' ? Buffer.from(part) : Buffer.of(part))),
  )

describe('strict UTF-8', () => {
  test('plain text, with and without a byte-order mark', () => {
    expect(decodeUtf8(bytes('room ½'))).toEqual({ kind: 'text', text: 'room ½', mark: false })
    expect(decodeUtf8(bytes('\uFEFFroom'))).toEqual({ kind: 'text', text: 'room', mark: true })
    expect(decodeUtf8(bytes())).toEqual({ kind: 'text', text: '', mark: false })
  })

  test('a second mark is text: only the first one is the file’s own', () => {
    expect(decodeUtf8(bytes('\uFEFF\uFEFFx'))).toMatchObject({ text: '\uFEFFx', mark: true })
  })

  test.each([
    ['a lone high byte', bytes('one\r\ntwo ', 0xe9, ' three'), 2, 5, 0xe9],
    ['the second half of a pair alone', bytes('a\rb\nc', 0x80), 3, 2, 0x80],
    ['an overlong slash', bytes('é', 0xc0, 0xaf), 1, 2, 0xc0],
    ['a surrogate', bytes(0xed, 0xa0, 0x80), 1, 1, 0xed],
    ['past the last character', bytes('😀', 0xf4, 0x90, 0x80, 0x80), 1, 3, 0xf4],
    ['cut off at the end', bytes('ab', 0xe2, 0x82), 1, 3, 0xe2],
    ['after a mark', bytes('\uFEFFab', 0xff), 1, 3, 0xff],
  ])('%s is refused where it stands', (_, input, line, column, byte) => {
    expect(decodeUtf8(input)).toEqual({ kind: 'not utf-8', line, column, byte })
  })

  test.each([
    ['little', bytes(0xff, 0xfe, 'r', 0)],
    ['big', bytes(0xfe, 0xff, 0, 'r')],
  ])('UTF-16, %s end first, is told by name', (_, input) => {
    expect(decodeUtf8(input)).toEqual({ kind: 'utf-16' })
  })

  test('what stands before the place is the file to the byte, and no character stands there', () => {
    const broken = fc.tuple(fc.string({ unit: 'binary' }), fc.uint8Array({ maxLength: 6 }))
    const check = fc.property(broken, ([text, tail]) => {
      const input = Buffer.concat([Buffer.from(`x${text.toWellFormed()}`), tail])
      const decoded = decodeUtf8(input)
      if (decoded.kind !== 'not utf-8') return
      const lossy = input.toString()
      const at = offsetOf(lossy, decoded.line, decoded.column)
      expect(input.subarray(0, Buffer.byteLength(lossy.slice(0, at)))).toEqual(
        Buffer.from(lossy.slice(0, at)),
      )
      expect(lossy[at]).toBe('\uFFFD')
    })
    fc.assert(check, { seed: 20261, numRuns: 1000 })
  })
})

function offsetOf(text: string, line: number, column: number): number {
  const starts = [0, ...[...text.matchAll(/\r\n|\r|\n/g)].map((end) => end.index + end[0].length)]
  return starts[line - 1]! + column - 1
}
