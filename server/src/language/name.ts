import type { Span } from '../facts/span.ts'
import { BLANKS, FOOT_MARKS } from '../units/signs.ts'
import type { Name } from './tree.ts'

const BLANK_RUN = new RegExp(`[${BLANKS}]+`, 'g')
const APOSTROPHES = new RegExp(`[${FOOT_MARKS}]`, 'g')
const HIDDEN = /[\u00ad\u200b-\u200d\u2060\ufeff]/g

/** A name from its text without quotes: runs of blanks count as one. */
export function nameOf(text: string, span: Span): Name {
  const tidy = text.replace(BLANK_RUN, ' ').trim()
  return { text: tidy, key: keyOf(tidy), span }
}

/** What two spellings of one name share: case, blanks, the kind of apostrophe and hidden signs do not count. */
export function keyOf(text: string): string {
  const tidy = text.replace(HIDDEN, '').replace(BLANK_RUN, ' ').trim()
  return tidy.replace(APOSTROPHES, "'").normalize('NFC').toLowerCase()
}
