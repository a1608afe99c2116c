import { describe, expect, test } from 'vitest'
import { formatEdits } from '../../../server/src/language/format.ts'
import { parse } from '../../../server/src/language/parse.ts'
import { mended } from '../../language/said.ts'
import { bedroomWith, compiled, JOB, jobWith, pressing, quantity, said } from '../job.ts'

type Row = readonly [what: string, typed: string, says: string]

/** The north wall of a room that is 12 ft long reads so; nothing is said where that is understood. */
const north = (typed: string): string => jobWith("north       12'", `north       ${typed}`)

/** Every quote and prime mark: those that keyboards put for a foot or inch mark are that; others are named. */
const MARKS: readonly Row[] = [
  ['foot mark U+0027', `12'`, ''],
  ['foot mark U+2018', '12‘', ''],
  ['foot mark U+2019', '12’', ''],
  ['foot mark U+2032', '12′', ''],
  ['foot mark U+02B9', '12ʹ', ''],
  ['foot mark U+02BC', '12ʼ', ''],
  ['foot mark U+FF07', '12＇', ''],
  ['inch mark U+0022', '144"', ''],
  ['inch mark U+201C', '144“', ''],
  ['inch mark U+201D', '144”', ''],
  ['inch mark U+2033', '144″', ''],
  ['inch mark U+02BA', '144ʺ', ''],
  ['inch mark U+FF02', '144＂', ''],
  ['inch mark U+0027 U+0027', `144''`, ''],
  ['inch mark U+2032 U+2032', '144′′', ''],
  ['inch mark U+2019 U+2019', '144’’', ''],
  [
    'like a foot mark, U+00B4',
    '12´',
    `error mark-unknown: ´ is no mark of a length. A foot mark is ', an inch mark is ". 12'?`,
  ],
  [
    'like a foot mark, U+0060',
    '12`',
    "error mark-unknown: ` is no mark of a length. A foot mark is ', an inch mark is \". 12'?",
  ],
  [
    'like a foot mark, U+201A',
    '12‚',
    `error mark-unknown: ‚ is no mark of a length. A foot mark is ', an inch mark is ". 12'?`,
  ],
  [
    'like a foot mark, U+201B',
    '12‛',
    `error mark-unknown: ‛ is no mark of a length. A foot mark is ', an inch mark is ". 12'?`,
  ],
  [
    'like a foot mark, U+2035',
    '12‵',
    `error mark-unknown: ‵ is no mark of a length. A foot mark is ', an inch mark is ". 12'?`,
  ],
  [
    'like a foot mark, U+2039',
    '12‹',
    `error mark-unknown: ‹ is no mark of a length. A foot mark is ', an inch mark is ". 12'?`,
  ],
  [
    'like a foot mark, U+203A',
    '12›',
    `error mark-unknown: › is no mark of a length. A foot mark is ', an inch mark is ". 12'?`,
  ],
  [
    'like an inch mark, U+00A8',
    '144¨',
    `error mark-unknown: ¨ is no mark of a length. A foot mark is ', an inch mark is ". 144"?`,
  ],
  [
    'like an inch mark, U+02DD',
    '144˝',
    `error mark-unknown: ˝ is no mark of a length. A foot mark is ', an inch mark is ". 144"?`,
  ],
  [
    'like an inch mark, U+201E',
    '144„',
    `error mark-unknown: „ is no mark of a length. A foot mark is ', an inch mark is ". 144"?`,
  ],
  [
    'like an inch mark, U+201F',
    '144‟',
    `error mark-unknown: ‟ is no mark of a length. A foot mark is ', an inch mark is ". 144"?`,
  ],
  [
    'like an inch mark, U+2036',
    '144‶',
    `error mark-unknown: ‶ is no mark of a length. A foot mark is ', an inch mark is ". 144"?`,
  ],
  [
    'like an inch mark, U+00AB',
    '144«',
    `error mark-unknown: « is no mark of a length. A foot mark is ', an inch mark is ". 144"?`,
  ],
  [
    'like an inch mark, U+00BB',
    '144»',
    `error mark-unknown: » is no mark of a length. A foot mark is ', an inch mark is ". 144"?`,
  ],
  [
    'like an inch mark, U+301D',
    '144〝',
    `error mark-unknown: 〝 is no mark of a length. A foot mark is ', an inch mark is ". 144"?`,
  ],
  [
    'like an inch mark, U+301E',
    '144〞',
    `error mark-unknown: 〞 is no mark of a length. A foot mark is ', an inch mark is ". 144"?`,
  ],
  [
    'like an inch mark, U+301F',
    '144〟',
    `error mark-unknown: 〟 is no mark of a length. A foot mark is ', an inch mark is ". 144"?`,
  ],
  [
    'like an inch mark, U+2034',
    '144‴',
    `error mark-unknown: ‴ is no mark of a length. A foot mark is ', an inch mark is ".`,
  ],
  [
    'like an inch mark, U+2037',
    '144‷',
    `error mark-unknown: ‷ is no mark of a length. A foot mark is ', an inch mark is ".`,
  ],
  [
    'like an inch mark, U+2057',
    '144⁗',
    `error mark-unknown: ⁗ is no mark of a length. A foot mark is ', an inch mark is ".`,
  ],
  [
    'both of them wrong',
    '12´ 0„',
    `error mark-unknown: ´ is no mark of a length. A foot mark is ', an inch mark is ". 12' 0"?`,
  ],
  [
    'feet and a backtick',
    '12` 0`',
    'error mark-unknown: ` is no mark of a length. A foot mark is \', an inch mark is ". 12\' 0"?',
  ],
]

