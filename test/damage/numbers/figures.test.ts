import { describe, expect, test } from 'vitest'
import { compiled, JOB, jobWith, quantity, said } from '../job.ts'

type Row = readonly [what: string, typed: string, says: string]

/** The north wall of a room that is 12 ft long; nothing is said where it closes. */
const FIGURES: readonly Row[] = [
  [
    'nothing',
    '0"',
    'error size-of-nothing: 0" is no size for this wall. Write what the tape shows, or ? while it is still to be taken.',
  ],
  [
    'minus nothing',
    '-0"',
    'error length-negative: A length is never less than nothing. Write 0", and say which side it lies on in words, such as from left or south.',
  ],
  [
    'less than nothing',
    `-12'`,
    `error length-negative: A length is never less than nothing. Write 12', and say which side it lies on in words, such as from left or south.`,
  ],
  [
    'less than nothing, by the minus sign',
    `−12'`,
    `error length-negative: A length is never less than nothing. Write 12', and say which side it lies on in words, such as from left or south.`,
  ],
  ['40 digits that are 12 feet', `0000000000000000000000000000000000000012'`, ''],
  [
    '40 digits',
    '1111111111111111111111111111111111111111"',
    'error length-too-long: 1111111111111111111111111111111111111111" is longer than 100 km, which no room is. Are digits typed twice, or is the unit wrong?',
  ],
  [
    '41 digits',
    '11111111111111111111111111111111111111111"',
    'error number-too-long: 11111111111111111111111111111111111111111" is too long for a figure, which has at most 40 digits.',
  ],
  [
    'an exponent past every number',
    '1e309"',
    'error number-unreadable: 1e309 is no number that can be read here. A number has the digits 0 to 9, no comma and at most one point: 1250 or 12.5.',
  ],
  [
    'an exponent',
    `1e1'`,
    `error number-unreadable: 1e1' is no number that can be read here. A number has the digits 0 to 9, no comma and at most one point: 1250 or 12.5.`,
  ],
  [
    'no digit before the point',
    `.5'`,
    `error point-astray: A point is easily overlooked, so it has a digit on each side. Write 0.5'.`,
  ],
  [
    'no digit behind it',
    `5.'`,
    `error point-astray: A point is easily overlooked, so it has a digit on each side. Write 5'.`,
  ],
  [
    'two points',
    `1.2.3'`,
    `error point-astray: 1.2.3' has two points. A number has at most one: 1234.5.`,
  ],
  [
    'hexadecimal',
    '0x10"',
    `error phrase-unknown: "0x10"" is not understood here. north takes, beginning with a figure: 2' 0"; 2' 0" bow in or out; 2' 0" bow; 30° left or right; 2' 0" east; 2' 0" gap; 2' 0" thick.`,
  ],
  [
    'an underscore',
    '1_000"',
    'error number-unreadable: 1_000 is no number that can be read here. A number has the digits 0 to 9, no comma and at most one point: 1250 or 12.5.',
  ],
  [
    'infinity',
    'Infinity"',
    'error quote-not-closed: The quote before the end of the line is not closed. A quoted name has a " on each side; an inch mark follows its number.',
  ],
  [
    'not a number',
    'NaN"',
    'error quote-not-closed: The quote before the end of the line is not closed. A quoted name has a " on each side; an inch mark follows its number.',
  ],
  ['11 63/64 inches after feet', `11' 11 63/64"`, ''],
  [
    '12 inches after feet',
    `12' 12"`,
    `error inches-past-twelve: Inches after feet stay below 12, and 12' 12" has 12. 13' 0" is the same. A slip could be 12' 2" or 12' 1/2".`,
  ],
  [
    '13 inches after feet',
    `12' 13"`,
    `error inches-past-twelve: Inches after feet stay below 12, and 12' 13" has 13. 13' 1" is the same. A slip could be 12' 3".`,
  ],
  ['144 inches without feet', '144"', ''],
  [
    'a decimal of feet, and inches',
    `12.5' 4"`,
    `error length-mixed: 12.5' holds its inches already, as a decimal. Write 12.5' alone, or whole feet and inches.`,
  ],
  [
    'a fraction of one',
    '4/4"',
    'error fraction-too-large: 4/4 is an inch or more. A fraction is less than one: its inches stand before it, such as 3 1/4".',
  ],
  [
    'thirds',
    `12' 1/3"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no 1/3. Nearest marks 5/16" and 11/32"; from a drawing write 12' 0.333".`,
  ],
  [
    'a 128th',
    `12' 1/128"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no 1/128. Nearest marks 0" and 1/64"; from a drawing write 12' 0.008".`,
  ],
  ['a nanometre more', '3.657600001 m', ''],
  [
    'a tenth of one more',
    '3.6576000001 m',
    'error length-too-fine: 3.6576000001 m is finer than a millionth of a millimetre. Leave out some of its last digits.',
  ],
  [
    '100 km',
    '100000 m',
    `error closing-error: bedroom misses closing by 328071' 11 7/8" to the east; this tape allows 170' 10 5/8". No single slip of a usual size explains it: two readings may be off, or a wall may be missing. Take them again.`,
  ],
  [
    'more than 100 km',
    '100000.001 m',
    'error length-too-long: 100000.001 m is longer than 100 km, which no room is. Are digits typed twice, or is the unit wrong?',
  ],
  [
    'no unit',
    '12',
    `error length-two-ways: 12 reads two ways: 12", or 12'. A bare number needs "bare inches" on the units line.`,
  ],
  [
    'the point of a carpenter',
    '12.4',
    `error length-two-ways: 12.4 reads two ways: 12' 4", or 12.4' (about 12' 4 13/16"). A bare number needs "bare inches" on the units line.`,
  ],
  [
    'a dash',
    '12-4',
    `error length-two-ways: 12-4 reads two ways: 12' 4", or two entries, 12 and 4. Write 12' 4", or a comma between them.`,
  ],
  [
    'the marks exchanged',
    `12" 4'`,
    `error feet-after-inches: Feet come before inches. Marks exchanged? 12' 4". Two entries that lost their comma? 12", 4'.`,
  ],
  [
    'no inch mark',
    `12' 4`,
    `error inch-mark-missing: The 4 has no mark: 12' 4", or two entries that lost their comma, 12', 4? Bare inches need "bare inches" on the units line.`,
  ],
  ['two foot marks', `12' 4'`, `error foot-mark-twice: Two foot marks. 12' 4"?`],
]

