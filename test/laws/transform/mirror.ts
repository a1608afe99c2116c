import type { Block, Entry, Phrase, Tree } from '../../../server/src/language/tree.ts'
import { blocksNamed, type Edit, edited, entriesOf, treeOf } from './edit.ts'
import { inPlaceOf } from './order.ts'
import { groupsOf, listed } from './walls.ts'
import { waysOf } from './ways.ts'

/**
 * The whole house in a mirror that exchanges east and west: walls told the other way round, left for
 * right, and a lock of the other hand. Null where a wall is told by its turn from the one before.
 */
export function mirrored(text: string): string | null {
  const swapped = withSidesSwapped(text)
  if (swapped === null) return null
  const tree = treeOf(swapped)
  const rooms = blocksNamed(tree, 'room').filter((room) => room.under.length > 0)
  return inPlaceOf(
    tree,
    rooms.flatMap((room) => room.under),
    rooms.flatMap(wallsReversed),
  )
}

/** The first wall stays first: by it a room out of square lies on the plan. */
function wallsReversed(room: Block): readonly Entry[] {
  const { walls, free } = groupsOf(room)
  const [first, ...others] = walls
  if (first === undefined) return free
  // A corner's name stood behind the wall that it now stands before.
  const ring = listed([first, ...others.toReversed()], 'corner first')
  return first.corner === null
    ? [...ring, ...free]
    : [...ring.filter((entry) => entry !== first.corner), first.corner, ...free]
}

const SIDES: ReadonlyMap<string, string> = new Map([
  ['left', 'right'],
  ['right', 'left'],
])

function withSidesSwapped(text: string): string | null {
  const tree = treeOf(text)
  const entries = entriesOf(tree)
  if (entries.some(({ phrases }) => phrases.some(({ form }) => form.startsWith('ANGLE'))))
    return null
  if (entries.some(hasTwoPartsOfAKind)) return null
  const edits = entries.flatMap((entry) => [
    ...headEdit(entry),
    ...partsReversed(tree, entry),
    ...otherHand(entry),
    ...entry.phrases.flatMap((phrase) => phraseEdits(tree, phrase, entry.word)),
  ])
  return edited(text, edits)
}

/** Two parts of a kind are told apart by the order of the lines that say more of them. */
function hasTwoPartsOfAKind({ word, phrases }: Entry): boolean {
  const kinds = phrases.map(({ form }) => form).filter((form) => form !== 'LENGTH')
  return word === 'parts' && new Set(kinds).size < kinds.length
}

function headEdit({ word, wordSpan }: Entry): readonly Edit[] {
  return /east|west/.test(word) ? [{ span: wordSpan, text: eastForWest(word) }] : []
}

/** A product that does not say its hand is laid left to right. */
function otherHand({ word, line, under }: Entry): readonly Edit[] {
  if (word !== 'product' || under.some((entry) => entry.word === 'laid')) return []
  const { end } = line.span
  return [{ span: { start: end, end }, text: '\n  laid        right to left' }]
}

function partsReversed({ text }: Tree, { word, phrases }: Entry): readonly Edit[] {
  if (word !== 'parts') return []
  return phrases.map(({ span }, i) => {
    const other = phrases[phrases.length - 1 - i]!.span
    return { span, text: text.slice(other.start, other.end) }
  })
}

function phraseEdits(tree: Tree, phrase: Phrase, word: string): readonly Edit[] {
  if (word === 'parts') return []
  return [...sideEdits(tree, phrase), ...wayEdits(tree, phrase, word)]
}

function sideEdits({ text }: Tree, { span, names }: Phrase): readonly Edit[] {
  const isName = (at: number) => names.some((name) => name.span.start <= at && at < name.span.end)
  return [...text.slice(span.start, span.end).matchAll(/\b(left|right)\b/g)]
    .map(({ 0: side, index }) => ({ side, start: span.start + index }))
    .filter(({ start }) => !isName(start))
    .map(({ side, start }) => ({
      span: { start, end: start + side.length },
      text: SIDES.get(side)!,
    }))
}

/** A slant is walked the other way too: what took one east still does, and north is south. */
function wayEdits(tree: Tree, phrase: Phrase, word: string): readonly Edit[] {
  if (/east-west|north-south/.test(phrase.form) && !phrase.form.includes('WAY')) {
    return waysOf(tree, phrase)
      .filter(({ way }) => /^north-(east|west)$/.test(way))
      .map(({ span, way }) => ({ span, text: eastForWest(way) }))
  }
  const other = phrase.form === 'LENGTH WAY' && word !== 'shift' ? northForSouth : eastForWest
  return waysOf(tree, phrase).map(({ span, way }) => ({ span, text: other(way) }))
}

function eastForWest(way: string): string {
  return way.replace(/east|west/, (side) => (side === 'east' ? 'west' : 'east'))
}

function northForSouth(way: string): string {
  return way.replace(/north|south/, (side) => (side === 'north' ? 'south' : 'north'))
}