/** Eighths by glyph. */
const EIGHTHS: readonly (readonly [glyph: string, plain: string])[] = [
  ['½', '1/2'],
  ['¼', '1/4'],
  ['¾', '3/4'],
  ['⅛', '1/8'],
  ['⅜', '3/8'],
  ['⅝', '5/8'],
  ['⅞', '7/8'],
]

/** Fractions that no tape has, glued and spaced. */
const NO_FRACTIONS: readonly Row[] = [
  [
    '⅓ glued',
    `12' 0⅓"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅓. Nearest marks 5/16" and 11/32"; from a drawing write 12' 0.333".`,
  ],
  [
    '⅓ spaced',
    `12' 0 ⅓"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅓. Nearest marks 5/16" and 11/32"; from a drawing write 12' 0.333".`,
  ],
  [
    '⅓ alone',
    '⅓"',
    'error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅓. Nearest marks 5/16" and 11/32"; from a drawing write 0.333".',
  ],
  [
    '⅔ glued',
    `12' 0⅔"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅔. Nearest marks 21/32" and 11/16"; from a drawing write 12' 0.667".`,
  ],
  [
    '⅔ spaced',
    `12' 0 ⅔"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅔. Nearest marks 21/32" and 11/16"; from a drawing write 12' 0.667".`,
  ],
  [
    '⅔ alone',
    '⅔"',
    'error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅔. Nearest marks 21/32" and 11/16"; from a drawing write 0.667".',
  ],
  [
    '⅕ glued',
    `12' 0⅕"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅕. Nearest marks 3/16" and 7/32"; from a drawing write 12' 0.200".`,
  ],
  [
    '⅕ spaced',
    `12' 0 ⅕"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅕. Nearest marks 3/16" and 7/32"; from a drawing write 12' 0.200".`,
  ],
  [
    '⅕ alone',
    '⅕"',
    'error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅕. Nearest marks 3/16" and 7/32"; from a drawing write 0.200".',
  ],
  [
    '⅖ glued',
    `12' 0⅖"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅖. Nearest marks 3/8" and 13/32"; from a drawing write 12' 0.400".`,
  ],
  [
    '⅖ spaced',
    `12' 0 ⅖"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅖. Nearest marks 3/8" and 13/32"; from a drawing write 12' 0.400".`,
  ],
  [
    '⅖ alone',
    '⅖"',
    'error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅖. Nearest marks 3/8" and 13/32"; from a drawing write 0.400".',
  ],
  [
    '⅗ glued',
    `12' 0⅗"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅗. Nearest marks 19/32" and 5/8"; from a drawing write 12' 0.600".`,
  ],
  [
    '⅗ spaced',
    `12' 0 ⅗"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅗. Nearest marks 19/32" and 5/8"; from a drawing write 12' 0.600".`,
  ],
  [
    '⅗ alone',
    '⅗"',
    'error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅗. Nearest marks 19/32" and 5/8"; from a drawing write 0.600".',
  ],
  [
    '⅘ glued',
    `12' 0⅘"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅘. Nearest marks 25/32" and 13/16"; from a drawing write 12' 0.800".`,
  ],
  [
    '⅘ spaced',
    `12' 0 ⅘"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅘. Nearest marks 25/32" and 13/16"; from a drawing write 12' 0.800".`,
  ],
  [
    '⅘ alone',
    '⅘"',
    'error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅘. Nearest marks 25/32" and 13/16"; from a drawing write 0.800".',
  ],
  [
    '⅙ glued',
    `12' 0⅙"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅙. Nearest marks 5/32" and 3/16"; from a drawing write 12' 0.167".`,
  ],
  [
    '⅙ spaced',
    `12' 0 ⅙"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅙. Nearest marks 5/32" and 3/16"; from a drawing write 12' 0.167".`,
  ],
  [
    '⅙ alone',
    '⅙"',
    'error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅙. Nearest marks 5/32" and 3/16"; from a drawing write 0.167".',
  ],
  [
    '⅚ glued',
    `12' 0⅚"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅚. Nearest marks 13/16" and 27/32"; from a drawing write 12' 0.833".`,
  ],
  [
    '⅚ spaced',
    `12' 0 ⅚"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅚. Nearest marks 13/16" and 27/32"; from a drawing write 12' 0.833".`,
  ],
  [
    '⅚ alone',
    '⅚"',
    'error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅚. Nearest marks 13/16" and 27/32"; from a drawing write 0.833".',
  ],
  [
    '⅐ glued',
    `12' 0⅐"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅐. Nearest marks 1/8" and 5/32"; from a drawing write 12' 0.143".`,
  ],
  [
    '⅐ spaced',
    `12' 0 ⅐"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅐. Nearest marks 1/8" and 5/32"; from a drawing write 12' 0.143".`,
  ],
  [
    '⅐ alone',
    '⅐"',
    'error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅐. Nearest marks 1/8" and 5/32"; from a drawing write 0.143".',
  ],
  [
    '⅑ glued',
    `12' 0⅑"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅑. Nearest marks 3/32" and 1/8"; from a drawing write 12' 0.111".`,
  ],
  [
    '⅑ spaced',
    `12' 0 ⅑"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅑. Nearest marks 3/32" and 1/8"; from a drawing write 12' 0.111".`,
  ],
  [
    '⅑ alone',
    '⅑"',
    'error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅑. Nearest marks 3/32" and 1/8"; from a drawing write 0.111".',
  ],
  [
    '⅒ glued',
    `12' 0⅒"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅒. Nearest marks 3/32" and 1/8"; from a drawing write 12' 0.100".`,
  ],
  [
    '⅒ spaced',
    `12' 0 ⅒"`,
    `error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅒. Nearest marks 3/32" and 1/8"; from a drawing write 12' 0.100".`,
  ],
  [
    '⅒ alone',
    '⅒"',
    'error fraction-not-on-tape: A tape has halves, quarters, eighths and so on to 64ths, and no ⅒. Nearest marks 3/32" and 1/8"; from a drawing write 0.100".',
  ],
  [
    '⅟ glued',
    `12' 0⅟"`,
    'error quote-not-closed: The quote before the end of the line is not closed. A quoted name has a " on each side; an inch mark follows its number.',
  ],
  [
    '⅟ spaced',
    `12' 0 ⅟"`,
    'error quote-not-closed: The quote before the end of the line is not closed. A quoted name has a " on each side; an inch mark follows its number.',
  ],
  [
    '⅟ alone',
    '⅟"',
    'error quote-not-closed: The quote before the end of the line is not closed. A quoted name has a " on each side; an inch mark follows its number.',
  ],
  [
    '↉ glued',
    `12' 0↉"`,
    'error quote-not-closed: The quote before the end of the line is not closed. A quoted name has a " on each side; an inch mark follows its number.',
  ],
  [
    '↉ spaced',
    `12' 0 ↉"`,
    'error quote-not-closed: The quote before the end of the line is not closed. A quoted name has a " on each side; an inch mark follows its number.',
  ],
  [
    '↉ alone',
    '↉"',
    'error quote-not-closed: The quote before the end of the line is not closed. A quoted name has a " on each side; an inch mark follows its number.',
  ],
  [
    'two fractions',
    `12' ½½"`,
    `error length-unreadable: 12' ½½" is no length that can be read. Write it such as 12' 4 1/2", 148 1/2", 12.375' or 3.76 m.`,
  ],
  [
    'a fraction after a mixed number',
    `12' 1½ ½"`,
    `error length-unreadable: 12' 1½ ½" is no length that can be read. Write it such as 12' 4 1/2", 148 1/2", 12.375' or 3.76 m.`,
  ],
  [
    'one over nothing',
    '1/0"',
    'error fraction-not-on-tape: 1/0 is no fraction. A fraction of an inch is written such as 7/16.',
  ],
  [
    'a fraction of a fraction',
    '7/16/2"',
    'error fraction-not-on-tape: 7/16/2 is no fraction. A fraction of an inch is written such as 7/16.',
  ],
]

