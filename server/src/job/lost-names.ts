import { once } from '../facts/once.ts'
import { keyOf } from '../language/name.ts'
import type { Block, Entry, Tree } from '../language/tree.ts'
import { WORDS } from '../language/words.ts'
import { allLines } from './lines.ts'

/**
 * Whether a name stood on a line that could not be read, whichever word of the line was damaged: of
 * column one, one that lost its first word and so slid into the block above, or a closet's. What begins
 * with such a name may have been its closet.
 */
export function lostNames(files: readonly Tree[]): (key: string) => boolean {
  const lost = new Set<string>()
  for (const { blocks } of files)
    for (const block of blocks) for (const key of lostIn(block)) lost.add(key)
  return (key) => key.split(' ').some((_, i, words) => lost.has(words.slice(0, i + 1).join(' ')))
}

/** What may be such names in one block. */
const lostIn = once((block: Block): readonly string[] => {
  const astray = block.broken && !BLOCK_WORDS.includes(block.word) ? [block] : []
  const runs = [...astray, ...block.under.filter(hasNoWord)].flatMap(({ word, text }) =>
    runsOf(`${word} ${text}`),
  )
  const isCloset = ({ broken, word }: Entry) => broken && word === 'closet'
  const closets = allLines(block.under).some(isCloset)
  return closets ? [...runs, keyOf(`${block.name?.text ?? ''} closet`)] : runs
})

const BLOCK_WORDS = ['job', 'room', 'product', 'floor', 'prices']

const ALL_WORDS: ReadonlySet<string> = new Set(WORDS.map(({ word }) => word))

function hasNoWord({ broken, word }: Entry): boolean {
  return broken && !ALL_WORDS.has(word)
}

/** A line of more words is no name astray. */
const MOST_WORDS = 12

/** Every run of words in a line: the name may be any of them. */
function runsOf(text: string): readonly string[] {
  const words = keyOf(text).split(' ').slice(0, MOST_WORDS)
  return words.flatMap((_, from) =>
    words.slice(from).map((_, n) => words.slice(from, from + n + 1).join(' ')),
  )
}
