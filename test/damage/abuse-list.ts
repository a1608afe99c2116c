/** One thing that a text, a number, a room, a file or a name may do, and the test that holds the answer. */
export interface Abuse {
  readonly what: string
  /** From the folder of the tests. */
  readonly file: string
  /** A name in that file: of a test, a table or a row of it. */
  readonly test: string
}

const held = (
  file: string,
  rows: readonly (readonly [what: string, test: string])[],
): readonly Abuse[] => rows.map(([what, test]) => ({ what, file, test }))

export const TEXT: readonly Abuse[] = [
  ...held('damage/text/sweep.test.ts', [
    ['every prefix of every example', 'every beginning of $name'],
    [
      'at most 3 messages, the first within a line of the damage',
      'at most 3 messages for one damage',
    ],
    ['references to a damaged name fold into one', 'references to one name do not fold'],
    [
      'other untied rooms keep their figures to the digit',
      'the other rooms keep their figures to the digit',
    ],
    ['the same with floors and counts', 'the whole job, floors and counts'],
  ]),
  ...held('damage/sweep.ts', [
    ['every token deleted', "'deleted'"],
    ['every token doubled', "'doubled'"],
    ['every token swapped', 'exchanged: '],
    ['every token replaced', "'replaced by a word'"],
    ['every line taken out, cut, or with a stray mark', "'cut in the middle'"],
  ]),
  ...held('damage/text/words.test.ts', [
    ['an unreadable line in column one opens a block', 'its walls join no other room'],
    ['unclosed things at every place', 'unclosed things at every place'],
    ['an unknown word: the nearest', 'an unknown word: the nearest is offered'],
    ['a file of a later version: both versions named', 'the version of the language'],
    [
      'conflict markers: one message, no totals',
      'conflict markers left in: one clear message, no totals',
    ],
    ['names equal but for case', "'capitals'"],
    ['names equal but for an accent', "'an accent more'"],
    ['names equal but for the form of an accent', "'the accent written apart'"],
  ]),
  ...held('damage/text/signs.test.ts', [
    ['NUL and control characters', 'NUL, control characters, zero-width signs and bidi overrides'],
    ['a byte-order mark', "'a byte-order mark'"],
    ['CRLF', "'CRLF'"],
    ['CR', "'CR'"],
    ['line ends mixed: the same numbers', "'all three mixed'"],
    ['the formatter keeps the line ends', 'the formatter keeps it'],
    ['tabs, no-break and narrow blanks', 'parts words and figures'],
    ['zero-width signs flagged with a fix', 'the fix takes them out, wherever they stand'],
    ['every quote and prime mark', 'every quote and prime mark'],
    ['every vulgar fraction, glued and spaced', 'every vulgar fraction, glued and spaced'],
    ['1/0', "'one over nothing'"],
    ['7/16/2', "'a fraction of a fraction'"],
    ['full-width digits', "'full-width'"],
    ['Arabic digits', "'Arabic'"],
    ['1.234,5 with both readings', "'both, the point first'"],
    ['1,000 with both readings', "'a comma for thousands, or the point'"],
    ['right-to-left names', 'right-to-left and other names are names like any'],
    ['bidi overrides shown as U+202E', "'U+202E'"],
  ]),
  ...held('damage/text/size.test.ts', [
    ['10 MB in one line', "'10 MB in one line'"],
    ['a million lines', "'a million lines that nobody understands'"],
    ['depth 99, 100, 101, 100 000', '99, 100, 101 and 100 000'],
    ['random bytes', 'random bytes: every text is read'],
  ]),
  ...held('host/utf8.test.ts', [
    ['not UTF-8: said so, nothing guessed', 'is refused where it stands'],
  ]),
  ...held('cli/encodings.clitest', [['not UTF-8, as a person sees it', 'is not written in UTF-8']]),
  ...held('fuzz/fuzz.test.ts', [['random damage', 'reaches many messages']]),
]

