import { compileForm, type Form } from './forms.ts'
import { type Home, WORDS, type Word } from './words.ts'

/** A word of the table with its forms made ready for matching. */
export interface Entered {
  readonly word: Word
  readonly forms: readonly Form[]
}

const BY_HOME: ReadonlyMap<Home, ReadonlyMap<string, Entered>> = enter()

function enter(): ReadonlyMap<Home, ReadonlyMap<string, Entered>> {
  const homes = new Map<Home, Map<string, Entered>>()
  for (const word of WORDS) {
    const words = homes.get(word.home) ?? new Map<string, Entered>()
    words.set(word.word, { word, forms: word.forms.map(compileForm) })
    homes.set(word.home, words)
  }
  return homes
}

/** The word as it stands in one kind of block, or null. */
export function wordIn(home: Home, word: string): Entered | null {
  return BY_HOME.get(home)?.get(word) ?? null
}

/** Every first word of one kind of block, in the table's order. */
export function wordsOf(home: Home): readonly string[] {
  return [...(BY_HOME.get(home)?.keys() ?? [])]
}

const BLOCK_HOMES: readonly Home[] = ['job', 'room', 'product', 'floor', 'prices']

/** The kinds of block that a word may stand in, column one left out. */
export function homesOf(word: string): readonly Home[] {
  return BLOCK_HOMES.filter((home) => wordIn(home, word) !== null)
}

/** First words that are more than one word, longest first: `out of square`. */
export const LONG_WORDS: readonly (readonly string[])[] = [
  ...new Set(WORDS.map((word) => word.word).filter((word) => word.includes(' '))),
].map((word) => word.split(' '))
