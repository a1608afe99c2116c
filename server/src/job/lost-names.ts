import { keyOf } from '../language/name.ts'
import type { Entry, Tree } from '../language/tree.ts'
import { WORDS } from '../language/words.ts'
import { allLines } from './lines.ts'

/**
 * Whether a name stood on a line that could not be read, whichever word of the line was damaged: of
 * column one, one that lost its first word and so slid into the block above, or a closet's. What begins
 * with such a name may have been its closet.
 */
export function lostNames(files: readonly Tree[]): (key: string) => boolean {
  const lost = new Set<string>()
  for (const block of files.flatMap((tree) => tree.blocks)) {
    const astray = block.broken && !BLOCK_WORDS.includes(block.word) ? [block] : []
    for (const line of [...astray, ...block.under.filter(hasNoWord)])
      for (const key of runsOf(`${line.word} ${line.text}`)) lost.add(key)
    const closets = allLines(block.under).filter(({ broken, word }) => broken && word === 'closet')
    if (closets.length > 0) lost.add(keyOf(`${block.name?.text ?? ''} closet`))
  }
  return (key) => key.split(' ').some((_, i, words) => lost.has(words.slice(0, i + 1).join(' ')))
}

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
