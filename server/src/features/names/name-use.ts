import type { Block, Entry, Name, Phrase } from '../../language/tree.ts'
import { WALL_WORDS } from '../../language/word.ts'

/** What a name is the name of. A `room` may be a closet too; `free` is nothing that the job knows. */
export type NameKind =
  | 'room'
  | 'wall'
  | 'corner'
  | 'opening'
  | 'closet'
  | 'recess'
  | 'obstacle'
  | 'product'
  | 'floor'
  | 'prices'
  | 'trim'
  | 'code'
  | 'free'

/** A name where it stands: whether the line gives it or uses it, and what it is looked up in. */
export interface NameUse {
  readonly name: Name
  readonly kind: NameKind
  readonly gives: boolean
  /** The room that a wall is looked up in, where the phrase names one; null for the block's own. */
  readonly of: Name | null
  /** For the name of a doorway outside a room: the rooms on its two sides. */
  readonly between: readonly [Name, Name] | null
}

const NAMED_BLOCKS: readonly string[] = ['room', 'product', 'floor', 'prices']

/** The names on one line of a block, in written order. */
export function namesOn(block: Block, entry: Entry): readonly NameUse[] {
  if (entry === block) {
    const isKnown = block.name !== null && NAMED_BLOCKS.includes(block.word)
    return isKnown ? [given(block.name, block.word as NameKind)] : []
  }
  return entry.phrases.flatMap((phrase) => namesInPhrase(block, entry, phrase))
}

function namesInPhrase(block: Block, entry: Entry, phrase: Phrase): readonly NameUse[] {
  const [first, second, third] = phrase.names
  if (first === undefined) return []
  switch (phrase.form) {
    case 'NAME':
      return phrase.names.map((name) => listed(entry, name))
    case 'called NAME':
      return [called(block, entry, first)]
    case 'with TRIM':
      return [used(first, 'trim')]
    case 'PRODUCT':
      return [used(first, 'product')]
    case 'to ROOM':
    case 'open to ROOM':
    case 'ROOM to ROOM':
      return phrase.names.map((name) => used(name, 'room'))
    case 'from CORNER to CORNER':
      return phrase.names.map((name) => used(name, 'corner'))
    case 'WALL of ROOM':
    case 'along WALL of ROOM':
    case 'running along WALL of ROOM':
      return ofRoom(first, second!)
    case 'from WALL to WALL of ROOM':
      return [used(first, 'wall'), ...ofRoom(second!, third!)]
    case 'from WALL to WALL':
    case 'LENGTH from WALL':
    case 'LENGTH along WALL':
    case 'in WALL':
      return phrase.names.map((name) => used(name, 'wall'))
    default:
      return phrase.names.map((name) => used(name, 'free'))
  }
}

/** A name that stands alone on its line, or in a list. */
function listed({ word }: Entry, name: Name): NameUse {
  switch (word) {
    case 'corner':
      return given(name, 'corner')
    case 'square':
      return used(name, 'corner')
    case 'rooms':
      return used(name, 'room')
    case 'accept':
      return used(name, 'code')
    default:
      return used(name, 'free')
  }
}

/** `called` gives a thing of a room its name; in a floor it says which of several doorways is meant. */
function called(block: Block, { word, phrases }: Entry, name: Name): NameUse {
  if (block.word !== 'room') {
    const [from, to] = phrases.find(({ form }) => form === 'ROOM to ROOM')?.names ?? []
    const between = from === undefined || to === undefined ? null : ([from, to] as const)
    return { ...used(name, 'opening'), between }
  }
  if (WALL_WORDS.includes(word)) return given(name, 'wall')
  switch (word) {
    case 'door':
    case 'opening':
    case 'pass-through':
      return given(name, 'opening')
    case 'closet':
      return given(name, 'closet')
    case 'alcove':
    case 'hearth':
      return given(name, 'recess')
    default:
      return given(name, 'obstacle')
  }
}

function ofRoom(wall: Name, room: Name): readonly NameUse[] {
  return [{ ...used(wall, 'wall'), of: room }, used(room, 'room')]
}

function used(name: Name, kind: NameKind): NameUse {
  return { name, kind, gives: false, of: null, between: null }
}

function given(name: Name, kind: NameKind): NameUse {
  return { ...used(name, kind), gives: true }
}
