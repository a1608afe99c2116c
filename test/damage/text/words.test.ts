import { describe, expect, test } from 'vitest'
import { compiled, HEAD, JOB, jobWith, pressing, said } from '../job.ts'

type Row = readonly [what: string, typed: string, says: string]

/** The first word of a wall's line. */
const WORDS: readonly Row[] = [
  [
    'letters exchanged',
    'norht',
    'error word-unknown: No line of a room starts with "norht". Is north meant? Until then bedroom has no area; the other rooms keep theirs.',
  ],
  [
    'a letter doubled',
    'northh',
    'error word-unknown: No line of a room starts with "northh". Is north meant? Until then bedroom has no area; the other rooms keep theirs.',
  ],
  [
    'a point behind it',
    'north.',
    'error word-unknown: No line of a room starts with "north.". Is north meant? Until then bedroom has no area; the other rooms keep theirs.',
  ],
  [
    'a colon behind it',
    'north:',
    'error word-unknown: No line of a room starts with "north:". Is north meant? Until then bedroom has no area; the other rooms keep theirs.',
  ],
  [
    'nothing like it',
    'wibble',
    'error word-unknown: No line of a room starts with "wibble". A wall starts with the way you look at it, such as north; what stands in it with door, opening or closet. Until then bedroom has no area; the other rooms keep theirs.',
  ],
  [
    'a word of another language',
    'nord',
    'error word-unknown: No line of a room starts with "nord". A wall starts with the way you look at it, such as north; what stands in it with door, opening or closet. Until then bedroom has no area; the other rooms keep theirs.',
  ],
  [
    'a word of a product',
    'plank',
    'error word-elsewhere: plank is a line of a product, but stands in a room. Is the line missing above it that opens it?',
  ],
  [
    'a word of column one',
    'units',
    'error line-twice: A file has one units line, and line 3 is one. Keep one of them.',
  ],
  [
    'a bullet',
    '• north',
    `error word-missing: A line starts with one of the language's words, and what belongs to it follows: north 12' 4". "• north       12'" does not.`,
  ],
  [
    'a dash',
    '- north',
    `error word-missing: A line starts with one of the language's words, and what belongs to it follows: north 12' 4". "- north       12'" does not.`,
  ],
  [
    'markup',
    '<b>north</b>',
    `error word-missing: A line starts with one of the language's words, and what belongs to it follows: north 12' 4". "<b>north</b>       12'" does not.`,
  ],
  [
    'a digit',
    '4',
    `error word-missing: A line starts with one of the language's words, and what belongs to it follows: north 12' 4". "4       12'" does not.`,
  ],
  [
    'a bracket',
    '(north',
    `error word-missing: A line starts with one of the language's words, and what belongs to it follows: north 12' 4". "(north       12'" does not.`,
  ],
  [
    'in quotes',
    '"north"',
    `error word-missing: A line starts with one of the language's words, and what belongs to it follows: north 12' 4". ""north"       12'" does not.`,
  ],
  [
    'nothing but a comma',
    ',',
    `error word-missing: A line starts with one of the language's words, and what belongs to it follows: north 12' 4". ",       12'" does not.`,
  ],
]

/** The line that opens the room. */
const HEADINGS: readonly Row[] = [
  [
    'misspelt',
    'rom bedroom',
    'error word-unknown: No line in column one starts with "rom". Is room meant? Until then the lines below it are left out.',
  ],
  [
    'glued',
    'roombedroom',
    'error word-unknown: No line in column one starts with "roombedroom". Blocks open with job, room, product, floor or prices. Until then the lines below it are left out.',
  ],
  [
    'a colon behind it',
    'room: bedroom',
    'error word-unknown: No line in column one starts with "room:". Is room meant? Until then the lines below it are left out.',
  ],
  [
    'no name',
    'room',
    'error name-missing: room needs a name: words, then words or numbers, such as room bedroom 2.',
  ],
  [
    'a list',
    'room bedroom, den',
    'error name-with-comma: room takes one name, and a name holds no comma.',
  ],
  [
    'indented',
    '  room bedroom',
    'warning indent-extra: room opens a block, so it belongs in column one, and is read as if it stood there.',
  ],
  [
    'one of the taken names',
    'room left',
    'error name-taken: left has a meaning of its own everywhere and cannot be a name. A second word makes it one: left room.',
  ],
  [
    'a number',
    'room 12',
    'error name-needs-quotes: A name that starts with a number or holds to, of, and, about or within stands in quotes: "12".',
  ],
  [
    'a hash',
    'room bedroom #2',
    'error comment-without-blank: A comment has a blank on each side of its #. A name may hold the plain number: 2.',
  ],
  [
    'missing',
    '# room bedroom',
    'error word-elsewhere: north is a line of a room, but stands in a product. Is the line missing above it that opens it?',
  ],
  [
    'a quote left open',
    'room "bedroom',
    'error quote-not-closed: The quote before bedroom is not closed. A quoted name has a " on each side; an inch mark follows its number.',
  ],
]