/** Digits and what parts them: refused by name, with both readings where there are two. */
const DIGITS: readonly Row[] = [
  [
    'Arabic',
    `١٢'`,
    `error digits-not-plain: ١٢' is written in Arabic digits. Write it with the digits 0 to 9: 12'.`,
  ],
  [
    'Persian',
    `۱۲'`,
    `error digits-not-plain: ۱۲' is written in Arabic digits. Write it with the digits 0 to 9: 12'.`,
  ],
  [
    'full-width',
    `１２'`,
    `error digits-not-plain: １２' is written in full-width digits. Write it with the digits 0 to 9: 12'.`,
  ],
  [
    'Devanagari',
    `१२'`,
    `error digits-not-plain: १२' is written in digits of another script. Write it with the digits 0 to 9: 12'.`,
  ],
  [
    'mathematical',
    `𝟏𝟐'`,
    `error digits-not-plain: 𝟏𝟐' is written in digits of another script. Write it with the digits 0 to 9: 12'.`,
  ],
  [
    'some of them',
    `1２' 0"`,
    `error digits-not-plain: 1２' 0" is written in full-width digits. Write it with the digits 0 to 9: 12' 0".`,
  ],
  [
    'superscript',
    `12²'`,
    'error number-unreadable: ² is no digit that can be read here. A number has the digits 0 to 9, and a fraction is written such as 1/2 or ½.',
  ],
  [
    'circled',
    `①②'`,
    'error number-unreadable: ① is no digit that can be read here. A number has the digits 0 to 9, and a fraction is written such as 1/2 or ½.',
  ],
  [
    'a Roman numeral',
    `Ⅻ'`,
    'error number-unreadable: Ⅻ is no digit that can be read here. A number has the digits 0 to 9, and a fraction is written such as 1/2 or ½.',
  ],
  ['the letter O', `1O'`, `error letter-in-number: The O in 1O' is a letter. 10'?`],
  ['the letter l', `l2'`, `error letter-in-number: The l in l2' is a letter. 12'?`],
  [
    'a comma for the point',
    '3,6576 m',
    'error comma-in-number: A comma parts entries and never stands in a number. Write 3.6576 m, or 3, 6576 m if these are two entries.',
  ],
  [
    'a comma for thousands, or the point',
    '1,000 mm',
    'error comma-in-number: 1,000 mm is 1000 mm to some and 1.000 mm to others. A number has no comma: write 1000 mm or 1.000 mm.',
  ],
  [
    'both, the point first',
    '1.234,5 mm',
    'error comma-in-number: 1.234,5 mm is 1234.5 mm to some and 1.2345 mm to others. A number has no comma: write 1234.5 mm or 1.2345 mm.',
  ],
  [
    'both, the comma first',
    '1,234.5 mm',
    'error comma-in-number: 1,234.5 mm is 1.2345 mm to some and 1234.5 mm to others. A number has no comma: write 1.2345 mm or 1234.5 mm.',
  ],
  [
    'thousands by an apostrophe',
    `3'657 mm`,
    `error length-mixed: 3'657 mm mixes two ways of writing a number. Use inches and a fraction, such as 4 1/2", or a decimal, such as 3.76 m.`,
  ],
  [
    'thousands by a blank',
    '3 657 mm',
    'error length-mixed: 3 657 mm mixes two ways of writing a number. Use inches and a fraction, such as 4 1/2", or a decimal, such as 3.76 m.',
  ],
]

