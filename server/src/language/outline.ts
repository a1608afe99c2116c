import { message } from '../facts/message.ts'
import { nearest } from '../facts/near.ts'
import type { Conflict } from './conflicts.ts'
import { type Content, readContent } from './entries.ts'
import { endOfToken } from './grammar.ts'
import type { RawLine } from './lines.ts'
import { keyOf, nameOf } from './name.ts'
import { fixOf, type Reading, type Repair, sayError, shown, spanOf } from './reading.ts'
import { tokenize } from './tokens.ts'
import type { Block, Entry, Line, Name, Token } from './tree.ts'
import { type Entered, homesOf, wordIn, wordsOf } from './vocabulary.ts'
import type { Home } from './words.ts'

/** An entry while lines may still be added under it. */
interface Draft extends Entry {
  readonly under: Draft[]
  broken: boolean
}

interface DraftBlock extends Draft {
  readonly name: Name | null
  /** What kind of lines it holds; null below a file line. */
  readonly home: Home | null
  /** Opened by an unreadable line: what stands below is kept and nothing more is said about it. */
  readonly silent: boolean
}

const DEEPER = 3

/** Puts lines into blocks, and lines under lines: by their words, not by how deep they stand. */
export class Outline {
  private readonly reading: Reading
  private readonly lines: Line[] = []
  private readonly blocks: DraftBlock[] = []
  private readonly once = new Map<string, Line>()
  /** The last line that openings may stand under. */
  private wall: Draft | null = null
  /** The last line that may be taken again or remarked on. */
  private last: Draft | null = null

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
    if (raw.indent === 0 && raw.head !== null) this.openBroken(raw, word)
    else if (raw.head !== null && this.block !== null) this.addBroken(raw, word)
    else this.keep(raw, 'text', true)
  }

  /** A line of a merge that was left open; `conflict` is given with its first line. */
  addConflict(raw: RawLine, conflict: Conflict | null, lines: readonly RawLine[]): void {
    if (conflict !== null) this.openConflict(raw, conflict, lines)
    const mark = /^[<=>|]{7}/.test(this.typed(raw))
    if (raw.indent === 0 && raw.head !== null && !mark) this.openBroken(raw, raw.head.word)
    else if (conflict === null) this.keep(raw, 'text', true)
  }

  private openConflict(raw: RawLine, conflict: Conflict, lines: readonly RawLine[]): void {
    const [ours, theirs] = [conflict.ours, conflict.theirs].map((side) => side.join(' / '))
    const last = lines[conflict.last]!
    const place = { start: raw.start, end: last.end }
    const keep =
      ours === '' && theirs === ''
        ? 'Keep one side and take the marks out.'
        : `Keep ${shown(ours || 'nothing')} (ours) or ${shown(theirs || 'nothing')} (theirs), and take the marks out.`
    const said = `A git merge was left open, lines ${raw.number} to ${last.number}. ${keep} No totals until then.`
    sayError(this.reading, 'merge-left-open', place, said)
    if (this.block === null) this.keep(raw, 'text', true)
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

  private addHeadless(raw: RawLine): void {
    const typed = this.typed(raw).trimStart()
    if (typed === '' || typed === '\ufeff' || typed.startsWith('#')) {
      this.keep(raw, 'phrases', false)
      return
    }
    const start = raw.end - typed.length
    if (this.block?.silent !== true) {
      const said = `A line starts with one of the language's words, and ${shown(typed)} does not.`
      sayError(this.reading, 'word-missing', { start, end: raw.end }, said)
    }
    if (raw.indent === 0) this.openBroken(raw, '')
    else this.addBroken(raw, '')
  }

  private addAtMargin(raw: RawLine, word: string): void {
    const entered = wordIn('file', word)
    const home = this.block?.home ?? null
    const lost = home === null ? null : wordIn(home, word)
    if (entered !== null) this.open(raw, entered)
    else if (lost !== null) {
      if (this.block?.silent !== true) this.sayLostIndent(raw, word)
      this.addEntry(raw, lost)
    } else {
      if (homesOf(word).length > 0) this.sayElsewhere(raw, word)
      else this.sayUnknown(raw, word, 'file')
      this.openBroken(raw, word)
    }
  }

  private addIndented(raw: RawLine, word: string): void {
    const { block } = this
    const home = block?.home ?? null
    const entered = home === null ? null : wordIn(home, word)
    const atMargin = wordIn('file', word)
    if (entered !== null) this.addEntry(raw, entered)
    else if (atMargin !== null) {
      this.sayExtraIndent(raw, word, atMargin)
      this.open(raw, atMargin)
    } else if (block?.silent === true) this.addBroken(raw, word)
    else if (block === null || home === null) {
      this.sayWithoutBlock(raw, word)
      this.openBroken(raw, word)
    } else {
      if (homesOf(word).length > 0) this.sayElsewhere(raw, word)
      else this.sayUnknown(raw, word, home)
      this.addBroken(raw, word)
    }
  }

  // Opening blocks

  private open(raw: RawLine, entered: Entered): void {
    const { line, content } = this.read(raw, entered, this.reading)
    this.start({
      ...draft(raw, line, entered.word.word, content, this.reading),
      name: content.phrases[0]?.form === 'NAME' ? (content.phrases[0].names[0] ?? null) : null,
      home: entered.word.opens ?? null,
      silent: false,
    })
    this.checkFileLine(raw, line, entered, content)
  }

  /** An unreadable line in column one opens a block all the same, so that its lines join no other. */
  private openBroken(raw: RawLine, word: string): void {
    const line = this.keep(raw, 'text', true)
    const text = restText(line)
    const near = nearest(word, wordsOf('file'))
    const home =
      (near === null ? null : wordIn('file', near)?.word.opens) ?? homesOf(word)[0] ?? null
    const span = spanOf(this.reading, raw.head?.end ?? raw.start, raw.end)
    this.start({
      ...brokenDraft(raw, line, word, this.reading),
      name: text === '' ? null : nameOf(text, span),
      home,
      silent: true,
    })
  }

  private start(block: DraftBlock): void {
    this.blocks.push(block)
    this.wall = null
    this.last = null
  }

  /** What only the whole file shows: the version, and lines that a file has once. */
  private checkFileLine(raw: RawLine, line: Line, entered: Entered, content: Content): void {
    const { word } = entered.word
    if (word !== 'floorscribe' && word !== 'units') return
    const first = this.once.get(word)
    if (first !== undefined) {
      const said = `A file has one ${word} line, and line ${first.number} is one already. Keep one of them.`
      sayError(this.reading, 'line-twice', raw.head!, said)
    }
    this.once.set(word, first ?? line)
    const figure = content.phrases[0]?.measures[0]?.figure
    if (word !== 'floorscribe' || figure?.kind !== 'number' || figure.value.n <= 1n) return
    const said = `This file is written in floorscribe ${figure.text}, and this release reads floorscribe 1. Words that came later are kept and not understood.`
    const span = spanOf(this.reading, raw.head!.start, raw.end)
    this.reading.say(message('warning', 'version-later', span, said))
  }

  // Adding lines to a block

  private addEntry(raw: RawLine, entered: Entered): void {
    const block = this.block!
    const muted = block.silent ? { ...this.reading, say: () => {} } : this.reading
    const { line, content } = this.read(raw, entered, muted)
    const entry = draft(raw, line, entered.word.word, content, this.reading)
    const parent = this.parentOf(entry, entered, raw)
    if (parent === null) {
      this.sayNothingAbove(raw, entered, muted)
      entry.broken = true
    }
    ;(parent ?? block).under.push(entry)
    if (entered.word.takes === 'text' || entry.word === 'again') return
    this.last = entry
    if (isWall(entered)) this.wall = entry
  }

  /** The line that an entry belongs to: its block, or for some words a line above. Null: none there. */
  private parentOf(entry: Draft, entered: Entered, raw: RawLine): Draft | null {
    const { under, takes } = entered.word
    if (under === undefined) return this.block
    const fits = (draft: Draft | null): boolean =>
      draft !== null && (under.includes(draft.word) || isUnknown(draft))
    if (takes === 'text') {
      return raw.indent >= DEEPER && fits(this.last) ? this.last : this.block
    }
    if (entry.phrases.some((phrase) => phrase.form === 'in WALL')) return this.block
    const above = entry.word === 'again' ? this.last : this.wall
    return fits(above) ? above : null
  }

  private addBroken(raw: RawLine, word: string): void {
    const line = this.keep(raw, 'text', true)
    const entry = brokenDraft(raw, line, word, this.reading)
    const block = this.block!
    const near = block.home === null ? null : nearest(word, wordsOf(block.home))
    const meant = near === null || block.home === null ? null : wordIn(block.home, near)
    const parent = meant?.word.under === undefined ? block : (this.wall ?? block)
    parent.under.push(entry)
    this.last = entry
    if (meant?.word.under === undefined) this.wall = entry
  }

  private read(raw: RawLine, entered: Entered, reading: Reading) {
    const base = raw.head!.end
    const mode = entered.word.takes === 'text' ? 'text' : 'phrases'
    const tokens = tokenize(reading.text.slice(base, raw.end), mode)
    const content = readContent(entered, { base, tokens }, reading)
    return { content, line: this.keep(raw, mode, !content.whole, tokens) }
  }

  /** Adds a line with its tokens, so that nothing of the text is ever lost. */
  private keep(
    raw: RawLine,
    mode: 'text' | 'phrases',
    broken: boolean,
    cutAlready?: ReturnType<typeof tokenize>,
  ): Line {
    const { file, text } = this.reading
    const at = (kind: string, start: number, end: number): Token => ({
      kind,
      text: text.slice(start, end),
      span: { file, start, end },
    })
    const tokens: Token[] = []
    const bodyStart = raw.head?.start ?? firstSign(text, raw)
    if (bodyStart > raw.start) tokens.push(at('blank', raw.start, bodyStart))
    if (raw.head !== null) tokens.push(at('head', raw.head.start, raw.head.end))
    const base = raw.head?.end ?? bodyStart
    if (raw.head === null && text.charAt(base) === '#') tokens.push(at('comment', base, raw.end))
    else {
      for (const token of cutAlready ?? tokenize(text.slice(base, raw.end), mode)) {
        const start = base + token.startOffset
        tokens.push(at(token.tokenType.name, start, base + endOfToken(token)))
      }
    }
    const comment = tokens.findLast((token) => token.kind === 'comment')?.span ?? null
    const head =
      raw.head === null
        ? null
        : { word: raw.head.word, span: { file, start: raw.head.start, end: raw.head.end } }
    const line: Line = {
      span: { file, start: raw.start, end: raw.end },
      number: raw.number,
      ending: raw.ending,
      indent: raw.indent,
      tokens,
      head,
      comment,
      broken,
    }
    this.lines.push(line)
    return line
  }

  // What is said about where lines stand

  private sayLostIndent(raw: RawLine, word: string): void {
    const said = `${word} is a line of a ${this.kind} and is indented. Read as part of ${this.title}.`
    const repair = { start: raw.start, end: raw.start, title: 'Indent the line', text: '  ' }
    this.warn(raw, 'indent-lost', said, repair)
  }

  private sayExtraIndent(raw: RawLine, word: string, entered: Entered): void {
    const does = entered.word.opens === undefined ? 'stands in' : 'opens a block and starts in'
    const said = `${word} ${does} column one. Read so.`
    const repair = {
      start: raw.start,
      end: raw.head!.start,
      title: 'Take the indent out',
      text: '',
    }
    this.warn(raw, 'indent-extra', said, repair)
  }

  private warn(raw: RawLine, code: string, said: string, repair: Repair): void {
    const span = spanOf(this.reading, raw.head!.start, raw.head!.end)
    const fixes = [fixOf(this.reading, repair)]
    this.reading.say(message('warning', code, span, said, { fixes }))
  }

  private sayElsewhere(raw: RawLine, word: string): void {
    const homes = homesOf(word)
      .map((home) => `a ${home}`)
      .join(' or ')
    const said = `${word} is a line of ${homes}, and does not stand here. It is indented below the line that opens ${homes}.`
    sayError(this.reading, 'word-elsewhere', raw.head!, said)
  }

  private sayWithoutBlock(raw: RawLine, word: string): void {
    const homes = homesOf(word)
    const kinds = homes.length === 0 ? ['job', 'room', 'product', 'floor', 'prices'] : homes
    const said = `This line is indented and belongs to no block. Above it is missing a line that opens one: ${kinds.join(', ')}.`
    sayError(this.reading, 'line-without-block', raw.head!, said)
  }

  private sayUnknown(raw: RawLine, word: string, home: Home): void {
    const near = nearest(word, [...wordsOf(home), ...wordsOf(this.block?.home ?? home)])
    const where = home === 'file' ? 'No line in column one' : `No line of a ${this.kind}`
    const offer = near === null ? '' : ` ${near}?`
    const cost = home === 'file' ? 'the lines below it are left out' : `${this.title} is incomplete`
    const later = this.laterVersion()
    const said = `${where} starts with "${shown(word)}".${offer}${later} Until then ${cost}; the rest keeps its numbers.`
    const place = raw.head!
    const repair = near === null ? null : { ...place, title: `Write ${near}`, text: near }
    sayError(this.reading, 'word-unknown', place, said, repair)
  }

  private laterVersion(): string {
    const version = this.blocks.find((block) => block.word === 'floorscribe')
    const figure = version?.phrases[0]?.measures[0]?.figure
    if (figure?.kind !== 'number' || figure.value.n <= 1n) return ''
    return ` The file is floorscribe ${figure.text}, this release reads floorscribe 1: the word may be newer.`
  }

  private sayNothingAbove(raw: RawLine, entered: Entered, reading: Reading): void {
    const { word, forms } = entered.word
    const inWall = forms.includes('in WALL') ? `, or says which: in south` : ''
    const what = word === 'again' ? 'the reading that was taken again' : 'its wall'
    const said = `${word} stands below the line of ${what}${inWall}. There is none above it.`
    sayError(reading, 'nothing-above', raw.head!, said)
  }

  private get kind(): string {
    return this.block?.word ?? 'job'
  }

  private get title(): string {
    const { block } = this
    return block?.name?.text ?? (block?.home === 'job' ? 'the job' : `the ${block?.word}`)
  }
}