/** What is opened and not closed, or begun and not ended, at the end of the north wall's line. */
const UNCLOSED: readonly Row[] = [
  [
    '(',
    `12', (`,
    'error phrase-unknown: "(" is not understood here. north takes, beginning with a word: called NAME; open to ROOM; stair up or down; touching base, wall, toe-kick or jamb; base kept, base off and back, base new, no base, tub, hearth, slider, cabinet, nosing, open edge or carpet.',
  ],
  [
    '[',
    `12', [`,
    'error phrase-unknown: "[" is not understood here. north takes, beginning with a word: called NAME; open to ROOM; stair up or down; touching base, wall, toe-kick or jamb; base kept, base off and back, base new, no base, tub, hearth, slider, cabinet, nosing, open edge or carpet.',
  ],
  [
    '{',
    `12', {`,
    'error phrase-unknown: "{" is not understood here. north takes, beginning with a word: called NAME; open to ROOM; stair up or down; touching base, wall, toe-kick or jamb; base kept, base off and back, base new, no base, tub, hearth, slider, cabinet, nosing, open edge or carpet.',
  ],
  [
    '<',
    `12', <`,
    'error phrase-unknown: "<" is not understood here. north takes, beginning with a word: called NAME; open to ROOM; stair up or down; touching base, wall, toe-kick or jamb; base kept, base off and back, base new, no base, tub, hearth, slider, cabinet, nosing, open edge or carpet.',
  ],
  [
    '"',
    `12', "`,
    'error quote-not-closed: The quote before the end of the line is not closed. A quoted name has a " on each side; an inch mark follows its number.',
  ],
  [
    '“',
    `12', “`,
    'error quote-not-closed: The quote before the end of the line is not closed. A quoted name has a " on each side; an inch mark follows its number.',
  ],
  [
    'called "x',
    `12', called "x`,
    'error quote-not-closed: The quote before x is not closed. A quoted name has a " on each side; an inch mark follows its number.',
  ],
  [
    'open to "hall',
    `12', open to "hall`,
    'error quote-not-closed: The quote before hall is not closed. A quoted name has a " on each side; an inch mark follows its number.',
  ],
  [
    '/*',
    `12', /*`,
    'error phrase-unknown: "/*" is not understood here. north takes, beginning with a word: called NAME; open to ROOM; stair up or down; touching base, wall, toe-kick or jamb; base kept, base off and back, base new, no base, tub, hearth, slider, cabinet, nosing, open edge or carpet.',
  ],
  [
    '#',
    `12', #`,
    'error comma-astray: Nothing stands on one side of a comma. Leave the comma out, or write what is missing.',
  ],
  [
    '+',
    `12', +`,
    'error phrase-unknown: "+" is not understood here. north takes, beginning with a word: called NAME; open to ROOM; stair up or down; touching base, wall, toe-kick or jamb; base kept, base off and back, base new, no base, tub, hearth, slider, cabinet, nosing, open edge or carpet.',
  ],
  [
    ',',
    `12', ,`,
    'error comma-astray: Nothing stands on one side of a comma. Leave the comma out, or write what is missing.',
  ],
  [
    '?',
    `12', ?`,
    'error phrase-twice: A north line says this once, and "?" is the second. A reading taken again has a line of its own below: again.',
  ],
  [
    'about',
    `12', about`,
    'error phrase-unknown: "about" is not understood here. north takes, beginning with a word: called NAME; open to ROOM; stair up or down; touching base, wall, toe-kick or jamb; base kept, base off and back, base new, no base, tub, hearth, slider, cabinet, nosing, open edge or carpet.',
  ],
  [
    'within',
    `12', within`,
    'error phrase-unknown: "within" is not understood here. north takes, beginning with a word: called NAME; open to ROOM; stair up or down; touching base, wall, toe-kick or jamb; base kept, base off and back, base new, no base, tub, hearth, slider, cabinet, nosing, open edge or carpet.',
  ],
  [
    'called',
    `12', called`,
    'error phrase-unknown: "called" is not understood here. north takes, beginning with a word: called NAME; open to ROOM; stair up or down; touching base, wall, toe-kick or jamb; base kept, base off and back, base new, no base, tub, hearth, slider, cabinet, nosing, open edge or carpet.',
  ],
  [
    'open to',
    `12', open to`,
    'error phrase-unknown: "open to" is not understood here. north takes, beginning with a word: called NAME; open to ROOM; stair up or down; touching base, wall, toe-kick or jamb; base kept, base off and back, base new, no base, tub, hearth, slider, cabinet, nosing, open edge or carpet.',
  ],
  [
    '- ',
    `12', - `,
    'error phrase-unknown: "-" is not understood here. north takes, beginning with a word: called NAME; open to ROOM; stair up or down; touching base, wall, toe-kick or jamb; base kept, base off and back, base new, no base, tub, hearth, slider, cabinet, nosing, open edge or carpet.',
  ],
  [
    `12' within`,
    `12', 12' within`,
    `error phrase-unknown: "12' within" is not understood here. north takes, beginning with a figure: 2' 0"; 2' 0" bow in or out; 2' 0" bow; 30° left or right; 2' 0" east; 2' 0" gap; 2' 0" thick.`,
  ],
]