/** Signs that show nothing, that turn the text, that are none: each named by its number. */
const HIDDEN: readonly Row[] = [
  [
    'U+0000',
    'the \u0000den',
    'error character-not-text: A sign that is no text stands here (U+0000). Take it out; if there are many, the file may be no text at all.',
  ],
  [
    'U+0007',
    'the \u0007den',
    'error character-not-text: A sign that is no text stands here (U+0007). Take it out; if there are many, the file may be no text at all.',
  ],
  [
    'U+0008',
    'the \bden',
    'error character-not-text: A sign that is no text stands here (U+0008). Take it out; if there are many, the file may be no text at all.',
  ],
  [
    'U+000B',
    'the \u000bden',
    'error character-not-text: A sign that is no text stands here (U+000B). Take it out; if there are many, the file may be no text at all.',
  ],
  [
    'U+000C',
    'the \fden',
    'error character-not-text: A sign that is no text stands here (U+000C). Take it out; if there are many, the file may be no text at all.',
  ],
  [
    'U+001B',
    'the \u001bden',
    'error character-not-text: A sign that is no text stands here (U+001B). Take it out; if there are many, the file may be no text at all.',
  ],
  [
    'U+007F',
    'the den',
    'error character-not-text: A sign that is no text stands here (U+007F). Take it out; if there are many, the file may be no text at all.',
  ],
  [
    'U+0085',
    'the \u0085den',
    'error character-not-text: A sign that is no text stands here (U+0085). Take it out; if there are many, the file may be no text at all.',
  ],
  [
    'U+009B',
    'the \u009bden',
    'error character-not-text: A sign that is no text stands here (U+009B). Take it out; if there are many, the file may be no text at all.',
  ],
  [
    'U+FFFD',
    'the \ufffdden',
    'error character-not-text: A sign that is no text stands here (U+FFFD). Take it out; if there are many, the file may be no text at all.',
  ],
  [
    'U+2028',
    'the \u2028den',
    'error character-not-text: A sign that is no text stands here (U+2028). Take it out; if there are many, the file may be no text at all.',
  ],
  [
    'U+2029',
    'the \u2029den',
    'error character-not-text: A sign that is no text stands here (U+2029). Take it out; if there are many, the file may be no text at all.',
  ],
  [
    'U+D800',
    'the \ud800den',
    'error character-not-text: A sign that is no text stands here (U+D800). Take it out; if there are many, the file may be no text at all.',
  ],
  [
    'U+00AD',
    'the \u00adden',
    'error character-hidden: A sign that nobody can see stands here (U+00AD). It makes two names differ that look alike. Take it out.',
  ],
  [
    'U+034F',
    'the ͏den',
    'error character-hidden: A sign that nobody can see stands here (U+034F). It makes two names differ that look alike. Take it out.',
  ],
  [
    'U+180E',
    'the ᠎den',
    'error character-hidden: A sign that nobody can see stands here (U+180E). It makes two names differ that look alike. Take it out.',
  ],
  [
    'U+200B',
    'the \u200bden',
    'error character-hidden: A sign that nobody can see stands here (U+200B). It makes two names differ that look alike. Take it out.',
  ],
  [
    'U+200C',
    'the \u200cden',
    'error character-hidden: A sign that nobody can see stands here (U+200C). It makes two names differ that look alike. Take it out.',
  ],
  [
    'U+200D',
    'the \u200dden',
    'error character-hidden: A sign that nobody can see stands here (U+200D). It makes two names differ that look alike. Take it out.',
  ],
  [
    'U+200E',
    'the \u200eden',
    'error character-hidden: A sign that nobody can see stands here (U+200E). It makes two names differ that look alike. Take it out.',
  ],
  [
    'U+200F',
    'the \u200fden',
    'error character-hidden: A sign that nobody can see stands here (U+200F). It makes two names differ that look alike. Take it out.',
  ],
  [
    'U+2060',
    'the \u2060den',
    'error character-hidden: A sign that nobody can see stands here (U+2060). It makes two names differ that look alike. Take it out.',
  ],
  [
    'U+FEFF',
    'the \ufeffden',
    'error character-hidden: A sign that nobody can see stands here (U+FEFF). It makes two names differ that look alike. Take it out.',
  ],
  [
    'U+3164',
    'the ㅤden',
    'error character-hidden: A sign that nobody can see stands here (U+3164). It makes two names differ that look alike. Take it out.',
  ],
  [
    'U+FFF9',
    'the ￹den',
    'error character-hidden: A sign that nobody can see stands here (U+FFF9). It makes two names differ that look alike. Take it out.',
  ],
  [
    'U+E0041',
    'the \udb40\udc41den',
    'error character-hidden: A sign that nobody can see stands here (U+E0041). It makes two names differ that look alike. Take it out.',
  ],
  [
    'U+061C',
    'the \u061cden',
    'error character-turns-text: A sign that turns the order of the text stands here (U+061C): the line may not say what it shows. Take it out.',
  ],
  [
    'U+202A',
    'the \u202aden',
    'error character-turns-text: A sign that turns the order of the text stands here (U+202A): the line may not say what it shows. Take it out.',
  ],
  [
    'U+202B',
    'the \u202bden',
    'error character-turns-text: A sign that turns the order of the text stands here (U+202B): the line may not say what it shows. Take it out.',
  ],
  [
    'U+202D',
    'the \u202dden',
    'error character-turns-text: A sign that turns the order of the text stands here (U+202D): the line may not say what it shows. Take it out.',
  ],
  [
    'U+202E',
    'the \u202eden',
    'error character-turns-text: A sign that turns the order of the text stands here (U+202E): the line may not say what it shows. Take it out.',
  ],
  [
    'U+2066',
    'the \u2066den',
    'error character-turns-text: A sign that turns the order of the text stands here (U+2066): the line may not say what it shows. Take it out.',
  ],
  [
    'U+2067',
    'the \u2067den',
    'error character-turns-text: A sign that turns the order of the text stands here (U+2067): the line may not say what it shows. Take it out.',
  ],
  [
    'U+2068',
    'the \u2068den',
    'error character-turns-text: A sign that turns the order of the text stands here (U+2068): the line may not say what it shows. Take it out.',
  ],
]

