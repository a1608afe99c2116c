import { message } from '../facts/message.ts'
import { nearest } from '../facts/near.ts'
import { samplesIn } from '../units/samples.ts'
import { BLANKS, plainSigns } from '../units/signs.ts'
import type { Conflict } from './conflicts.ts'
import type { DraftBlock } from './drafts.ts'
import type { RawLine } from './lines.ts'
import { fixOf, type Reading, type Repair, sayError, shown, spanOf } from './reading.ts'
import { type Entered, homesOf, wordsOf } from './vocabulary.ts'
import type { Home } from './words.ts'

const BLANK_RUN = new RegExp(`[${BLANKS}]+`, 'g')

/** A line with a word, where it stands. */
export interface Placed {
  readonly raw: RawLine
  readonly word: string
  /** The block open above it. */
  readonly block: DraftBlock | null
  readonly reading: Reading
}

export function sayLostIndent(placed: Placed): void {
  const said = `${placed.word} is a line of a ${kindOf(placed)} and belongs indented. It is read as part of ${titleOf(placed)}.`
  const { start } = placed.raw
  warn(placed, 'indent-lost', said, { start, end: start, title: 'Indent the line', text: '  ' })
}

export function sayExtraIndent(placed: Placed, entered: Entered): void {
  const does = entered.word.opens === undefined ? 'belongs' : 'opens a block, so it belongs'
  const said = `${placed.word} ${does} in column one, and is read as if it stood there.`
  const { start, head } = placed.raw
  const repair = { start, end: head!.start, title: 'Take the indent out', text: '' }
  warn(placed, 'indent-extra', said, repair)
}

function warn(placed: Placed, code: string, said: string, repair: Repair): void {
  const { reading, raw } = placed
  const span = spanOf(reading, raw.head!.start, raw.head!.end)
  reading.say(message('warning', code, span, said, { fixes: [fixOf(reading, repair)] }))
}

/** What each kind of block is in a sentence. */
const KINDS: Readonly<Record<Home, string>> = {
  file: 'the file',
  job: 'the job',
  room: 'a room',
  product: 'a product',
  floor: 'a floor',
  prices: 'a price book',
}

/** What is most often meant where no word is near. */
const SUCH_AS: Readonly<Record<Home, string>> = {
  file: 'Blocks open with job, room, product, floor or prices.',
  job: 'Its lines are such as site, date or note.',
  room: 'A wall starts with the way you look at it, such as north; what stands in it with door, opening or closet.',
  product: 'Its lines are such as plank, box, joints or gap.',
  floor: 'Its lines are such as rooms, lay, start or edge.',
  prices: 'Its lines are such as price, labour or tax.',
}

/** A word of ours in a block that does not hold it. */
export function sayElsewhere(placed: Placed): void {
  const { block, word } = placed
  const kinds = homesOf(word).map((home) => KINDS[home])
  const here = block?.home == null ? 'in no block' : `in ${KINDS[block.home]}`
  const said =
    `${word} is a line of ${kinds.join(' or ')}, but stands ${here}. ` +
    `Is the line missing above it that opens ${kinds.length > 1 ? 'one' : 'it'}?`
  sayError(placed.reading, 'word-elsewhere', placed.raw.head!, said)
}

export function sayWithoutBlock(placed: Placed): void {
  const homes = homesOf(placed.word)
  const kinds = homes.length > 0 ? homes : ['job', 'room', 'product', 'floor', 'prices']
  const said =
    'This line is indented and belongs to no block. ' +
    `Above it is missing the line that opens one: ${kinds.join(', ')}.`
  sayError(placed.reading, 'line-without-block', placed.raw.head!, said)
}

/** A word that is none of ours: the nearest is offered, and what it costs until then is said. */
export function sayUnknown(placed: Placed, home: Home): void {
  const { word, raw, block, reading } = placed
  if (reading.isFull()) return
  if (!/^\p{L}/u.test(word)) {
    sayNoWord(raw, reading)
    return
  }
  const near = nearest(plainSigns(word), [...wordsOf(home), ...wordsOf(block?.home ?? home)])
  const where = home === 'file' ? 'No line in column one' : `No line of a ${kindOf(placed)}`
  const offer = near === null ? ` ${SUCH_AS[home]}` : ` Is ${near} meant?`
  const said = `${where} starts with "${shown(word)}".${offer} ${costOf(placed, home)}`
  const repair = near === null ? null : { ...raw.head!, title: `Write ${near}`, text: near }
  sayError(reading, 'word-unknown', raw.head!, said, repair)
}

function costOf(placed: Placed, home: Home): string {
  if (home === 'file') return 'Until then the lines below it are left out.'
  if (home !== 'room') return `Until then ${titleOf(placed)} is incomplete.`
  return `Until then ${titleOf(placed)} has no area; the other rooms keep theirs.`
}

/** A line that starts with no word at all. */
export function sayNoWord(raw: RawLine, reading: Reading): void {
  const typed = reading.text.slice(raw.start, raw.end).trimStart()
  const place = { start: raw.end - typed.length, end: raw.end }
  const said =
    "A line starts with one of the language's words, and what belongs to it follows: " +
    `${samplesIn('north 12\' 4"', reading.tape.style)}. "${shown(typed.trimEnd())}" does not.`
  sayError(reading, 'word-missing', place, said)
}

export function sayNothingAbove(placed: Placed, entered: Entered): void {
  const inWall = entered.word.forms.includes('in WALL') ? ', or says in which: in south' : ''
  const what = placed.word === 'again' ? 'the reading that was taken again' : 'its wall'
  const said = `${placed.word} stands below the line of ${what}${inWall}. There is none above it.`
  sayError(placed.reading, 'nothing-above', placed.raw.head!, said)
}

export function sayConflict(
  raw: RawLine,
  last: RawLine,
  conflict: Conflict,
  reading: Reading,
): void {
  const { ours, theirs } = conflict
  const lines = raw === last ? `line ${raw.number}` : `lines ${raw.number} to ${last.number}`
  const help =
    ours === null || theirs === null
      ? 'Not all of its marks are there: see that no line is left twice, and take out those that are.'
      : `Keep ${sideOf(ours)} (ours) or ${sideOf(theirs)} (theirs), and take the marks out.`
  const said = `A git merge was left open, ${lines}. ${help} No totals until then.`
  sayError(reading, 'merge-left-open', { start: raw.start, end: last.end }, said)
}

function sideOf(side: readonly string[]): string {
  return shown(side.join(' / ').replace(BLANK_RUN, ' ') || 'nothing')
}

function kindOf({ block }: Placed): string {
  return block?.word ?? 'job'
}

function titleOf({ block }: Placed): string {
  return block?.name?.text ?? (block?.home === 'job' ? 'the job' : `the ${block?.word}`)
}
