import type { Survey } from '../../server/src/survey/survey.ts'
import { survey } from '../../server/src/survey/survey-job.ts'
import { job, room, type WallSaid } from './build.ts'
import { box, surveyOf } from './text.ts'

const PLAIN = `12', 9', 12', 9'`
const SHAPED = `12' 4", 10' 8 1/4", 12' 4 1/8", 10' 8 1/8"`
const BOTH_DIAGONALS = [
  `diagonal 16' 3 7/8", from north-west to south-east`,
  `diagonal 16' 3 3/4", from north-east to south-west`,
]
const L = [`south 20'`, `west 8'`, `north 8'`, `west 6'`, `north 12'`]
const lines = (name: string, ...said: readonly string[]) =>
  `room ${name}\n${said.map((line) => `  ${line}\n`).join('')}`
const LOOSE = ['out of square', `north 12'`, `east 9'`, `south 12'`, `west 9'`]
const built = (name: string, walls: readonly WallSaid[], outOfSquare = false) =>
  survey(job([room(name, walls, { outOfSquare })]))
const METRIC = `floorscribe 1\njob test\nunits m\ntape 2 mm\nwalls 100 mm thick\n`

/** Something wrong or unclear, and what the survey says of it. */
export interface Exhibit {
  readonly title: string
  readonly text: string
  readonly survey: () => Survey
}

const shown = (title: string, text: string, head?: string): Exhibit => ({
  title,
  text,
  survey: () => surveyOf(text, head),
})

/** What the language refuses already is built by hand. */
const byHand = (title: string, make: () => Survey): Exhibit => ({
  title,
  text: '(built by hand)\n',
  survey: make,
})

