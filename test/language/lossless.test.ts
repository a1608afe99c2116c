import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { format, formatEdits } from '../../server/src/language/format.ts'
import { print } from '../../server/src/language/print.ts'
import { outline, read, samples } from './said.ts'

const SEED = 20270412

/** Bits of jobs, blanks, marks and trouble, put together at random. */
const bit = fc.constantFrom(
  'room', 'bedroom 1', 'north', 'door', 'note', 'again', 'out of square', 'floorscribe 1', 'units mm',
  'units feet-inches, bare inches', 'lay', 'called', 'to', 'of', 'about', 'within', 'x', '?', '+', ',',
  ', ', `12' 4 1/2"`, `4½"`, '12.4', '-3', '3.76 m', '30°', '10%', '2027-04-12', '"a b"', '"', '“', `'`,
  '#', ' # c', '#2', '<<<<<<< ours', '=======', '>>>>>>> theirs', '\n', '\r\n', '\r', '\n  ', '\n    ',
  '\t', ' ', '\u00a0', '\u202f', '\u200b', '\u202e', '\u0000', '\ufeff', '\u2028', '\ud800', '１２', 'é',
) // biome-ignore format: a table of words
const scraps = fc.array(bit, { maxLength: 40 }).map((bits) => bits.join(''))
const anything = fc.oneof(scraps, fc.string({ unit: 'binary', maxLength: 60 }), fc.string())

describe('no text is lost', () => {
  test('printing a tree gives its text back, whatever it was', () => {
    fc.assert(
      fc.property(anything, (text) => {
        expect(print(read(text))).toBe(text)
      }),
      { numRuns: 5000, seed: SEED },
    )
  })

  test('every message points into the text, and every fix replaces parts that do not overlap', () => {
    fc.assert(
      fc.property(anything, (text) => {
        for (const message of read(text).messages) {
          const edits = message.fixes.flatMap((fix) => fix.edits)
          for (const { start, end } of [message.span, ...edits.map((edit) => edit.span)]) {
            expect(0 <= start && start <= end && end <= text.length).toBe(true)
          }
          expect(message.text).not.toMatch(/undefined|null|\[object|NaN|[\r\n]/)
        }
      }),
      { numRuns: 3000, seed: SEED },
    )
  })

  test.each(samples)('$name with CR, LF and CRLF mixed reads the same', ({ text }) => {
    const ends = ['\n', '\r\n', '\r']
    let next = 0
    const mixed = text.replace(/\n/g, () => ends[next++ % 3]!)
    expect(outline(mixed)).toBe(outline(text))
    expect(print(read(mixed))).toBe(mixed)
  })

  test.each(samples)('$name with tabs, no-break and narrow blanks reads the same', ({ text }) => {
    const blanks = ['\t', '\u00a0', '\u202f', '\u2009']
    let next = 0
    const other = text.replace(/ (?=\S*\d)/g, () => blanks[next++ % 4]!)
    const tidy = (tree: string): string => tree.replace(/[\t\u00a0\u202f\u2009]/g, ' ')
    expect(tidy(outline(other))).toBe(outline(text))
  })

  test.each(samples)('$name behind a byte order mark reads the same', ({ text }) => {
    expect(outline(`\ufeff${text}`)).toBe(outline(text))
    expect(print(read(`\ufeff${text}`))).toBe(`\ufeff${text}`)
  })
})

describe('the formatter', () => {
  test('is idempotent, and changes nothing that a tree holds', () => {
    const meaning = (text: string): string => outline(text).replace(/[“”"]/g, '"')
    const digits = (text: string): string => text.replace(/[^0-9]/g, '')
    fc.assert(
      fc.property(scraps, (text) => {
        const once = format(read(text))
        expect(format(read(once))).toBe(once)
        expect(digits(once)).toBe(digits(text))
        const words = (all: string): number => meaning(all).split('\n').length
        expect(words(once)).toBe(words(text))
      }),
      { numRuns: 5000, seed: SEED },
    )
  })

  test('writes the canonical form', () => {
    const typed = [
      'UNITS feet-inches,bare inches\r',
      'room  kids’  Room   # x  ',
      ' North 12’4-1/2”,called Bay',
      "\tdoor 30, 1' 2 from Left , to “Hall of x”",
      ' door 30,in south',
      '  note  a   b ',
      '      note  a   b ',
      ' south 12 FT 3 ½ in ?',
      ' OUT  of   square# x',
      ' out of square',
      '  slant 4 , 30 ° right',
      'product p',
      " plank 7×48 1⁄4,3/16'' thick",
      '   ',
      '        # a remark',
      '#a remark',
    ].join('\n')
    expect(format(read(typed)).split('\n')).toEqual([
      'units feet-inches, bare inches\r',
      'room kids’ Room  # x',
      `  north       12' 4 1/2", called Bay`,
      `    door      30", 1' 2" from left, to "Hall of x"`,
      `  door        30", in south`,
      '  note        a   b',
      '    note      a   b',
      '  south       12 ft 3½ in?',
      '  out of square  # x',
      '  out of square',
      `  slant       4", 30° right`,
      'product p',
      `  plank       7" x 48 1/4", 3/16" thick`,
      '',
      '    # a remark',
      '#a remark',
    ])
  })

  test('leaves a line that cannot be read as it is', () => {
    const typed = "room a\n north  12.4 ,called   Bay\n south  4' \nrom b\n   north   3'\n"
    expect(format(read(typed))).toBe(
      "room a\n north  12.4 ,called   Bay\n  south       4'\nrom b\n   north   3'\n",
    )
  })

  test('leaves a name its own way of standing close', () => {
    const typed = "room a\n  column      8\" round, 3' from n2026-12' 4-30orth\n"
    expect(format(read(typed))).toBe(typed)
  })

  test('edits only the lines that change', () => {
    const typed = "room a\n  north       4'\n  east 5'\n"
    const edits = formatEdits(read(typed))
    expect(edits.map(({ span, text }) => [typed.slice(span.start, span.end), text])).toEqual([
      ["  east 5'", "  east        5'"],
    ])
  })

  test('a line is written from itself alone', () => {
    const lines = samples
      .flatMap(({ text }) => text.split('\n'))
      .filter((line) => /^ +[^ #]/.test(line))
    for (const line of new Set(lines)) {
      for (const home of ['job j', 'room a', 'product p', 'floor f', 'prices s']) {
        const alone = `${home}\n  north 1'\n${line}\n`
        const [, , written] = format(read(alone)).split('\n')
        expect([line, line.replace(/ +# /, '  # ')]).toContain(written)
      }
    }
  })
})
