import { tokensOf } from './mutate.ts'

/** Texts that may be tried: a slow check is shrunk less far. */
const MOST_TRIES = 3000

/**
 * A smaller text of which the same is true: lines, then tokens, then characters are left out, in ever
 * smaller stretches, as long as `isSame` says so.
 */
export function shrink(
  text: string,
  isSame: (text: string) => boolean,
  tries = MOST_TRIES,
): string {
  let left = tries
  const asked = (smaller: string): boolean => {
    left -= 1
    return left >= 0 && isSame(smaller)
  }
  let small = text
  for (let before = ''; before !== small && left > 0; ) {
    before = small
    small = without(small, (whole) => whole.split(/(?<=\n)/), asked)
    small = without(small, tokensOf, asked)
    small = without(small, (whole) => [...whole], asked)
  }
  return small
}

/** Leaves out stretches of parts: half of them, a quarter, down to single ones. */
function without(
  text: string,
  parted: (text: string) => readonly string[],
  isSame: (text: string) => boolean,
): string {
  let parts = parted(text)
  for (let size = Math.max(1, parts.length >> 1); ; size >>= 1) {
    for (let at = 0; at < parts.length; ) {
      const fewer = [...parts.slice(0, at), ...parts.slice(at + size)]
      if (isSame(fewer.join(''))) parts = fewer
      else at += size
    }
    if (size <= 1) return parts.join('')
  }
}
