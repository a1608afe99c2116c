import type { Message } from '../facts/message.ts'
import type { TapeOptions } from '../units/tape.ts'
import { commonEnd, commonStart } from './common.ts'
import { asSaid, LARGEST_FILE, MOST_MESSAGES, parse } from './parse.ts'
import { type Cut, cutsOf, readStretch, type Stretch, unitsOf } from './stretch.ts'
import type { Line, Tree } from './tree.ts'
import { DEFAULT_TAPE_OPTIONS } from './units-line.ts'

/** A file as it was read last, and what of it may be used again when it is read the next time. */
export interface LiveFile {
  readonly tree: Tree
  readonly stretches: readonly Stretch[]
  /** Stretches that the last versions lost, by what they were read from: an undo finds its own again. */
  readonly spare: readonly Map<string, Stretch[]>[]
}

/** Through so many versions a stretch that was lost is found again. */
const VERSIONS = 3

/**
 * Reads the next version of a file: the same tree as `parse` gives, but whatever stands in stretches
 * that are as they were is the same objects as before, their spans moved to where they lie now. The time
 * is that of reading the stretches that changed and of comparing the others. Where a line bears on more
 * than its own stretch (a merge left open, more messages than are said) the file is read whole.
 */
export function parseAgain(before: LiveFile | null, file: string, text: string): LiveFile {
  if (before?.tree.text === text) return before
  const spare = [new Map(), ...(before?.spare ?? []).slice(0, VERSIONS - 1)]
  if (text.length > LARGEST_FILE) return { tree: parse(file, text), stretches: [], spare }
  const stretches = stretchesOf({ file, text, before, spare })
  placeInTurn(stretches)
  const messages = inTurn(stretches, (stretch) => stretch.messages)
  const isRead = messages.length <= MOST_MESSAGES && areApart(stretches)
  const tree = isRead ? treeOf(file, text, stretches, messages) : parse(file, text)
  return { tree, stretches, spare }
}

/** Its lines are put together when they are asked for: most steps look at blocks only. */
function treeOf(
  file: string,
  text: string,
  stretches: readonly Stretch[],
  messages: readonly Message[],
): Tree {
  let together: readonly Line[] | null = null
  return {
    file,
    text,
    get lines() {
      together ??= inTurn(stretches, ({ lines }) => lines)
      return together
    },
    blocks: inTurn(stretches, ({ blocks }) => blocks),
    messages: asSaid(messages),
  }
}

interface Next {
  readonly file: string
  readonly text: string
  readonly before: LiveFile | null
  readonly spare: readonly Map<string, Stretch[]>[]
}

/** The stretches of the next version: what did not change, and between it what was read anew. */
function stretchesOf(next: Next): readonly Stretch[] {
  const { file, text, before } = next
  const old = before?.stretches ?? []
  const { front, back } = unchanged(before, text)
  const from = old[front]?.anchor.at ?? 0
  const to = back === old.length ? text.length : placeFromEnd(before!, old[back]!, text)
  const cuts = cutsOf(text.slice(from, to), back === old.length)
  for (let i = front; i < back; i += 1) giveUp(old[i]!, next)
  const units = [
    ...old.slice(0, front),
    ...cuts.map((cut) => ({ units: unitsOf(file, cut.text) })),
    ...old.slice(back),
  ].find(({ units }) => units !== null)
  const tape = units?.units ?? DEFAULT_TAPE_OPTIONS
  const kept = (stretch: Stretch): Stretch => {
    if (isSameTape(stretch.tape, tape)) return stretch
    giveUp(stretch, next)
    return read(stretch, tape, next)
  }
  return [
    ...old.slice(0, front).map(kept),
    ...cuts.map((cut) => read(cut, tape, next)),
    ...old.slice(back).map(kept),
  ]
}

/**
 * Which stretches a text has in common with the version before: those up to `front` and those from
 * `back` on. The last one in front may have grown and the first one behind must begin at a margin, so
 * that the ones next to the change are cut anew.
 */
function unchanged(
  before: LiveFile | null,
  text: string,
): { readonly front: number; readonly back: number } {
  if (before === null || before.stretches.length === 0) return { front: 0, back: 0 }
  const { stretches: old, tree } = before
  const start = commonStart(tree.text, text)
  const end = tree.text.length - commonEnd(tree.text, text, start)
  const changed = old.findIndex(({ anchor, text }) => anchor.at + text.length > start)
  const front = Math.max(0, (changed < 0 ? old.length : changed) - 1)
  let back = old.length
  while (back > front && old[back - 1]!.opens && old[back - 1]!.anchor.at >= end) back -= 1
  if (back === old.length) return { front, back }
  const at = placeFromEnd(before, old[back]!, text)
  const isAtMargin = at === 0 || /[\r\n]/.test(text.charAt(at - 1))
  return { front, back: isAtMargin ? back : back + 1 }
}

/** Where a stretch lies now that is as far from the end as it was. */
function placeFromEnd({ tree }: LiveFile, { anchor }: Stretch, text: string): number {
  return anchor.at + text.length - tree.text.length
}

function read(cut: Cut, tape: TapeOptions, { file, spare }: Next): Stretch {
  const key = keyOf(cut, tape)
  for (const version of spare) {
    const found = version.get(key)?.pop()
    if (found !== undefined) return found
  }
  const { text, opens, isLast } = cut
  return readStretch(file, { text, opens, isLast }, tape)
}

function giveUp(stretch: Stretch, { spare }: Next): void {
  const key = keyOf(stretch, stretch.tape)
  const alike = spare[0]!.get(key)
  if (alike === undefined) spare[0]!.set(key, [stretch])
  else alike.push(stretch)
}

function keyOf({ isLast, text }: Cut, { style, bare }: TapeOptions): string {
  return `${isLast} ${style} ${bare} ${text}`
}

function isSameTape(a: TapeOptions, b: TapeOptions): boolean {
  return a.style === b.style && a.bare === b.bare
}

/** Moves each stretch to where it lies now. */
function placeInTurn(stretches: readonly Stretch[]): void {
  let at = 0
  let line = 1
  for (const { anchor, text, lines } of stretches) {
    anchor.at = at
    anchor.line = line
    at += text.length
    line += lines.length
  }
}

/** What each stretch has, one after the other. */
function inTurn<T>(
  stretches: readonly Stretch[],
  part: (stretch: Stretch) => readonly T[],
): readonly T[] {
  const all: T[] = []
  for (const stretch of stretches) for (const one of part(stretch)) all.push(one)
  return all
}

/** Whether no stretch bears on another, lines among them that a file has once. */
function areApart(stretches: readonly Stretch[]): boolean {
  const once = inTurn(stretches, (stretch) => stretch.once)
  return stretches.every(({ isApart }) => isApart) && new Set(once).size === once.length
}
