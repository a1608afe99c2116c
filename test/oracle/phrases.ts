import { type Nm, readLength } from './lengths.ts'
import { nameKey } from './lines.ts'
import { type Ratio, ratio } from './ratio.ts'

/** What one reading of the tape says: its length (null while still to be taken), and what it is worth. */
export interface Reading {
  readonly length: Nm | null
  readonly isAbout: boolean
  readonly within: Nm | null
}

/** What a bare number counts in the file, null where it counts nothing. */
export type Bare = bigint | null

/** A phrase that is nothing but a reading: `12' 4"?`, `about 12' 4"`, `12' 4" within 1/4"`. */
export function readingOf(phrase: string, bare: Bare): Reading | null {
  if (phrase === '?') return { length: null, isAbout: false, within: null }
  const [, about, said = '', within] =
    /^(about )?(.*?)\??(?: within (.*))?$/i.exec(phrase.trim()) ?? []
  const length = readLength(said, bare)
  const worth = within === undefined ? null : readLength(within, bare)
  if (length === null || (within !== undefined && worth === null)) return null
  return { length, isAbout: about !== undefined, within: worth }
}

/** The first of the phrases that `read` can read. */
export function firstOf<From, T>(
  phrases: readonly From[],
  read: (phrase: From) => T | null,
): T | null {
  for (const phrase of phrases) {
    const found = read(phrase)
    if (found !== null) return found
  }
  return null
}

/** Reads `LENGTH what`, such as `4 1/2" thick`. */
export function lengthSaid(phrases: readonly string[], what: string, bare: Bare): Nm | null {
  return firstOf(phrases, (phrase) => {
    if (!phrase.toLowerCase().endsWith(` ${what}`)) return null
    return readingOf(phrase.slice(0, -what.length - 1), bare)?.length ?? null
  })
}

/** Reads `what NAME`, such as `called window wall`: the name's key. */
export function nameSaid(phrases: readonly string[], what: string): string | null {
  return firstOf(phrases, (phrase) => {
    if (!phrase.toLowerCase().startsWith(`${what} `)) return null
    return nameKey(phrase.slice(what.length + 1))
  })
}

/** The two names of `to`: `NAME to NAME`, each perhaps in quotes, or null. */
export function pairOf(phrase: string, between: string): readonly [string, string] | null {
  const quoted = '"[^"]*"|[^"]*?'
  const found = new RegExp(`^(${quoted}) ${between} (${quoted})$`, 'i').exec(phrase.trim())
  return found === null ? null : [nameKey(found[1] ?? ''), nameKey(found[2] ?? '')]
}

/** `10%` as a ratio of the whole. */
export function percentOf(phrase: string): Ratio | null {
  const [, whole, decimals = ''] = /^(\d+)(?:\.(\d+))? ?%$/.exec(phrase) ?? []
  if (whole === undefined) return null
  return ratio(BigInt(whole + decimals), 100n * 10n ** BigInt(decimals.length))
}

/** `9 planks`: the number before a word, in one or many. */
export function countOf(phrases: readonly string[], what: RegExp): bigint | null {
  return firstOf(phrases, (phrase) => {
    const [, number, word = ''] = /^(\d+) (.*)$/.exec(phrase) ?? []
    return number !== undefined && what.test(word) ? BigInt(number) : null
  })
}