export const NUMBERS: readonly Abuse[] = [
  ...held('damage/numbers/figures.test.ts', [
    ['0', "'nothing'"],
    ['-0', "'minus nothing'"],
    ['negative', "'less than nothing'"],
    ['40 digits', "'40 digits'"],
    ['41 digits', "'41 digits'"],
    ['1e309', "'an exponent past every number'"],
    ['.5', "'no digit before the point'"],
    ['5.', "'no digit behind it'"],
    ['0x10', "'hexadecimal'"],
    ['1_000', "'an underscore'"],
    ['inches of 12 or more', "'12 inches after feet'"],
    ['waste of -100 %', "'-100 %'"],
    ['waste of 100 %', "'100 %'"],
    ['waste of 1000 %', "'1000 %'"],
    ['a plank of no width or length', "'no width'"],
    ['a plank wider than the room', "'wider than the room is deep, and so than any'"],
    ['a plank longer than the room', "'longer than the room'"],
  ]),
  ...held('damage/numbers/limits.test.ts', [
    ['stagger below, at and above', 'stagger: planks of 24 in'],
    ['shortest end below, at and above', 'shortest end: 10 in'],
    ['narrowest rip below, at and above', 'narrowest rip: 2 in'],
    ['run below, at and above', 'run along the planks: 10 ft'],
    ['run across below, at and above', 'run across the planks: 10 ft'],
    ['gap below, at and above', 'gap: half of a room 9 ft deep'],
    ['expected boxes below, at and above', 'expected boxes: the job comes to 6'],
    ['expected planks within a margin', 'expected planks within a margin'],
    ['expected area within a margin', 'expected area: 108 sq ft'],
    ['allowance below, at and above', 'allowance: 100 %'],
    ['turns, bows, planks, boxes, walls, thickness', 'bow: half a circle over 12 ft'],
    ['the tolerance of closing, to the nanometre', 'a room that misses closing'],
    ['the tolerance of a diagonal, to the nanometre', 'a diagonal that disagrees'],
    ['the tolerance of an opening, to the nanometre', 'a door that ends past its wall'],
    ['the tolerance of two openings, to the nanometre', 'two doors that lie over each other'],
  ]),

  ...held('damage/numbers/prices.test.ts', [
    ['a comma in a price', 'price floor sander, 1,250 a day'],
  ]),
  ...held('damage/numbers/sums.test.ts', [
    ['printed lines sum to the printed total', 'printed lines sum to the printed total'],
  ]),
  ...held('laws/place.ts', [['permuted rooms', "'order of rooms'"]]),
  ...held('laws/order.ts', [['permuted blocks give the same bytes', "'order of blocks'"]]),
]

export const GEOMETRY: readonly Abuse[] = [
  ...held('damage/geometry/rooms.test.ts', [
    ['self-crossing: both walls and the point', "'self-crossing'"],
    ['zero area', "'no area: walls of nothing'"],
    ['collinear, the same wall twice', "'the same wall told twice'"],
    ['two corners', "'two corners'"],
    ['spikes', "'a spike inwards'"],
    ['repeated corners', 'a corner told twice'],
    ['slivers', "'a sliver of the two gaps'"],
    ['five-mile rooms', "'five miles square'"],
    ['a gap of 1/16 in is said', 'a gap of 1/16 in is never closed in silence'],
    ['openings outside', "'outside the wall'"],
    ['openings at a corner', "'at the left corner'"],
    ['openings overlapping', "'overlapping'"],
    ['openings too wide', "'wider than the wall'"],
    ['holes outside', "'outside'"],
    ['holes touching at an edge', "'touching an edge'"],
    ['holes touching at a point', "'touching at a point'"],
    ['holes crossing', "'crossing'"],
    ['holes nested', "'nested'"],
    ['holes equal to the room', "'equal to the room'"],
    ['rooms overlapping: the area said', 'the area is said, and where to look'],
  ]),
  ...held('damage/geometry/many-walls.test.ts', [
    ['100 000 walls in a comb', 'a comb of 100 000 walls is measured'],
    ['spirals', 'a spiral of 10 000 walls is measured'],
    ['stars', 'a star of 20 000 walls is measured'],
  ]),
  ...held('bench/growth.ts', [['t(2n)/t(n) at most 2.6', '2.6']]),
  ...held('laws/place.ts', [
    ['the same room turned', "'quarter turn'"],
    ['the same room mirrored', "'mirror'"],
    ['the same room from another corner', "'other corner'"],
    ['the same room moved', "'moved'"],
  ]),
]

