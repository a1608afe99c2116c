import { nearest } from '../facts/near.ts'
import type { Conflict } from './conflicts.ts'
import { type Content, readContent } from './content.ts'
import {
  brokenBlock,
  brokenDraft,
  type Draft,
  type DraftBlock,
  draftOf,
  isUnknown,
} from './drafts.ts'
import { checkFileLine } from './file-lines.ts'
import { keepLine } from './keep-line.ts'
import type { RawLine } from './lines.ts'
import { keyOf } from './name.ts'
import {
  type Placed,
  sayConflict,
  sayElsewhere,
  sayExtraIndent,
  sayLostIndent,
  sayNothingAbove,
  sayNoWord,
  sayUnknown,
  sayWithoutBlock,
} from './place-messages.ts'
import type { Reading } from './reading.ts'
import { tokenize } from './tokens.ts'
import type { Block, Line } from './tree.ts'
import { type Entered, homesOf, wordIn, wordsOf } from './vocabulary.ts'
import type { Home } from './words.ts'

/** A remark typed deeper than this belongs to the line above it. */
export const DEEPER = 3

/** Puts lines into blocks, and lines under lines: by their words, not by how deep they stand. */
export class Outline {
  private readonly reading: Reading
  private readonly lines: Line[] = []
  private readonly blocks: DraftBlock[] = []
  /** The word of column one that is nearest to one that was typed. */
  private readonly openings = new Map<string, string | null>()
  /** The last line that openings may stand under. */
  private wall: Draft | null = null
  /** The last line that may be taken again or remarked on. */
  private last: Draft | null = null
  /** The kinds of block that lines astray in this one belong to, as far as it was said. */
  private astray: readonly Home[] = []

  constructor(reading: Reading) {
    this.reading = reading
  }

  finish(): { readonly lines: readonly Line[]; readonly blocks: readonly Block[] } {
    return { lines: this.lines, blocks: this.blocks }
  }

  /** A line to be read. */
  add(raw: RawLine): void {
    if (raw.head === null) this.addHeadless(raw)
    else if (raw.indent === 0) this.addAtMargin(raw, raw.head.word)
    else this.addIndented(raw, raw.head.word)
  }

  /** A line with signs that make it unreadable; that is said already. */
  addUnread(raw: RawLine): void {
    const word = raw.head === null ? '' : keyOf(raw.head.word)
    if (raw.head === null) this.keep(raw)
    else if (raw.indent === 0) this.openBroken(raw, word)
    else this.addBroken(raw, word)
  }

  /** A line of a merge that was left open; `conflict` comes with its first line, and is said there. */
  addConflict(raw: RawLine, conflict: Conflict | null, lines: readonly RawLine[]): void {
    const mark = /^[<=>|]{7}/.test(this.typed(raw))
    if (conflict !== null) sayConflict(raw, lines[conflict.last]!, conflict, this.reading)
    if (raw.indent === 0 && raw.head !== null && !mark) this.openBroken(raw, raw.head.word)
    else if (conflict === null || this.block === null) this.keep(raw)
    else {
      this.block.broken = true
      this.addBroken(raw, '')
    }
  }

  private get block(): DraftBlock | null {
    return this.blocks[this.blocks.length - 1] ?? null
  }

  private typed(raw: RawLine): string {
    return this.reading.text.slice(raw.start, raw.end)
  }

  private placed(raw: RawLine, word: string): Placed {
    return { raw, word, block: this.block, reading: this.reading }
  }

  private keep(raw: RawLine): void {
    this.lines.push(keepLine(raw, 'text', true, this.reading))
  }

  private addHeadless(raw: RawLine): void {
    const typed = this.typed(raw).trimStart()
    if (typed === '' || typed.startsWith('#')) {
      this.lines.push(keepLine(raw, 'phrases', false, this.reading))
      return
    }
    if (this.block?.silent !== true) sayNoWord(raw, this.reading)
    if (raw.indent === 0) this.openBroken(raw, '')
    else this.addBroken(raw, '')
  }

  private addAtMargin(raw: RawLine, word: string): void {
    const entered = wordIn('file', word)
    const home = this.block?.home ?? null
    const lost = home === null ? null : wordIn(home, word)
    const placed = this.placed(raw, word)
    if (entered !== null) this.open(raw, entered)
    else if (lost !== null) {
      if (this.block?.silent !== true) sayLostIndent(placed)
      this.addEntry(raw, lost)
    } else {
      if (homesOf(word).length > 0) sayElsewhere(placed)
      else sayUnknown(placed, 'file')
      this.openBroken(raw, word)
    }
  }

  private addIndented(raw: RawLine, word: string): void {
    const { block } = this
    const home = block?.home ?? null
    const entered = home === null ? null : wordIn(home, word)
    const atMargin = wordIn('file', word)
    const placed = this.placed(raw, word)
    if (entered !== null) this.addEntry(raw, entered)
    else if (atMargin !== null && !this.meansHere(raw, home)) {
      sayExtraIndent(placed, atMargin)
      this.open(raw, atMargin)
    } else if (block?.silent === true) this.addBroken(raw, word)
    else if (home === null) {
      sayWithoutBlock(placed)
      this.openBroken(raw, word)
    } else {
      if (homesOf(word).length > 0) this.sayAstray(placed)
      else sayUnknown(placed, home)
      this.addBroken(raw, word)
    }
  }