const BLANKS = [
  '\t',
  '\u00a0',
  '\u2000',
  '\u2003',
  '\u2007',
  '\u2009',
  '\u200a',
  '\u202f',
  '\u205f',
  '\u3000',
]

describe('every quote and prime mark', () => {
  test.each(MARKS)('%s: %s', (_, typed, says) => {
    expect(said(north(typed))).toBe(says)
  })

  test('the fix of a sign like a mark leaves nothing to say', () => {
    for (const [, typed] of MARKS) {
      const text = north(typed)
      const [message] = parse('job.floor', text).messages
      if (message === undefined || message.fixes.length === 0) continue
      expect(said(mended(text, message)), typed).toBe('')
    }
  })
})

describe('every vulgar fraction, glued and spaced', () => {
  test.each(EIGHTHS)('%s is %s', (glyph, plain) => {
    const read = (fraction: string) => {
      const walls = [`12' 0${fraction}"`, `9'`, `12' 0 ${plain}"`, `9'`]
      return compiled(
        bedroomWith(walls.map((wall, i) => `${['north', 'east', 'south', 'west'][i]} ${wall}`)),
      )
    }
    const survey = (fraction: string) => JSON.stringify(read(fraction).survey.rooms[0]!.corners)
    expect(pressing(read(glyph)).map(({ code }) => code)).toEqual([])
    expect(survey(glyph)).toBe(survey(` ${plain}`))
    expect(survey(` ${glyph}`)).toBe(survey(` ${plain}`))
  })

  test.each(NO_FRACTIONS)('%s: %s', (_, typed, says) => {
    expect(said(north(typed))).toBe(says)
  })
})

