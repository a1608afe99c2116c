/** Changes of a list whose items are known by their ids. */
export interface ListChange<T> {
  /** Ids of items that are no longer there. */
  readonly gone: readonly string[]
  /** Items that are new, differ or stand elsewhere now, in the order of the new list. */
  readonly put: readonly Put<T>[]
}

export interface Put<T> {
  readonly item: T
  /**
   * The id of the item that it stands right after, null for the first; 'stays' where it only takes the
   * place of its former self.
   */
  readonly after: { readonly id: string | null } | 'stays'
}

interface Keyed {
  readonly id: string
}

/**
 * The least that is to be put so that `before` becomes `after`; ids are unlike in each of them. Items
 * that keep their order among each other stay where they are: the most of them that can, found as the
 * longest rising sequence of their old places. Cost: n log n, and comparing what is not the same value.
 */
export function listChange<T extends Keyed>(
  before: readonly T[],
  after: readonly T[],
): ListChange<T> {
  const places = new Map(before.map((item, place) => [item.id, place]))
  const kept = new Set(after.map((item) => item.id))
  const stays = new Set(longestRising(after.map((item) => places.get(item.id) ?? -1)))
  return {
    gone: before.flatMap(({ id }) => (kept.has(id) ? [] : [id])),
    put: after.flatMap((item, i): Put<T>[] => {
      if (!stays.has(i)) return [{ item, after: { id: after[i - 1]?.id ?? null } }]
      return isSame(before[places.get(item.id) ?? -1], item) ? [] : [{ item, after: 'stays' }]
    }),
  }
}

/** The list that a change leads to. Items put after one that is not there come last, in their order. */
export function applyTo<T extends Keyed>(
  before: readonly T[],
  { gone, put }: ListChange<T>,
): readonly T[] {
  const stays = new Map(
    put.flatMap(({ item, after }) => (after === 'stays' ? [[item.id, item]] : [])),
  )
  const moved = put.flatMap(({ item, after }) =>
    after === 'stays' ? [] : [{ item, id: after.id }],
  )
  const away = new Set([...gone, ...moved.map(({ item }) => item.id)])
  const behind = Map.groupBy(moved, ({ id }) => id)
  const result: T[] = []
  const place = (id: string | null): void => {
    const waiting = (behind.get(id) ?? []).map(({ item }) => item)
    behind.delete(id)
    // A run of new items may be long: each waits behind the one before it.
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
      result.push(next)
      waiting.push(...(behind.get(next.id) ?? []).map(({ item }) => item))
      behind.delete(next.id)
    }
  }
  place(null)
  for (const item of before) {
    if (away.has(item.id)) continue
    result.push(stays.get(item.id) ?? item)
    place(item.id)
  }
  return [...result, ...[...behind.values()].flat().map(({ item }) => item)]
}

/**
 * Places of the longest rising sequence among the values that are not negative, rising: patience
 * sorting, where `tails[n]` is the place of the least end of a sequence of n + 1.
 */
function longestRising(values: readonly number[]): readonly number[] {
  const tails: number[] = []
  const previous: number[] = []
  for (const [place, value] of values.entries()) {
    if (value < 0) continue
    let [low, high] = [0, tails.length]
    while (low < high) {
      const half = (low + high) >>> 1
      if (values[tails[half]!]! < value) low = half + 1
      else high = half
    }
    previous[place] = tails[low - 1] ?? -1
    tails[low] = place
  }
  const rising: number[] = []
  for (let place = tails.at(-1) ?? -1; place >= 0; place = previous[place]!) rising.push(place)
  return rising.reverse()
}

/** Whether two values of plain data say the same. */
export function isSame(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false
  if (Array.isArray(a) || Array.isArray(b))
    return (
      Array.isArray(a) &&
      Array.isArray(b) &&
      a.length === b.length &&
      a.every((item, i) => isSame(item, b[i]))
    )
  const [inA, inB] = [Object.entries(a), Object.entries(b)]
  return (
    inA.length === inB.length &&
    inA.every(([name, value]) => Object.hasOwn(b, name) && isSame(value, Reflect.get(b, name)))
  )
}
