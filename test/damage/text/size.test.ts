import { describe, expect, test } from 'vitest'
import { format } from '../../../server/src/language/format.ts'
import { LARGEST_FILE, parse } from '../../../server/src/language/parse.ts'
import { print } from '../../../server/src/language/print.ts'
import { effort } from '../../effort.ts'
import { compiled, HEAD, JOB, jobWith, pressing, said } from '../job.ts'

type Row = readonly [what: string, text: () => string, says: string]

const MB = 1_000_000
/** The full share tries the million. */
const LINES = effort(30_000, MB)

/** What the terminal would show first; a file of some megabytes is made when its turn comes. */
const LARGE: readonly Row[] = [
  [
    '10 MB in one line',
    () => `${HEAD}room a\n  note ${'x'.repeat(10 * MB)}`,
    'error file-too-large: This file has 10000132 characters, more than the 5000000 that are read. A job of a thousand rooms needs a tenth of that.',
  ],
  ['as large as a file may be, in one note', () => `${JOB}# `.padEnd(LARGEST_FILE, 'x'), ''],
  [
    'one character more',
    () => `${JOB}# `.padEnd(LARGEST_FILE + 1, 'x'),
    'error file-too-large: This file has 5000001 characters, more than the 5000000 that are read. A job of a thousand rooms needs a tenth of that.',
  ],
  ['a million empty lines', () => JOB + '\n'.repeat(LINES), ''],
  ['a million remarks', () => JOB + '#\n'.repeat(LINES), ''],
  [
    'a million lines that nobody understands',
    () => 'x\n'.repeat(LINES),
    'error word-unknown: No line in column one starts with "x". Blocks open with job, room, product, floor or prices. Until then the lines below it are left out.',
  ],
]

describe('10 MB in one line, a million lines', () => {
  test.each(LARGE)('%s', (_, text, says) => {
    expect(said(text())).toBe(says)
  })

  test('no line end and no character is lost', () => {
    for (const text of [
      `a${'\r'.repeat(LINES)}`,
      `room a\n  note ${'😀'.repeat(LINES)}`,
      ' '.repeat(LINES),
    ]) {
      const tree = parse('job.floor', text)
      expect(print(tree) === text).toBe(true)
      const solid = (all: string) => all.replaceAll(' ', '')
      expect(solid(format(tree)) === solid(text)).toBe(true)
    }
  })
})

/**
 * The language has no brackets: nothing in a text nests. What plays the part are signs that other
 * languages nest, phrases and lines without number in one place, and files that include files.
 */
const DEEP: readonly (readonly [what: string, text: (depth: number) => string])[] = [
  ['round brackets', (n) => jobWith("north       12'", `north       ${'('.repeat(n)}`)],
  [
    'brackets closed again',
    (n) => jobWith("north       12'", `north       ${'('.repeat(n)}${')'.repeat(n)}`),
  ],
  ['quotes', (n) => jobWith("north       12'", `north       ${'"'.repeat(n)}`)],
  ['phrases', (n) => jobWith("north       12'", `north       12'${', tub'.repeat(n)}`)],
  ['commas', (n) => jobWith("north       12'", `north       12'${','.repeat(n)}`)],
  ['words of a name', (n) => jobWith('room bedroom', `room ${'bed '.repeat(n)}`)],
  [
    'readings taken again',
    (n) => jobWith("north       12'", `north       12'${"\n    again 12'".repeat(n)}`),
  ],
  [
    'remarks on a remark',
    (n) => jobWith("north       12'", `north       12'${'\n      note x'.repeat(n)}`),
  ],
  ['blanks before a line', (n) => jobWith('  east ', `${' '.repeat(n)}  east `)],
  ['fractions of fractions', (n) => jobWith("north       12'", `north       1${'/2'.repeat(n)}"`)],
]

describe('depth', () => {
  const depths = [99, 100, 101, effort(2_000, 100_000)]

  test.each(DEEP)(
    '%s: 99, 100, 101 and 100 000: at most 3 messages, and none of it is lost',
    (_, text) => {
      for (const depth of depths) {
        const typed = text(depth)
        expect(print(parse('job.floor', typed)) === typed).toBe(true)
        expect(pressing(compiled(typed)).length).toBeLessThanOrEqual(3)
      }
    },
  )

  const CHAIN = [
    [99, ''],
    [100, ''],
    [
      101,
      'error include-too-deep: This include is number 101 of a chain; at most 100 files may include one another in a row.',
    ],
    [
      100_000,
      'error include-too-deep: This include is number 101 of a chain; at most 100 files may include one another in a row.',
    ],
  ] as const

  test.each(CHAIN)('%i files that include one another', (depth, says) => {
    const files = Array.from({ length: depth }, (_, i) => [
      `${i + 1}.floor`,
      i + 1 < depth ? `include ${i + 2}.floor\n` : '',
    ])
    expect(
      said(`${HEAD}include 1.floor\n${JOB.slice(HEAD.length)}`, Object.fromEntries(files)),
    ).toBe(says)
  })
})

test('random bytes: every text is read, and 1000 messages are the most', () => {
  // A fixed sequence: multiply, take the middle.
  let state = 20270412
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state >>> 16
  }
  for (let i = 0; i < effort(40, 400); i++) {
    const bytes = Uint8Array.from({ length: 2000 }, () => next() & 0xff)
    const text = new TextDecoder().decode(bytes)
    expect(print(parse('job.floor', text))).toBe(text)
    expect(pressing(compiled(text)).length).toBeLessThanOrEqual(1001)
  }
})