export const FILES: readonly Abuse[] = [
  ...held('damage/files/reading.test.ts', [
    ['include cycles: the chain shown', 'a circle shows its chain'],
    ['diamonds read once', 'a diamond is read once'],
    ['../', "'../prices.floor'"],
    ['absolute paths', "'/etc/passwd'"],
    ['addresses', "'https://example.com/prices.floor'"],
    ['CON and others', "'CON.floor'"],
    ['NUL', "'lists/NUL.floor'"],
    ['links out of the root', 'a link out of the folder is refused'],
    ['a directory', 'a folder, a pipe and a file that is not UTF-8'],
    ['vanishing', 'a file that vanishes before its turn'],
    ['changing during the read', 'all the time: it is refused, with its own sentence'],
    ['a fault in the middle of reading', 'a disk that reports a fault in the middle'],
  ]),
  ...held('cli/no-file.clitest', [
    ['a FIFO', 'is a pipe'],
    ['/dev/zero', '/dev/zero'],
    ['unreadable, as a person without rights', 'plainly floorscribe check shut.floor'],
  ]),
  ...held('cli/read-fault.clitest', [
    ['an include that may not be read', 'plainly floorscribe check job.floor'],
    ['EIO while reading', '/proc/self/mem'],
  ]),
  ...held('cli/disk-full.clitest', [
    ['a full disk: the old export intact, no litter', 'the disk is full'],
    ['a read-only disk', 'the disk is read-only'],
  ]),
  ...held('cli/drawing-refused.clitest', [
    ['the target is a folder', 'it is a folder'],
    ['a folder that may not be written', 'plainly floorscribe estimate'],
    ['/dev/full', '/dev/full'],
    ['the exit code', '=== exit 1'],
  ]),
  ...held('damage/files/writing.test.ts', [
    ['EIO at each step of writing', "'EIO'"],
    ['targets that are none', 'targets that are none'],
    ['two exports at once', 'two exports at once'],
  ]),
  ...held('cli/drawing-races.clitest', [
    ['two exports at once, and one that is killed', 'kill -9'],
  ]),
]

export const INJECTION: readonly Abuse[] = [
  ...held('damage/injection/sinks.test.ts', [
    ['markup', "'markup'"],
    ['script', "'a script'"],
    ['javascript:', "'a script address'"],
    ['Markdown command links', "'a command link'"],
    ['formulas by =', "'a formula'"],
    ['formulas by +', "'a formula by plus'"],
    ['formulas by -', "'a formula by minus'"],
    ['formulas by @', "'a formula by at'"],
    ['full-width formulas', "'a full-width formula'"],
    ['escape sequences', "'an escape sequence'"],
    ['PDF operators', "'a PDF operator'"],
    ['right-to-left marks', "'a bidi override'"],
    ['in every name', "'a room'"],
    ['in every note', "'a note'"],
    ['in every path', "'an include'"],
    ['in every error message', "'a word that is none'"],
    ['our own negative numbers stay numbers', 'our own negative numbers stay numbers'],
    ['__proto__', "'__proto__'"],
    ['then', "'then'"],
    ['toString', "'toString'"],
  ]),
  ...held('cli/hostile-names.clitest', [['names of files, in a terminal', 'Control characters']]),
]
