/** Words longer than this are compared no further: no word of ours is, and the cost is its square. */
const LONGEST = 64

/**
 * The candidate that a mistyped word most likely means, or null: the least number of characters
 * dropped, added, replaced or exchanged, at most a third of the word's length. Of equals the first.
 */
export function nearest(word: string, candidates: Iterable<string>): string | null {
  const typed = word.toLowerCase()
  let best: string | null = null
  let least = Math.floor(typed.length / 3) + 1
  for (const candidate of candidates) {
    const distance = editDistance(typed, candidate.toLowerCase(), least)
    if (distance < least) {
      best = candidate
      least = distance
    }
  }
  return best
}

/** Edit distance with neighbours exchanged counted once, or `limit` when it is not below that. */
function editDistance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) >= limit || a.length > LONGEST) return limit
  let before: number[] = []
  let above = Array.from({ length: b.length + 1 }, (_, j) => j)
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i]
    for (let j = 1; j <= b.length; j += 1) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1
      let cost = Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + same)
      const exchanged = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]
      if (exchanged) cost = Math.min(cost, before[j - 2]! + 1)
      row.push(cost)
    }
    before = above
    above = row
  }
  return Math.min(above[b.length]!, limit)
}