/** The marks of a merge, in place of the east wall. */
const MERGES: readonly Row[] = [
  [
    'both sides',
    "<<<<<<< ours\n  east        9'\n=======\n  east        10'\n>>>>>>> theirs",
    `error merge-left-open: A git merge was left open, lines 14 to 18. Keep east 9' (ours) or east 10' (theirs), and take the marks out. No totals until then.`,
  ],
  [
    'with the base',
    "<<<<<<< HEAD\n  east        9'\n||||||| base\n  east        8'\n=======\n  east        10'\n>>>>>>> branch",
    `error merge-left-open: A git merge was left open, lines 14 to 20. Keep east 9' (ours) or east 10' (theirs), and take the marks out. No totals until then.`,
  ],
  [
    'the first mark alone',
    "<<<<<<< ours\n  east        9'",
    'error merge-left-open: A git merge was left open, line 14. Not all of its marks are there: see that no line is left twice, and take out those that are. No totals until then.',
  ],
  [
    'the middle mark alone',
    "=======\n  east        9'",
    'error merge-left-open: A git merge was left open, line 14. Not all of its marks are there: see that no line is left twice, and take out those that are. No totals until then.',
  ],
  [
    'the last mark alone',
    "  east        9'\n>>>>>>> theirs",
    'error merge-left-open: A git merge was left open, line 15. Not all of its marks are there: see that no line is left twice, and take out those that are. No totals until then.',
  ],
  [
    'nothing on either side',
    "<<<<<<< ours\n=======\n>>>>>>> theirs\n  east        9'",
    'error merge-left-open: A git merge was left open, lines 14 to 16. Keep nothing (ours) or nothing (theirs), and take the marks out. No totals until then.',
  ],
]

/** The first line. */
const VERSIONS: readonly Row[] = [
  ['this one', 'floorscribe 1', ''],
  [
    'a later one',
    'floorscribe 2',
    'warning version-later: This file says floorscribe 2, and this release reads floorscribe 1. Words that came later are not understood; all others mean what they always did.',
  ],
  [
    'much later',
    'floorscribe 1000000',
    'warning version-later: This file says floorscribe 1000000, and this release reads floorscribe 1. Words that came later are not understood; all others mean what they always did.',
  ],
  [
    'before the first',
    'floorscribe 0',
    'error version-unknown: There is no floorscribe 0. This release reads floorscribe 1, the first.',
  ],
  [
    'half a version',
    'floorscribe 1.5',
    'error number-not-whole: 1.5 is not a whole number, and this is counted in whole ones. 1 or 2?',
  ],
  [
    'below zero',
    'floorscribe -1',
    'error number-unreadable: -1 is less than nothing, and no number here is. Write 1, or leave it out.',
  ],
  [
    'in words',
    'floorscribe one',
    'error phrase-unknown: "one" is not understood here. floorscribe takes: 1.',
  ],
  [
    'no number',
    'floorscribe',
    'incomplete line-unfinished: floorscribe still needs its main part, such as 1.',
  ],
  [
    'twice',
    'floorscribe 1\nfloorscribe 1',
    'error line-twice: A file has one floorscribe line, and line 1 is one. Keep one of them.',
  ],
  [
    '41 digits',
    'floorscribe 99999999999999999999999999999999999999999',
    'error number-too-long: 99999999999999999999999999999999999999999 is too long for a figure, which has at most 40 digits.',
  ],
]

