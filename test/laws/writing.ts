import { format } from '../../server/src/language/format.ts'
import { apostropheJob } from './jobs.ts'
import type { Law } from './law.ts'
import { saidSorted } from './order.ts'
import {
  withBlankLines,
  withByteOrderMark,
  withOtherBlanks,
  withOtherEndings,
  withTrailingBlanks,
} from './transform/blanks.ts'
import { treeOf } from './transform/edit.ts'
import { withApostrophes, withCapitals, withLooseNames, withQuotes } from './transform/letters.ts'
import { withPhrasesShuffled } from './transform/phrases.ts'
import {
  withComments,
  withDeepNotes,
  withHeading,
  withPrices,
  withRemarks,
} from './transform/remarks.ts'
import { inEvery, inRoot } from './transform/texts.ts'
import { butPlaces, everyByte, everyNumber } from './views.ts'

const PLACES_MOVE = 'every report, but for the places in the text that it leads to'

const exactly = { stays: 'every report', compared: 'byte for byte', view: everyByte } as const
const butForPlaces = { stays: PLACES_MOVE, compared: 'byte for byte', view: butPlaces } as const

/** How a text is written, not what it says. */
export const WRITING: readonly Law[] = [
  {
    name: 'trailing blanks',
    change: 'blanks, tabs and no-break blanks at the ends of lines',
    ...butForPlaces,
    changed: (job, dice) => inEvery(job, (text) => withTrailingBlanks(text, dice)),
  },
  {
    name: 'blank lines',
    change: 'empty lines and lines of blanks anywhere',
    ...butForPlaces,
    changed: (job, dice) => inEvery(job, (text) => withBlankLines(text, dice)),
  },
  {
    name: 'other blanks',
    change: 'tabs, no-break, narrow and thin blanks, in runs, for blanks',
    ...butForPlaces,
    changed: (job, dice) => inEvery(job, (text) => withOtherBlanks(text, dice)),
  },
  {
    name: 'line ends',
    change: 'line ends of every system, mixed in one file',
    ...exactly,
    changed: (job, dice) => inEvery(job, (text) => withOtherEndings(text, dice)),
  },
  {
    name: 'byte order mark',
    change: 'a byte order mark at the start of each file',
    ...butForPlaces,
    changed: (job) => inEvery(job, withByteOrderMark),
  },
  {
    name: 'comments',
    change: 'comments after lines and on lines of their own',
    ...butForPlaces,
    changed: (job, dice) => inEvery(job, (text) => withComments(text, dice)),
  },
  {
    name: 'notes and tags',
    change: 'notes and tags between the lines of any block',
    ...butForPlaces,
    changed: (job, dice) => inEvery(job, (text) => withRemarks(text, dice)),
  },
  {
    name: 'notes of one line',
    change: 'notes below doors and closets, a step deeper',
    ...butForPlaces,
    changed: (job, dice) => inEvery(job, (text) => withDeepNotes(text, dice)),
  },
  {
    name: 'heading',
    change: "the job's site, date, revision and a cleared hold",
    ...butForPlaces,
    changed: (job, dice) => inRoot(job, (text) => withHeading(text, dice)),
  },
  {
    name: 'prices',
    change: 'a price book put into the job',
    ...exactly,
    changed: (job) => inRoot(job, withPrices),
  },
  {
    name: 'capitals',
    change: "the language's own words in capitals",
    ...exactly,
    changed: (job, dice) => inEvery(job, (text) => withCapitals(text, dice)),
  },
  {
    name: 'loose names',
    change: 'names in capitals or with more blanks where they are used',
    stays: `${PLACES_MOVE}; letters and blanks of names aside`,
    compared: 'byte for byte',
    view: lettersAside,
    changed: (job, dice) => inEvery(job, (text) => withLooseNames(text, dice)),
  },
  {
    name: 'apostrophes',
    change: 'typographic apostrophes in names for straight ones, here and there',
    stays: `${PLACES_MOVE}; the kind of apostrophe aside`,
    compared: 'byte for byte',
    view: apostrophesAside,
    jobs: apostropheJob,
    changed: (job, dice) => inEvery(job, (text) => withApostrophes(text, dice)),
  },
  {
    name: 'names in quotes',
    change: 'quotes round names, where they are given and where they are used',
    ...butForPlaces,
    changed: (job, dice) => inEvery(job, (text) => withQuotes(text, dice)),
  },
  {
    name: 'phrases in any order',
    change: 'the order of the phrases of a line',
    stays: 'every report, but for the places and the order of what is said',
    compared: 'byte for byte',
    view: saidSorted,
    changed: (job, dice) => inEvery(job, (text) => withPhrasesShuffled(text, dice)),
  },
  {
    name: 'formatted',
    change: 'each file brought into the canonical form',
    stays: 'quantities, survey, layout, verdict and what is said, by code',
    compared: 'byte for byte',
    view: everyNumber,
    changed: (job, dice) =>
      inEvery(job, (text) => format(treeOf(withOtherBlanks(withComments(text, dice), dice)))),
  },
]

function lettersAside(compiled: Parameters<typeof butPlaces>[0]): string {
  return butPlaces(compiled).toLowerCase().replace(/ +/g, ' ')
}

function apostrophesAside(compiled: Parameters<typeof butPlaces>[0]): string {
  return butPlaces(compiled).replaceAll('’', "'")
}
