import { describe, expect, test } from 'vitest'
import { lineOf, mended, read, sample } from './said.ts'

const HEADING = 'floorscribe 1\nunits feet-inches\nroom bedroom 1\n'
const UNDER_SOUTH = `${HEADING}  south       12' 4 1/8"\n`

interface Slip {
  readonly number: number
  readonly text: string
  readonly line: number
  readonly code: string
  /** What its text must hold. */
  readonly says: readonly string[]
  /** What stands in the text after its fix; null when no repair is sure. */
  readonly fixed: string | null
}

/** The typing errors that a reader of lines can tell, by their number in the study. */
const SLIPS: readonly Slip[] = [
  {
    number: 1,
    text: `${HEADING}  north 12' 4`,
    line: 4,
    code: 'inch-mark-missing',
    says: ['The 4 has no mark', `12' 4"`, '"bare inches" on the units line'],
    fixed: `  north 12' 4"`,
  },
  {
    number: 2,
    text: `${HEADING}  north 5' 14"`,
    line: 4,
    code: 'inches-past-twelve',
    says: ['stay below 12', `6' 2" is the same`, `5' 4" or 5' 1/4"`],
    fixed: null,
  },
  {
    number: 3,
    text: `${HEADING}  north 12.4`,
    line: 4,
    code: 'length-two-ways',
    says: ['reads two ways', `12' 4", or 12.4' (about 12' 4 13/16")`],
    fixed: null,
  },
  {
    number: 4,
    text: `${HEADING}  north 12,4 m`,
    line: 4,
    code: 'comma-in-number',
    says: ['A comma parts entries and never stands in a number', '12.4 m'],
    fixed: '  north 12.4 m',
  },
  {
    number: 5,
    text: 'floor a\n  expect 1,250 sq ft',
    line: 2,
    code: 'comma-in-number',
    says: ['1,250 is 1250 to some and 1.250 to others'],
    fixed: null,
  },
  {
    number: 6,
    text: `${HEADING}  north 12" 4'`,
    line: 4,
    code: 'feet-after-inches',
    says: ['Feet come before inches', `Marks exchanged? 12' 4"`],
    fixed: null,
  },
  {
    number: 7,
    text: `${HEADING}  north 10' 8'`,
    line: 4,
    code: 'foot-mark-twice',
    says: ['Two foot marks', `10' 8"?`],
    fixed: `  north 10' 8"`,
  },
  {
    number: 8,
    text: `${HEADING}  north 12' 41/2"`,
    line: 4,
    code: 'fraction-too-large',
    says: ['41/2 is no fraction of an inch', 'A blank lost?'],
    fixed: `  north 12' 4 1/2"`,
  },
  {
    number: 9,
    text: `${HEADING}  north 12' 4 1/3"`,
    line: 4,
    code: 'fraction-not-on-tape',
    says: ['no 1/3', `Nearest marks 5/16" and 11/32"`, `from a drawing write 12' 4.333"`],
    fixed: null,
  },
  {
    number: 10,
    text: `${HEADING}  north 1O' 8"`,
    line: 4,
    code: 'letter-in-number',
    says: [`The O in 1O' is a letter`, `10' 8"?`],
    fixed: `  north 10' 8"`,
  },
  {
    number: 11,
    text: `${HEADING}  soth 12' 4 1/8"`,
    line: 4,
    code: 'word-unknown',
    says: [
      'No line of a room starts with "soth". Is south meant?',
      'Until then bedroom 1 has no area; the other rooms keep theirs.',
    ],
    fixed: `  south 12' 4 1/8"`,
  },
  {
    number: 12,
    text: `${HEADING}east 10' 8 1/4"`,
    line: 4,
    code: 'indent-lost',
    says: ['east is a line of a room and belongs indented', 'It is read as part of bedroom 1'],
    fixed: `  east 10' 8 1/4"`,
  },
  {
    number: 13,
    text: `${HEADING}  room hall`,
    line: 4,
    code: 'indent-extra',
    says: ['room opens a block, so it belongs in column one, and is read as if it stood there.'],
    fixed: 'room hall',
  },
  {
    number: 13,
    text: 'floorscribe 1\n  units feet-inches',
    line: 2,
    code: 'indent-extra',
    says: ['units belongs in column one, and is read as if it stood there.'],
    fixed: 'units feet-inches',
  },
  {
    number: 14,
    text: `${UNDER_SOUTH}    door 30" 14" from left`,
    line: 5,
    code: 'comma-missing',
    says: ['A comma is missing between two entries', `30", 14" from left`],
    fixed: `    door 30", 14" from left`,
  },
  ...[
    [`30" 1' 2" from right`, `30", 1' 2" from right`],
    [`2' 1' 2" from right`, `2', 1' 2" from right`],
    [`2' 6" 1' 2" from right`, `2' 6", 1' 2" from right`],
    [`about 30 1/2" 1' 2 1/2" from right`, `about 30 1/2", 1' 2 1/2" from right`],
  ].map(([typed, meant]) => ({
    number: 14,
    text: `${UNDER_SOUTH}    door ${typed}`,
    line: 5,
    code: 'comma-missing',
    says: [`A comma is missing between two entries: ${meant}.`],
    fixed: `    door ${meant}`,
  })),
  {
    number: 15,
    text: `${UNDER_SOUTH}    door 30", to bedroom 2 1/2" from left`,
    line: 5,
    code: 'name-end-unclear',
    says: [
      'Where does the name end?',
      `"to bedroom 2, 1/2" from left" or "to bedroom, 2 1/2" from left"`,
      'A comma ends a name',
    ],
    fixed: null,
  },
  {
    number: 16,
    text: `${UNDER_SOUTH}    door 30", 1' 2" form left`,
    line: 5,
    code: 'word-mistyped',
    says: ['"form" is no word of a door line. Is from meant?', 'Also:'],
    fixed: `    door 30", 1' 2" from left`,
  },
  {
    number: 21,
    text: 'room bedroom #2',
    line: 1,
    code: 'comment-without-blank',
    says: ['A comment has a blank on each side of its #', 'may hold the plain number: 2'],
    fixed: 'room bedroom 2',
  },
  {
    number: 25,
    text: `${HEADING}  north 12' 4"\n<<<<<<< ours\n  east 12' 4"\n=======\n  east 12' 4 1/4"\n>>>>>>> theirs\n`,
    line: 5,
    code: 'merge-left-open',
    says: [
      'A git merge was left open, lines 5 to 9',
      `Keep east 12' 4" (ours) or east 12' 4 1/4" (theirs)`,
      'No totals until then',
    ],
    fixed: null,
  },
]