export const GALLERY: readonly Exhibit[] = [
  shown(
    'one wall a foot long, both diagonals know',
    box('bunk', `12' 4", 11' 8 1/4", 12' 4 1/8", 10' 8 1/8"`, ...BOTH_DIAGONALS),
  ),
  shown('one of two walls a foot long', box('bunk', `12' 4", 11' 8 1/4", 12' 4 1/8", 10' 8 1/8"`)),
  shown('half an inch: a warning', box('bunk', `12' 4", 10' 8 3/4", 12' 4 1/8", 10' 8 1/8"`)),
  shown('one of three walls of an L', lines('l', ...L, `east 13'`)),
  shown('two figures exchanged', box('bunk', `12' 4", 21' 8", 12' 4", 12' 8"`)),
  shown('no usual slip', box('bunk', `12' 4", 14' 8 3/4", 12' 4 1/8", 10' 8 1/8"`)),
  shown(
    'a metre',
    box(
      'bunk',
      '3.60 m, 3.10 m, 3.60 m, 2.10 m',
      'diagonal 4.168 m, from north-west to south-east',
    ),
    METRIC,
  ),
  shown(
    'repeats a foot apart',
    lines('bunk', `north 12' 4"`, `  again 13' 4"`, `east 10'`, `south 12' 4"`, `west 10'`),
  ),
  shown(
    'repeats of a diagonal',
    box('bunk', PLAIN, `diagonal 15', from north-west to south-east`, `  again 15' 0 1/2"`),
  ),
  shown(
    'parts',
    lines(
      'bunk',
      `north 12' 4"`,
      `  parts 4' 0", door 32", 5' 7"`,
      `east 10'`,
      `south 12' 4"`,
      `west 10'`,
    ),
  ),
  shown(
    'a slant',
    lines(
      'bunk',
      `north 10'`,
      `slant 4' 6", 3' 0" east, 3' 0" south`,
      `east 7'`,
      `south 13' 0"`,
      `west 10'`,
    ),
  ),
  shown(
    'a diagonal an inch long',
    box('bunk', PLAIN, `diagonal 15' 1", from north-west to south-east`),
  ),
  shown(
    'a width that no slip explains',
    box('bunk', PLAIN, `across 8' 10 3/8", from north to south, middle`),
  ),
  shown(
    'a width that misses its wall',
    lines(
      'l',
      `south 20', called long`,
      `west 8'`,
      `north 8', called short`,
      `west 6'`,
      `north 12'`,
      `east 14'`,
      `across 8', from long to short, 1' from left`,
    ),
  ),
  shown(
    'a tested corner',
    lines('bunk', ...LOOSE, `diagonal 15' 3", from north-west to south-east`, 'square north-west'),
  ),
  shown('loose', lines('bunk', ...LOOSE)),
  shown(
    'loose, five walls',
    lines(
      'bunk',
      'out of square',
      `north 12'`,
      `east 9'`,
      `south 9'`,
      `south-west 4' 3"`,
      `west 6'`,
    ),
  ),
  shown('cannot meet', lines('bunk', ...LOOSE, `diagonal 25', from north-west to south-east`)),
  shown(
    'one spare reading',
    lines(
      'bunk',
      ...LOOSE,
      `diagonal 15', from north-west to south-east`,
      `diagonal 15' 2 3/8", from north-east to south-west`,
    ),
  ),
  shown(
    'the likely slip among distances',
    lines(
      'bunk',
      ...LOOSE,
      `diagonal 15', from north-west to south-east`,
      `diagonal 16', from north-east to south-west`,
      `across 9', from north to south, middle`,
    ),
  ),
  shown(
    'one of several distances',
    lines(
      'bunk',
      ...LOOSE,
      `diagonal 15' 1", from north-west to south-east`,
      `diagonal 15', from north-east to south-west`,
    ),
  ),
  shown(
    'distances that no slip explains',
    lines(
      'bunk',
      ...LOOSE,
      `diagonal 15', from north-west to south-east`,
      `diagonal 15' 2 3/8", from north-east to south-west`,
      `across 9' 2 3/8", from north to south, middle`,
    ),
  ),
  byHand('61 loose walls', () =>
    built(
      'bunk',
      Array.from(
        { length: 61 },
        (_, i): WallSaid => [(['north', 'east', 'south', 'west'] as const)[i % 4]!, `1'`],
      ),
      true,
    ),
  ),
  shown(
    'a notch deeper than its room',
    lines(
      'bunk',
      `north 10'`,
      `east 5'`,
      `south 4'`,
      `west 7'`,
      `south 2'`,
      `east 7'`,
      `south 4'`,
      `west 5'`,
    ),
  ),
  shown(
    'a notch as deep as its room',
    lines(
      'bunk',
      `north 10'`,
      `east 5'`,
      `south 4'`,
      `west 5'`,
      `south 2'`,
      `east 5'`,
      `south 4'`,
      `west 5'`,
    ),
  ),
  byHand('a wall straight back', () =>
    built('bunk', [
      ['north', `12'`],
      ['east', `9'`],
      ['south', `12'`],
      ['north', `12'`],
      ['south', `12'`],
      ['west', `9'`],
    ]),
  ),
  byHand('a wall of nothing', () =>
    built('bunk', [
      ['north', `12'`],
      ['east', `9'`],
      ['north', `0"`],
      ['south', `12'`],
      ['west', `9'`],
    ]),
  ),
  byHand('right to left', () =>
    built('bunk', [
      ['north', `12'`],
      ['west', `9'`],
      ['south', `12'`],
      ['east', `9'`],
    ]),
  ),
  byHand('five hundred kilometres', () =>
    built(
      'bunk',
      Array.from(
        { length: 12 },
        (_, i): WallSaid => [
          (
            [
              'north',
              'north',
              'north',
              'east',
              'east',
              'east',
              'south',
              'south',
              'south',
              'west',
              'west',
              'west',
            ] as const
          )[i]!,
          `99000 m`,
        ],
      ),
    ),
  ),
  shown(
    'a door past its wall once the room is closed',
    lines(
      'bunk',
      `north 12'`,
      `east 9'`,
      `south 12'`,
      `west 9' 3/4"`,
      `  door 32", 6' 4 3/4" from left`,
    ),
  ),
  shown(
    'a door on a curve',
    lines(
      'bunk',
      `north 12', 8" bow`,
      `  door 32", 2' from left`,
      `east 9'`,
      `south 12'`,
      `west 9'`,
    ),
  ),
  shown(
    'more than half a circle',
    lines('bunk', `north 12', 7' bow`, `east 9'`, `south 12'`, `west 9'`),
  ),
  shown(
    'jambs',
    lines(
      'bunk',
      `north 12'`,
      `  door 34", 1' 2" and 4' 2" from left`,
      `east 9'`,
      `south 12'`,
      `west 9'`,
    ),
  ),
  shown(
    'an alcove through a wall',
    lines(
      'l',
      `south 20'`,
      `west 8'`,
      `north 8'`,
      `  alcove 3', 1' from right, 2' deep`,
      `west 6'`,
      `  alcove 3', 1' from left, 5' deep`,
      `north 12'`,
      `east 14'`,
    ),
  ),
  shown(
    'a curve through a wall',
    lines('l', `south 20'`, `west 2'`, `north 18', 5' bow in`, `west 6'`, `north 2'`, `east 8'`),
  ),
  shown(
    'closets',
    lines(
      'bunk',
      `north 12'`,
      `  closet 4', 2' from left, 2' deep, 3' inside, called robe`,
      `east 9'`,
      `  closet 4', 2' from left, 2' deep, 6' inside, called linen`,
      `south 12'`,
      `  closet 4', 2' from left, 2' deep, 6' inside, 1' left return, 6" right return, called coats`,
      `west 9'`,
    ),
  ),
  shown(
    'a hearth as deep as the room',
    lines(
      'bunk',
      `north 12'`,
      `  hearth 4', 2' from left, 10' deep`,
      `east 9'`,
      `south 12'`,
      `west 9'`,
    ),
  ),
  shown('a column outside', box('bunk', PLAIN, `column 8" round, 13' from west, 2' from north`)),
  shown(
    'an island over a column and over a vent',
    box(
      'bunk',
      PLAIN,
      `column 8" round, 3' from west, 2' from north`,
      `island 3' east-west, 2' north-south, 2' from west, 1' from north, called worktop`,
      `vent 4" east-west, 10" north-south, 2' from west, 1' from north`,
    ),
  ),
  shown(
    'two doors, one written beyond',
    box(
      'a',
      PLAIN,
      `door 30", 1' from left, in south, to b`,
      `door 30", 6' from left, in south, to b`,
    ) + box('b', PLAIN, `door 30", 1' from left, in north, to a`),
  ),
  shown('a door to its own room', box('a', PLAIN, `door 30", 1' from left, in south, to a`)),
  shown(
    'two norths',
    box('a', PLAIN, `door 30", 1' from left, in south, to b`) +
      box('b', PLAIN, `door 30", 1' from left, in south, to a`),
  ),
  shown(
    'one door, two widths',
    box('hall', SHAPED, `door 30", 1' from left, in south, to bath`) +
      box('bath', SHAPED, `door 32", 1' from left, in north, to hall`),
  ),
  shown(
    'one wall, two thicknesses',
    box('hall', PLAIN, `door 30", 1' from left, in south, to bath, 4 1/2" thick`) +
      box('bath', PLAIN, `door 30", 1' from left, in north, to hall, 6" thick`),
  ),
  shown(
    'a door written from one side',
    box('hall', PLAIN, `door 30", 1' from left, in south, to bath`) + box('bath', PLAIN),
  ),
  shown(
    'a loop that does not come round',
    box(
      'a',
      PLAIN,
      `door 30", 1' from right, in south, to b`,
      `door 30", 1' from right, in east, to c`,
    ) +
      box(
        'b',
        PLAIN,
        `door 30", 1' from left, in north, to a`,
        `door 30", 1' from left, in east, to d`,
      ) +
      box(
        'c',
        PLAIN,
        `door 30", 1' from left, in west, to a`,
        `door 30", 1' from left, in south, to d`,
      ) +
      box(
        'd',
        PLAIN,
        `door 30", 1' from right, in west, to b`,
        `door 30", 1' 6" from right, in north, to c`,
      ),
  ),
  shown(
    'a door that comes out beside the room beyond',
    box(
      'a',
      PLAIN,
      `door 30", 1' from right, in south, to b, called front`,
      `door 30", 1' from right, in east, to b, called side`,
    ) + box('b', PLAIN, `door 30", 1' from left, in north, to a, called front`),
  ),
  shown(
    'rooms over each other',
    box(
      'a',
      PLAIN,
      `door 30", 1' from right, in south, to b`,
      `door 30", 1' from left, in south, to c`,
    ) +
      box('b', PLAIN, `door 30", 1' from left, in north, to a`) +
      box('c', PLAIN, `door 30", 1' from right, in north, to a`),
  ),
  shown(
    'a tie through a door',
    box(
      'a',
      PLAIN,
      `door 30", 1' from right, in south, to b`,
      `tie 18' 6", from north to south of b`,
    ) + box('b', PLAIN, `door 30", 1' from left, in north, to a`),
  ),
  shown(
    'a base of unknown thickness',
    box('bunk', PLAIN),
    `floorscribe 1\njob test\nunits feet-inches\ntape 1/16", touching base\nbase off and back\n`,
  ),
]