/** Two rooms of a job that are called nearly the same. */
const NAMES: readonly Row[] = [
  [
    'capitals',
    'hall | HALL',
    'error name-twice: HALL is already the name of a room, on line 7. Give this one another name.',
  ],
  [
    'capitals with an accent',
    'Café | CAFÉ',
    'error name-twice: CAFÉ is already the name of a room, on line 7. Give this one another name.',
  ],
  [
    'the accent written apart',
    'café | café',
    'error name-twice: café is already the name of a room, on line 7. Give this one another name.',
  ],
  [
    'an accent more',
    'café | cafe',
    'warning names-alike: cafe and café on line 7 differ by accents only. If they are one room, write it one way.',
  ],
  [
    'another apostrophe',
    `kids' room | kids’ room`,
    'error name-twice: "kids’ room" is already the name of a room, on line 7. Give this one another name.',
  ],
  [
    'more blanks',
    'back  room | back room',
    'error name-twice: "back room" is already the name of a room, on line 7. Give this one another name.',
  ],
]

describe('an unknown word: the nearest is offered, and what it costs until then', () => {
  test.each(WORDS)('%s: %s', (_, typed, says) => {
    expect(said(jobWith("  north       12'\n", `  ${typed}       12'\n`))).toBe(says)
  })
})

describe('the line that opens a room', () => {
  test.each(HEADINGS)('%s: %s', (_, typed, says) => {
    expect(said(jobWith('room bedroom\n', `${typed}\n`))).toBe(says)
  })

  test.each(HEADINGS)('%s: its walls join no other room', (_, typed) => {
    const before = "room attic\n  north 5'\n  east 5'\n  south 5'\n  west 5'\n"
    const { survey } = compiled(jobWith('room bedroom\n', `${before}${typed}\n`))
    const attic = survey.rooms.find(({ room }) => room.name.key === 'attic')!
    // Where the line is gone altogether nobody can tell; a comment is no line.
    if (typed.startsWith('#')) expect(attic.status).toBe('unfinished')
    else expect(attic.outline.length).toBe(4)
  })
})

describe('unclosed things at every place', () => {
  test.each(UNCLOSED)('%s: %s', (_, typed, says) => {
    expect(said(jobWith("north       12'", `north       ${typed}`))).toBe(says)
  })

  test('in every line of the job: at most 3 messages, and nothing is lost', () => {
    const lines = JOB.trimEnd().split('\n')
    for (const sign of ['(', '[', '{', '"', '“', "'", '<', '/*', ','])
      for (const [at, line] of lines.entries()) {
        const text = lines.with(at, `${line} ${sign}`).join('\n')
        expect(pressing(compiled(text)).length, text).toBeLessThanOrEqual(3)
      }
  })
})

describe('conflict markers left in: one clear message, no totals', () => {
  test.each(MERGES)('%s', (_, typed, says) => {
    const text = jobWith("  east        9'", typed)
    expect(said(text)).toBe(says)
    const result = compiled(text)
    expect(pressing(result).filter(({ weight }) => weight === 'error').length).toBe(1)
    expect(result.takeoff.complete).toBe(false)
  })
})

describe('the version of the language', () => {
  test.each(VERSIONS)('%s', (_, typed, says) => {
    expect(said(jobWith('floorscribe 1', typed))).toBe(says)
  })
})

describe('names equal but for case, accents or the form of letters', () => {
  const WALLS = "  north       12'\n  east        9'\n  south       12'\n  west        9'\n"
  test.each(NAMES)('%s: %s', (_, typed, says) => {
    const [one, other] = typed.split(' | ')
    expect(said(`${HEAD}room ${one}\n${WALLS}room ${other}\n`)).toBe(says)
  })
})
