import { isWallWord } from '../../job/ways.ts'
import type { NameWanted } from '../../language/forms.ts'
import type { Block, Entry } from '../../language/tree.ts'
import { wordIn, wordsOf } from '../../language/vocabulary.ts'
import type { Home, Word } from '../../language/word.ts'
import { printLength } from '../../units/print.ts'
import type { LineScope } from '../place/line-scope.ts'
import { roomSkeleton } from '../room-skeleton.ts'
import { text } from '../writing/insert.ts'
import { writtenName } from '../writing/written-name.ts'
import type { Completion } from './completion-item.ts'
import { type Filling, MOST_CHOICES } from './form-insert.ts'
import { nameChoices } from './name-choices.ts'
import { type NextWall, nextWalls } from './next-wall.ts'
import { usualLine } from './usual-lines.ts'

/** What may begin a line: in column one words of the file and of the block above, below a block its lines. */
export function completeWord(scope: LineScope): readonly Completion[] {
  const { line, home, block } = scope
  const filling = fillingOf(scope)
  const lines = home === null || block === null ? [] : lineWords(scope, home, block, filling)
  if (line.indent > 0 && home !== null) return lines
  const isBlank = line.head === null
  // Where a block is being filled the next of its lines is likelier than another block.
  return isBlank
    ? [...lines, ...fileWords(scope, filling)]
    : [...fileWords(scope, filling), ...lines]
}

function fileWords(scope: LineScope, filling: Filling): readonly Completion[] {
  const there = new Set(scope.view.tree.blocks.map(({ word }) => word))
  const words = wordsOf('file').filter((word) => mayStandAgain(word) || !there.has(word))
  return [
    ...words.map((word) => wordOffer(scope, wordIn('file', word)!.word, '', filling)),
    ...skeletons(scope),
  ]
}

const OFTEN_IN_FILE: readonly string[] = ['include', 'room', 'product', 'floor', 'prices']

function mayStandAgain(word: string): boolean {
  return OFTEN_IN_FILE.includes(word)
}

function skeletons(scope: LineScope): readonly Completion[] {
  const offer = (label: string, walls: number, detail: string): Completion => ({
    ...placed(scope),
    label,
    kind: 'skeleton',
    detail,
    insert: roomSkeleton(walls)!,
    filter: label,
  })
  return [
    offer(
      'room, four walls',
      4,
      'A room whose readings are still to be taken: tab goes from one to the next.',
    ),
    offer('room, six walls', 6, 'An L-shaped room whose readings are still to be taken.'),
  ]
}

function lineWords(
  scope: LineScope,
  home: Home,
  block: Block,
  filling: Filling,
): readonly Completion[] {
  const indent = scope.line.indent === 0 ? '  ' : ''
  const walls = home === 'room' ? nextWalls(block, scope.line.span.start) : []
  const ways = walls.map(({ way }) => way as string)
  const others = othersOf(block, scope)
  const words = wordsOf(home).filter((word) => mayStand(word, home, others))
  const rank = (word: string): number => (ways.includes(word) ? ways.indexOf(word) : ways.length)
  const offers = words.map((word) => {
    const offer = wordOffer(scope, wordIn(home, word)!.word, indent, filling)
    const wall = walls.find(({ way }) => way === word)
    return wall === undefined ? offer : wallOffer(offer, wall, wall === walls[0], scope)
  })
  return offers.toSorted((a, b) => rank(a.label) - rank(b.label))
}

function wallOffer(
  offer: Completion,
  { closes }: NextWall,
  likely: boolean,
  { view }: LineScope,
): Completion {
  if (closes === null) return { ...offer, likely }
  const length = printLength(closes, view.measured.job.units)
  const detail = `It closes the room, and from the other walls should come to about ${length}: read it all the same.`
  return { ...offer, likely, detail }
}

/** Lines of which a block has no more than one. */
const ONCE: Readonly<Record<Home, readonly string[]>> = {
  file: [],
  job: ['site', 'date', 'revision'],
  room: ['out of square', 'tape', 'base', 'subfloor', 'existing'],
  product: ['plank', 'box', 'pad', 'joints', 'gap', 'run', 'laid', 'cut', 'spoil', 'spares'],
  floor: ['rooms', 'lay', 'start', 'shift'],
  prices: [],
}

/** What a block says on its other lines, as far as it tells what may stand on one of them. */
interface Others {
  readonly words: ReadonlySet<string>
  readonly hasWallAbove: boolean
  /** The last line above that is no remark. */
  readonly lastAbove: Entry | undefined
}

function othersOf(block: Block, { line }: LineScope): Others {
  const others = block.under.filter((entry) => entry.line.number !== line.number)
  const above = others.filter((entry) => entry.line.number < line.number)
  return {
    words: new Set(others.map(({ word }) => word)),
    hasWallAbove: above.some(({ word }) => isWallWord(word)),
    lastAbove: above.findLast(({ text }) => text === ''),
  }
}

/** Whether a line may stand here: once where it stands once, below its wall where it needs one. */
function mayStand(word: string, home: Home, { words, hasWallAbove, lastAbove }: Others): boolean {
  if (ONCE[home].includes(word)) return !words.has(word)
  const { under, takes } = wordIn(home, word)!.word
  if (word === 'corner') return hasWallAbove
  if (under === undefined || takes === 'text') return true
  if (word !== 'again') return hasWallAbove
  const readings = lastAbove === undefined ? [] : [lastAbove, ...lastAbove.under]
  return readings.some((entry) => under.includes(entry.word))
}

function wordOffer(scope: LineScope, word: Word, indent: string, filling: Filling): Completion {
  const { rest, line } = scope
  const isAlone = rest.text.trim() === '' || line.head === null
  const depth = word.home === 'file' ? 0 : indent.length + line.indent
  const insert = isAlone ? usualLine(word, depth, filling) : [text(word.word)]
  return {
    ...placed(scope),
    label: word.word,
    kind: word.home === 'file' ? 'block' : 'line',
    detail: word.says,
    insert: [...(indent === '' ? [] : [text(indent)]), ...insert],
    filter: word.word,
  }
}

/** Names for the places of a line; each kind is looked up once, however many lines are offered. */
function fillingOf({ view, block, offset, said, tape }: LineScope): Filling {
  const known = new Map<NameWanted, readonly string[]>()
  const names = (wanted: NameWanted): readonly string[] => {
    const there = known.get(wanted)
    if (there !== undefined || block === null) return there ?? []
    const form = wanted === 'ROOM' ? 'to ROOM' : ''
    const place = { view, block, word: '', form, position: 0, offset, said }
    const choices = nameChoices(wanted, place).slice(0, MOST_CHOICES)
    const made = choices.map(({ name }) => writtenName(name))
    known.set(wanted, made)
    return made
  }
  return { style: tape.style, names }
}

/** It replaces what is typed of the word. */
function placed({ line, view, offset }: LineScope) {
  const { head } = line
  const start = head?.span.start ?? offset
  const end = head === null ? offset : Math.max(offset, head.span.end)
  return { span: { file: view.file, start: Math.min(start, offset), end }, likely: false }
}
