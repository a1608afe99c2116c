import { keyOf } from '../../../server/src/language/name.ts'
import type { Entry, Name } from '../../../server/src/language/tree.ts'
import type { Dice } from '../../generate/dice.ts'
import { edited, entriesOf, treeOf } from './edit.ts'
import type { Changed, Texts } from './texts.ts'

/** What a name is of: rooms and closets share their names, as do the openings of all rooms. */
export type NameKind = 'room' | 'wall' | 'product' | 'floor' | 'opening' | 'corner'

interface Used {
  readonly kind: NameKind
  readonly name: Name
  readonly isGiven: boolean
}

/** Every name of a kind that the text gives or uses, in written order. */
export function namesIn(text: string): readonly Used[] {
  return entriesOf(treeOf(text)).flatMap((entry) => [...ownName(entry), ...namesInPhrases(entry)])
}

const BLOCKS = new Set<string>(['room', 'product', 'floor'])

function ownName(entry: Entry): readonly Used[] {
  const name = entry.phrases[0]?.names[0]
  if (name === undefined || entry.phrases[0]!.form !== 'NAME') return []
  if (BLOCKS.has(entry.word)) return [{ kind: entry.word as NameKind, name, isGiven: true }]
  if (entry.word === 'corner' || entry.word === 'square') {
    return [{ kind: 'corner', name, isGiven: entry.word === 'corner' }]
  }
  if (entry.word !== 'rooms') return []
  return entry.phrases.flatMap(({ names }) =>
    names.map((each): Used => ({ kind: 'room', name: each, isGiven: false })),
  )
}

const KINDS: ReadonlyMap<string, NameKind> = new Map([
  ['ROOM', 'room'],
  ['WALL', 'wall'],
  ['CORNER', 'corner'],
  ['PRODUCT', 'product'],
])

function namesInPhrases(entry: Entry): readonly Used[] {
  return entry.phrases.flatMap(({ form, names }): readonly Used[] => {
    if (form === 'called NAME') return [{ kind: calledKind(entry), name: names[0]!, isGiven: true }]
    const kinds = form.match(/\b(ROOM|WALL|CORNER|PRODUCT)\b/g) ?? []
    return kinds.map((word, i) => ({ kind: KINDS.get(word)!, name: names[i]!, isGiven: false }))
  })
}

const OPENINGS = ['door', 'opening', 'pass-through', 'break', 'edge', 'alcove', 'hearth']

function calledKind({ word }: Entry): NameKind {
  if (word === 'closet') return 'room'
  return OPENINGS.includes(word) ? 'opening' : 'wall'
}

const FIXED = ['left', 'right', 'middle', 'outside', 'stair']
const WAY = /^(north|south|east|west)(-east|-west)?$/

/**
 * New names for all of some kinds, each as long as the old one, so that no line of a report is laid out
 * otherwise. A closet that has no name of its own takes its room's.
 */
export function renamed(job: Texts, kinds: readonly NameKind[], dice: Dice): Changed | null {
  const given = [...job.files.values()]
    .flatMap(namesIn)
    .filter(({ kind, isGiven }) => isGiven && kinds.includes(kind))
  const news = newNames(
    given.map(({ name }) => name.text),
    dice,
  )
  if (news.size === 0) return null
  const files = [...job.files].map(([path, text]) => [path, withNames(text, kinds, news)] as const)
  const back = (output: string) =>
    [...news.values()].reduce((text, { was, is }) => text.replaceAll(is, was), output)
  return { ...job, files: new Map(files), back }
}

interface NewName {
  readonly was: string
  readonly is: string
}

function newNames(olds: readonly string[], dice: Dice): Map<string, NewName> {
  const news = new Map<string, NewName>()
  const taken = new Set<string>()
  for (const was of olds) {
    if (news.has(keyOf(was))) continue
    let is = unlike(was, dice)
    while (taken.has(is)) is = unlike(was, dice)
    taken.add(is)
    news.set(keyOf(was), { was, is })
  }
  return news
}

/** Letters that stand together in no word of a report. */
const LETTERS = [...'qxzjvkQXZJVKßøñж']

function unlike(name: string, dice: Dice): string {
  return [...name].map((letter) => (letter === ' ' ? ' ' : dice.pick(LETTERS))).join('')
}

function withNames(
  text: string,
  kinds: readonly NameKind[],
  news: ReadonlyMap<string, NewName>,
): string {
  const edits = namesIn(text).flatMap(({ kind, name }) => {
    if (!kinds.includes(kind) || FIXED.includes(name.key) || WAY.test(name.key)) return []
    const is = news.get(name.key)?.is ?? closetOf(name, news)
    return is === null ? [] : [{ span: name.span, text: is }]
  })
  return edited(text, edits)
}

/** "bunk room closet" once the bunk room has another name. */
function closetOf({ key }: Name, news: ReadonlyMap<string, NewName>): string | null {
  const room = key.endsWith(' closet') ? news.get(key.slice(0, -' closet'.length)) : undefined
  return room === undefined ? null : `${room.is} closet`
}
