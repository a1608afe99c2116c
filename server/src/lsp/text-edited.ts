/** The one stretch in which two texts differ, in the first, and how much longer the second is. */
export interface TextEdited {
  readonly start: number
  readonly end: number
  readonly longer: number
}

/** Compares from both ends: what it costs is one look at each character. */
export function editBetween(before: string, after: string): TextEdited {
  const shorter = Math.min(before.length, after.length)
  let start = 0
  while (start < shorter && before.charCodeAt(start) === after.charCodeAt(start)) start++
  let behind = 0
  while (behind < shorter - start && isSameFromBehind(before, after, behind)) behind++
  return { start, end: before.length - behind, longer: after.length - before.length }
}

function isSameFromBehind(a: string, b: string, behind: number): boolean {
  return a.charCodeAt(a.length - 1 - behind) === b.charCodeAt(b.length - 1 - behind)
}
