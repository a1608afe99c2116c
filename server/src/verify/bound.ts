import { doubledArea } from './exact.ts'
import type { Floor } from './layout.ts'
import type { Finding } from './report.ts'

/**
 * A lower bound lies between what the area alone asks for and what the layout uses. Planks: the area
 * over the largest plank, and the planks listed. Boxes: the area over all planks of a box, and the
 * least boxes whose planks of each length cover those used.
 */
export function checkBound(floor: Floor): readonly Finding[] {
  const { bound, planks, rules } = floor
  const lengths = rules.plankLengths
  const longest = lengths.reduce((most, { length }) => Math.max(most, length), 0)
  const boxful = lengths.reduce(
    (sum, { length, perBox }) => sum + BigInt(length) * BigInt(perBox),
    0n,
  )
  return [
    ...between('planks', bound.planks, areaOver(floor, BigInt(longest)), planks.length),
    ...between('boxes', bound.boxes, areaOver(floor, boxful), boxesUsed(floor)),
  ]
}

/** Planks (or boxes) of this length in all, and a plank's width, to cover the area: rounded up. */
function areaOver({ area, rules }: Floor, length: bigint): bigint {
  const doubled = area.rings.reduce((sum, ring) => sum + doubledArea(ring), 0n)
  const plank = 2n * length * BigInt(rules.plankWidth)
  return (doubled + plank - 1n) / plank
}

function boxesUsed({ planks, rules }: Floor): number {
  return rules.plankLengths.reduce((most, { length, perBox }) => {
    const used = planks.filter((plank) => plank.length === length).length
    return Math.max(most, Math.ceil(used / perBox))
  }, 0)
}

function between(what: string, bound: number, least: bigint, used: number): Finding[] {
  if (bound > used) {
    const text = `The bound says that no layout needs fewer than ${bound} ${what}; this one needs ${used}.`
    return [{ code: 'bound-above-use', text }]
  }
  if (BigInt(bound) < least) {
    const text = `The bound is ${bound} ${what}; the area alone asks for ${least}.`
    return [{ code: 'bound-below-area', text }]
  }
  return []
}
