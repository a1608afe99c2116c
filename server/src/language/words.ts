import { FILE_WORDS, JOB_WORDS } from './file-words.ts'
import { FLOOR_WORDS } from './floor-words.ts'
import { PRICE_WORDS, PRODUCT_WORDS } from './product-words.ts'
import { ROOM_WORDS } from './room-words.ts'
import type { Word } from './word.ts'

export { EDGE_KINDS, type Home, type Word } from './word.ts'

/**
 * The vocabulary: every first word, where it may stand and the phrases it takes. This table is the
 * language; the parser, the messages, the formatter and the reference page all read it.
 */
export const WORDS: readonly Word[] = [
  ...FILE_WORDS,
  ...JOB_WORDS,
  ...ROOM_WORDS,
  ...PRODUCT_WORDS,
  ...FLOOR_WORDS,
  ...PRICE_WORDS,
]