function draft(raw: RawLine, line: Line, word: string, content: Content, reading: Reading): Draft {
  return {
    word,
    line,
    wordSpan: spanOf(reading, raw.head!.start, raw.head!.end),
    phrases: content.phrases,
    text: content.text,
    textSpan: spanOf(reading, content.textStart, content.textEnd),
    broken: !content.whole,
    under: [],
  }
}

function brokenDraft(raw: RawLine, line: Line, word: string, reading: Reading): Draft {
  const start = raw.head?.start ?? raw.start
  const end = raw.head?.end ?? raw.start
  return {
    word,
    line,
    wordSpan: spanOf(reading, start, end),
    phrases: [],
    text: restText(line),
    textSpan: spanOf(reading, end, raw.end),
    broken: true,
    under: [],
  }
}

function restText(line: Line): string {
  return line.tokens
    .filter((token) => token.kind === 'text')
    .map((token) => token.text)
    .join(' ')
}

function firstSign(text: string, raw: RawLine): number {
  const bom = raw.start === 0 && text.charCodeAt(0) === 0xfeff ? 1 : 0
  return raw.start + bom + raw.indent
}

/** A line that openings stand under. */
function isWall(entered: Entered): boolean {
  return wordIn('room', 'door')?.word.under?.includes(entered.word.word) ?? false
}

function isUnknown(entry: Entry): boolean {
  return entry.broken && wordIn('room', entry.word) === null
}