/** The waste percentage that the count is compared with. */
const ALLOWANCES: readonly Row[] = [
  [
    '-100 %',
    '-100%',
    'error number-unreadable: -100 is less than nothing, and no number here is. Write 100, or leave it out.',
  ],
  [
    '-100 % by the minus sign',
    '−100%',
    'error number-unreadable: −100 is less than nothing, and no number here is. Write 100, or leave it out.',
  ],
  ['nothing', '0%', ''],
  ['half a percent', '0.5%', ''],
  ['100 %', '100%', ''],
  [
    'a hair more',
    '100.01%',
    'error percent-too-high: An allowance of 100.01% is more than the floor itself. Write 100% at most; 10% is usual.',
  ],
  [
    '1000 %',
    '1000%',
    'error percent-too-high: An allowance of 1000% is more than the floor itself. Write 100% at most; 10% is usual.',
  ],
  [
    'no percent sign',
    '10',
    'error phrase-unknown: "10" is not understood here. allowance takes: 10%.',
  ],
  [
    'an exponent',
    '1e2%',
    'error number-unreadable: 1e2% is no number that can be read here. A number has the digits 0 to 9, no comma and at most one point: 1250 or 12.5.',
  ],
  [
    'full-width digits',
    '１０%',
    'error digits-not-plain: １０ is written in full-width digits. Write it with the digits 0 to 9: 10.',
  ],
  [
    'a comma',
    '7,5%',
    'error comma-in-number: A comma parts entries and never stands in a number. Write 7.5, or 7, 5 if these are two entries.',
  ],
]

const SPOILS: readonly Row[] = [
  [
    '-100 %',
    '-100%',
    'error number-unreadable: -100 is less than nothing, and no number here is. Write 100, or leave it out.',
  ],
  ['100 %', '100%', ''],
  [
    '1000 %',
    '1000%',
    'error percent-too-high: Spoil of 1000% is more than the floor itself. Write 100% at most.',
  ],
  ['none', '0 planks', ''],
  [
    'below zero',
    '-2 planks',
    'error number-unreadable: -2 is less than nothing, and no number here is. Write 2, or leave it out.',
  ],
  [
    'half a plank',
    '2.5 planks',
    'error number-not-whole: 2.5 is not a whole number, and this is counted in whole ones. 2 or 3?',
  ],
  ['the most', '1000000 planks', ''],
  [
    'one more',
    '1000001 planks',
    'error count-too-high: 1000001 is more than any job holds. Write 1000000 at most.',
  ],
  [
    'of what is not said',
    '10',
    'error phrase-unknown: "10" is not understood here. spoil takes: 9 planks; 10%.',
  ],
]

