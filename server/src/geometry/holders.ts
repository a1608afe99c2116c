import { boxes } from './boxes.ts'
import { type Locate, locatorOf } from './locate.ts'
import type { Ring } from './point.ts'
import { boxOf } from './ring.ts'

/**
 * Finds which of some rings hold a ring that crosses none of them, by their places in the list; `inscribed`
 * says whether one that touches it with every corner counts. Only rings near its place are looked at,
 * each prepared once.
 */
export function holdersAmong(
  rings: readonly Ring[],
  inscribed: boolean,
): (ring: Ring) => readonly number[] {
  const found = boxes<number>()
  for (const [i, ring] of rings.entries()) found.add(i, boxOf(ring))
  const prepared = new Map<number, Locate>()
  const locateIn = (i: number) => {
    const known = prepared.get(i) ?? locatorOf(rings[i]!)
    prepared.set(i, known)
    return known
  }
  return (ring) => {
    const holders = new Set<number>()
    found.some(boxOf(ring), (i) => {
      if (rings[i] !== ring && holds(locateIn(i), ring, inscribed)) holders.add(i)
      return false
    })
    return [...holders].sort((a, b) => a - b)
  }
}

/** The first corner off the rim tells: a ring may touch what holds it in some of its corners. */
function holds(locate: Locate, ring: Ring, inscribed: boolean): boolean {
  for (const point of ring) {
    const place = locate(point)
    if (place !== 'rim') return place === 'inside'
  }
  return inscribed
}
