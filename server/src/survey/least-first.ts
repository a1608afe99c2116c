/** Numbers waiting to be taken, always the least of them first. */
export interface LeastFirst {
  add(value: number): void
  /** Undefined when none is left. */
  take(): number | undefined
}

/** A heap: in a list, each number at place n stands before those at 2n + 1 and 2n + 2. */
export function leastFirst(): LeastFirst {
  const heap: number[] = []
  const exchange = (a: number, b: number) => {
    const kept = heap[a]!
    heap[a] = heap[b]!
    heap[b] = kept
  }
  return {
    add: (value) => {
      let at = heap.push(value) - 1
      for (let above = (at - 1) >> 1; at > 0 && heap[at]! < heap[above]!; above = (at - 1) >> 1) {
        exchange(at, above)
        at = above
      }
    },
    take: () => {
      const least = heap[0]
      const last = heap.pop()
      if (heap.length === 0 || last === undefined) return least
      heap[0] = last
      let at = 0
      for (;;) {
        const [left, right] = [2 * at + 1, 2 * at + 2]
        let next = at
        if (left < heap.length && heap[left]! < heap[next]!) next = left
        if (right < heap.length && heap[right]! < heap[next]!) next = right
        if (next === at) return least
        exchange(at, next)
        at = next
      }
    },
  }
}