/** The plank, in a room of 12 by 9 ft. */
const PLANKS: readonly Row[] = [
  [
    'no width',
    '0" x 48"',
    'error size-of-nothing: 0" x 48" is no size for this plank. Its width and length stand on the box.',
  ],
  [
    'no length',
    '7" x 0"',
    'error size-of-nothing: 7" x 0" is no size for this plank. Its width and length stand on the box.',
  ],
  [
    'wider than long',
    '48" x 7"',
    `error plank-size-unlikely: A plank 4' 0" wide and 7" long? The width comes first, and no plank is shorter than it is wide.`,
  ],
  [
    'square',
    '12" x 12"',
    'warning stagger: 88 pairs of joints stand nearer than the 8" stagger, the nearest 1/2" apart in course 1. No better layout was found.',
  ],
  [
    'wider than any',
    `5' x 6'`,
    `error plank-size-unlikely: A plank 5' 0" wide? Up to 4' 0" is read. Check the mark.`,
  ],
  ['longer than the room', `6 3/4" x 20'`, ''],
  ['as long as the room', `6 3/4" x 11' 11 1/2"`, ''],
  [
    'wider than the room is deep, and so than any',
    `9' x 10'`,
    `error plank-size-unlikely: A plank 9' 0" wide? Up to 4' 0" is read. Check the mark.`,
  ],
  [
    'longer than any',
    `7" x 200'`,
    `error plank-size-unlikely: A plank 200' 0" long? Up to 20' 0" is read. Check the mark.`,
  ],
  [
    'below nothing',
    '-7" x 48"',
    'error length-negative: A length is never less than nothing. Write 7", and say which side it lies on in words, such as from left or south.',
  ],
  [
    'one figure',
    '7"',
    `error phrase-unknown: "7"" is not understood here. plank takes: 7" x 48"; 2' 0" wide; 2' 0" long; 2' 0" thick.`,
  ],
  [
    'three figures',
    '7" x 48" x 1/2"',
    `error phrase-unknown: "7" x 48" x 1/2"" is not understood here. plank takes: 7" x 48"; 2' 0" wide; 2' 0" long; 2' 0" thick.`,
  ],
  [
    'still to be read',
    '?',
    `error phrase-unknown: "?" is not understood here. plank takes: 7" x 48"; 2' 0" wide; 2' 0" long; 2' 0" thick.`,
  ],
  [
    'a sliver',
    '1/64" x 48"',
    'error floor-too-large: This floor would take more than 20000 planks. Look for a reading or a plank size that is out by far.',
  ],
]

const BOXES: readonly Row[] = [
  ['nothing', '0 planks', 'error box-of-nothing: A box holds one plank at least.'],
  [
    'half a plank',
    '9.5 planks',
    'error number-not-whole: 9.5 is not a whole number, and this is counted in whole ones. 9 or 10?',
  ],
  [
    'below zero',
    '-9 planks',
    'error number-unreadable: -9 is less than nothing, and no number here is. Write 9, or leave it out.',
  ],
  ['the most', '1000000 planks', ''],
  [
    'one more',
    '1000001 planks',
    'error count-too-high: 1000001 is more than any job holds. Write 1000000 at most.',
  ],
  ['an area of nothing', '0 sq ft', 'error box-of-nothing: A box holds one plank at least.'],
  [
    'an area of no whole planks',
    '21 sq ft',
    'error box-area-not-whole: 21 sq ft is 9.36 planks of this size, and a box holds whole planks. Check the area and the plank, or write the count, such as 9 planks.',
  ],
  [
    'an area and a count that disagree',
    '10 planks, 50 sq ft',
    'error box-said-twice: The area on this box is that of 22 planks, but the line says 10. Keep the one that is right.',
  ],
]

const changed = (stretch: string, to: (typed: string) => string) => (typed: string) =>
  jobWith(stretch, to(typed))

describe.each([
  ['a length', FIGURES, changed("north       12'", (typed) => `north       ${typed}`)],
  [
    'an allowance',
    ALLOWANCES,
    changed('base 1/2" thick, kept\n', (typed) => `base 1/2" thick, kept\nallowance ${typed}\n`),
  ],
  [
    'spoil',
    SPOILS,
    changed('  gap         1/4"\n', (typed) => `  gap         1/4"\n  spoil       ${typed}\n`),
  ],
  ['a plank', PLANKS, changed('6 3/4" x 47 7/8"', (typed) => typed)],
  ['a box', BOXES, changed('10 planks', (typed) => typed)],
] as const)('%s', (_, rows, job) => {
  test.each(rows)('%s: %s', (_what, typed, says) => {
    expect(said(job(typed))).toBe(says)
  })

  test.each(rows)('%s: %s: no total is shown as ready unless the job is', (_what, typed, says) => {
    const result = compiled(job(typed))
    if (says.startsWith('error')) expect(result.takeoff.complete).toBe(false)
    else expect(quantity(result, 'boxes')).toMatch(/^[1-9][0-9]* box/)
  })
})

test('the same figure in every notation gives the same bytes', () => {
  const figures = [
    "12'",
    '12\' 0"',
    '144"',
    '12.0 ft',
    '3657.6 mm',
    '365.76 cm',
    '3.6576 m',
    '12 feet',
  ]
  const totals = figures.map((typed) => {
    const { takeoff, survey } = compiled(jobWith("north       12'", `north       ${typed}`))
    const printed = takeoff.products.flatMap(({ quantities }) =>
      quantities.map((one) => one.printed),
    )
    return JSON.stringify([printed, survey.rooms[0]!.corners])
  })
  expect(new Set(totals).size).toBe(1)
  expect(totals[0]).toContain(quantity(compiled(JOB), 'boxes'))
})
