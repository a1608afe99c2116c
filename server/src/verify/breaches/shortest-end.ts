import { boxAround } from '../exact.ts'
import type { Found } from '../found.ts'
import type { Floor } from '../layout.ts'
import type { Breach } from '../report.ts'

/** Cut pieces shorter along the planks than the shortest end. A whole plank is never too short. */
export function shortestEndBreaches(
  { pieces, rules }: Floor,
  { lengths }: Found,
): readonly Breach[] {
  return pieces.flatMap(({ piece, plank, along, ring }) => {
    const { west, east } = boxAround(ring)
    const isWhole = along[1] - along[0] >= lengths.get(plank)!
    if (isWhole || east - west >= rules.shortestEnd) return []
    const [value, limit, at] = [east - west, rules.shortestEnd, ring[0]!]
    return [{ rule: 'shortest end', value, limit, at, pieces: [piece], direction: '' }]
  })
}
