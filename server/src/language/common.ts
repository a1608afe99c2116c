/**
 * How many characters two texts have in common from the start. Halves in turn: comparing slices whole
 * is so much faster than character by character that going over them several times costs less.
 */
export function commonStart(a: string, b: string): number {
  return most(Math.min(a.length, b.length), (from, to) => a.slice(from, to) === b.slice(from, to))
}

/** The same from the end, of what is left of both after `taken` characters from the start. */
export function commonEnd(a: string, b: string, taken: number): number {
  const [endOfA, endOfB] = [a.length, b.length]
  return most(
    Math.min(endOfA, endOfB) - taken,
    (from, to) => a.slice(endOfA - to, endOfA - from) === b.slice(endOfB - to, endOfB - from),
  )
}

/** The most characters up to a limit that are alike; `isAlike` compares from one count to a larger one. */
function most(limit: number, isAlike: (from: number, to: number) => boolean): number {
  let alike = 0
  for (let unknown = limit; unknown > 0; ) {
    const step = Math.ceil(unknown / 2)
    if (isAlike(alike, alike + step)) {
      alike += step
      unknown -= step
    } else unknown = step - 1
  }
  return alike
}