describe('typing errors', () => {
  test.each(SLIPS)('$number, $code', ({ text, line, code, says, fixed }) => {
    const [first, ...others] = read(text).messages
    expect(others).toEqual([])
    expect([first!.code, lineOf(text, first!.span.start)]).toEqual([code, line])
    for (const part of says) expect(first!.text).toContain(part)
    if (fixed === null) expect(first!.fixes).toEqual([])
    else expect(mended(text, first!).split('\n')[line - 1]).toBe(fixed)
  })

  test.each(SLIPS.filter(({ fixed }) => fixed !== null))(
    'the fix of $number leaves nothing to say',
    ({ text }) => {
      const fixed = mended(text, read(text).messages[0]!)
      expect(read(fixed).messages).toEqual([])
    },
  )
})

describe('single slips in the readings of the study', () => {
  /** Every reading of the five situations, with each character dropped, doubled or exchanged. */
  function* slips(): Generator<readonly [string, string]> {
    const names = ['bedroom', 'living-room', 'upper-hall', 'old-parlour', 'kitchen']
    const readings = names.flatMap((name) => sample(name).match(/[0-9]+' [0-9 /]+"|[0-9]+"/g) ?? [])
    for (const typed of readings) {
      for (let at = 0; at < typed.length; at += 1) {
        const [a, b] = [typed[at]!, typed[at + 1] ?? '']
        yield [typed, typed.slice(0, at) + typed.slice(at + 1)]
        yield [typed, typed.slice(0, at) + a + typed.slice(at)]
        if (b !== '') yield [typed, typed.slice(0, at) + b + a + typed.slice(at + 2)]
      }
    }
  }

  const nm = (typed: string): number | null => {
    const entry = read(`room a\n  north ${typed}\n`).blocks[0]!.under[0]
    const figure = entry?.phrases[0]?.measures[0]?.figure
    return entry?.broken === false && figure?.kind === 'length' ? figure.nm : null
  }

  test('two thirds are refused at once, as the study counted', () => {
    const told = new Map<string, boolean>()
    for (const [typed, slip] of slips()) if (slip !== typed) told.set(slip, nm(slip) === null)
    const refused = [...told.values()].filter((is) => is).length
    expect(refused / told.size).toBeGreaterThan(0.6)
  })
})