  /** Where the line that opens a block is missing, all of its lines stand astray: the first is told. */
  private sayAstray(placed: Placed): void {
    const homes = homesOf(placed.word)
    if (homes.some((home) => this.astray.includes(home))) return
    sayElsewhere(placed)
    this.astray = [...this.astray, ...homes]
  }

  /**
   * An indented `room` with no name yet, or with a list, or in a floor that lists no rooms yet, is a
   * `rooms` of this block mistyped: it opens nothing, or the lines below would join it. Below a line that cannot be read, what may be one of
   * its lines (`base`) is one.
   */
  private meansHere(raw: RawLine, home: Home | null): boolean {
    const { end, word } = raw.head!
    if (this.block?.silent === true && homesOf(word).length > 0) return true
    const rest = this.reading.text.slice(end, raw.end).trim()
    if (home === null || (rest !== '' && !rest.includes(',') && !this.lacksRooms(word)))
      return false
    return nearest(word, wordsOf(home)) !== null
  }

  private lacksRooms(word: string): boolean {
    const { block } = this
    if (block === null || block.home !== 'floor' || word !== 'room') return false
    return !block.under.some((entry) => entry.word === 'rooms')
  }

  private open(raw: RawLine, entered: Entered): void {
    const { line, content } = this.read(raw, entered, this.reading)
    const entry = draftOf(raw, line, { word: entered.word.word, content }, this.reading)
    const first = content.phrases[0]
    checkFileLine(entry, this.blocks, this.reading)
    this.start({
      ...entry,
      name: first?.form === 'NAME' ? (first.names[0] ?? null) : null,
      home: entered.word.opens ?? null,
      silent: false,
    })
  }

  /** An unreadable line in column one opens a block all the same, so that its lines join no other. */
  private openBroken(raw: RawLine, word: string): void {
    const near = this.nearestOpening(word)
    const opens = near === null ? null : wordIn('file', near)?.word.opens
    const block = brokenBlock(raw, word, opens ?? homesOf(word)[0] ?? null, this.reading)
    this.lines.push(block.line)
    this.start(block)
  }

  /** A file that is no job may have a million of them, most alike. */
  private nearestOpening(word: string): string | null {
    const known = this.openings.get(word)
    if (known !== undefined) return known
    const near = nearest(word, wordsOf('file'))
    this.openings.set(word, near)
    return near
  }

  private start(block: DraftBlock): void {
    this.blocks.push(block)
    this.wall = null
    this.last = null
    this.astray = []
  }

  private addEntry(raw: RawLine, entered: Entered): void {
    const block = this.block!
    const muted = block.silent ? { ...this.reading, say: () => {} } : this.reading
    const { line, content } = this.read(raw, entered, muted)
    const entry = draftOf(raw, line, { word: entered.word.word, content }, this.reading)
    const parent = this.parentOf(entry, entered, raw)
    if (parent === null) {
      sayNothingAbove({ ...this.placed(raw, entry.word), reading: muted }, entered)
      entry.broken = true
    }
    ;(parent ?? block).under.push(entry)
    if (entered.word.takes === 'text' || entry.word === 'again') return
    this.last = entry
    if (isWall(entry.word)) this.wall = entry
  }

  /** The line that an entry belongs to: its block, or for some words a line above. Null: none there. */
  private parentOf(entry: Draft, entered: Entered, raw: RawLine): Draft | null {
    const { under, takes } = entered.word
    if (under === undefined) return this.block
    const fits = (draft: Draft | null): boolean =>
      draft !== null && (under.includes(draft.word) || isUnknown(draft))
    if (takes === 'text') return raw.indent >= DEEPER && fits(this.last) ? this.last : this.block
    if (entry.phrases.some((phrase) => phrase.form === 'in WALL')) return this.block
    const above = entry.word === 'again' ? this.last : this.wall
    return fits(above) ? above : null
  }

  /**
   * An unreadable line inside a block. Unless its word is near to an opening's it may be a wall, and
   * the openings below it wait under it: they never slide to the wall before.
   */
  private addBroken(raw: RawLine, word: string): void {
    if (this.block === null) {
      this.openBroken(raw, word)
      return
    }
    const entry = brokenDraft(raw, word, this.reading)
    this.lines.push(entry.line)
    const { home } = this.block
    const near = home === null ? null : nearest(word, wordsOf(home))
    const under = near === null || home === null ? undefined : wordIn(home, near)?.word.under
    const parent = under === undefined ? this.block : (this.wall ?? this.block)
    parent.under.push(entry)
    this.last = entry
    if (under === undefined) this.wall = entry
  }

  private read(
    raw: RawLine,
    entered: Entered,
    reading: Reading,
  ): { readonly line: Line; readonly content: Content } {
    const base = raw.head!.end
    const mode = entered.word.takes === 'text' ? 'text' : 'phrases'
    const tokens = tokenize(reading.text.slice(base, raw.end), mode)
    const content = readContent(entered, { base, tokens }, sparing(reading))
    const line = keepLine(raw, mode, !content.whole, reading, tokens)
    this.lines.push(line)
    return { line, content }
  }
}

/** One slip can spoil every phrase of its line; more than this about one line helps nobody. */
const MOST_PER_LINE = 2

function sparing(reading: Reading): Reading {
  let left = MOST_PER_LINE
  return {
    ...reading,
    say: (message) => {
      if (left > 0) reading.say(message)
      left -= 1
    },
  }
}

/** A line that openings stand under. */
function isWall(word: string): boolean {
  return wordIn('room', 'door')?.word.under?.includes(word) ?? false
}