describe('digits of other scripts, commas and points', () => {
  test.each(DIGITS)('%s: %s', (_, typed, says) => {
    expect(said(north(typed))).toBe(says)
  })
})

describe('NUL, control characters, zero-width signs and bidi overrides', () => {
  test.each(HIDDEN)('%s in a note', (_, typed, says) => {
    expect(said(jobWith('  gap ', `  note        ${typed}\n  gap `))).toBe(says)
  })

  test('the fix takes them out, wherever they stand', () => {
    for (const [, typed] of HIDDEN) {
      const text = jobWith('room bedroom', `room x${typed}\n\nroom bedroom`)
      const message = parse('job.floor', text).messages[0]!
      expect(parse('job.floor', mended(text, message)).messages).toEqual([])
    }
  })
})

describe('blanks, line ends and the byte-order mark', () => {
  const numbers = (text: string) =>
    JSON.stringify(compiled(text).survey.rooms[0]!.corners) + quantity(compiled(text), 'boxes')
  const ENDS: readonly (readonly [string, string])[] = [
    ['CRLF', JOB.replaceAll('\n', '\r\n')],
    ['CR', JOB.replaceAll('\n', '\r')],
    [
      'all three mixed',
      JOB.split('\n')
        .map((line, i) => line + ['\n', '\r\n', '\r'][i % 3])
        .join(''),
    ],
    ['a byte-order mark', `\ufeff${JOB}`],
    ['no line end at the end', JOB.trimEnd()],
    ['ten empty lines between any two', JOB.replaceAll('\n', '\n'.repeat(11))],
  ]

  test.each(ENDS)('%s: the same numbers', (_, text) => {
    expect(said(text)).toBe('')
    expect(numbers(text)).toBe(numbers(JOB))
  })

  test.each(ENDS)('%s: the formatter keeps it', (_, text) => {
    const edits = formatEdits(parse('job.floor', text))
    for (const { span, text: written } of edits) {
      const ends = (part: string) => part.replace(/[^\r\n\ufeff]/g, '')
      expect(ends(written)).toBe(ends(text.slice(span.start, span.end)))
    }
  })

  test.each(BLANKS.map((blank) => [blank.charCodeAt(0).toString(16), blank]))(
    'U+%s parts words and figures',
    (_, blank) => {
      const text = jobWith("  north       12'", `${blank}north${blank}12'${blank}0"`)
      expect(said(text)).toBe('')
      expect(numbers(text)).toBe(numbers(JOB))
    },
  )
})

test('right-to-left and other names are names like any', () => {
  for (const name of [
    'חדר שינה',
    'غرفة النوم',
    'spare غرفة 2',
    'ห้องนอน',
    'कमरा',
    '卧室',
    '😀 den',
    'Ærøskøbing',
  ])
    expect(said(JOB.replaceAll('bedroom', name)), name).toBe('')
})
