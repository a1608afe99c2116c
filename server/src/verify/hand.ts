import type { Found } from './found.ts'
import type { Floor, Piece } from './layout.ts'
import type { Finding } from './report.ts'

/**
 * Joints need the ends made in the factory. What is factory-made follows from the span alone; the
 * flags must say just that, and wherever two pieces meet, the ends and edges that meet must be
 * factory-made. A joint through a hole is glued instead: there neither end may be.
 */
export function checkHand(floor: Floor, found: Found): readonly Finding[] {
  return [
    ...floor.pieces.flatMap((piece) => flags(piece, floor, found)),
    ...joints(found),
    ...seams(found),
  ]
}

const SIDES = ['left', 'right', 'low', 'high'] as const

function flags(item: Piece, { rules }: Floor, { lengths }: Found): Finding[] {
  const { piece, course, along, across, turned, factory } = item
  const ends = [along[0] === 0, along[1] === lengths.get(item.plank)!] as const
  const edges = [across[0] === 0, across[1] === rules.plankWidth] as const
  const [left, right] = turned ? [ends[1], ends[0]] : ends
  const [low, high] = turned ? [edges[1], edges[0]] : edges
  const made = { left, right, low, high }
  return SIDES.filter((side) => factory[side] !== made[side]).map((side) => ({
    code: 'factory-untrue',
    text: `Piece ${piece} ${factory[side] ? 'claims' : 'denies'} a factory ${side} side; its span says otherwise.`,
    course,
    piece,
  }))
}

function joints({ joints }: Found): Finding[] {
  return joints.flatMap(({ course, at, low, left, right, parted }) => {
    const where = { course, piece: left.piece, at: [at, low] as const }
    const pieces = `pieces ${left.piece} and ${right.piece}`
    if (parted && (left.factory.right || right.factory.left)) {
      const text = `At the parted joint of ${pieces} both ends are cut; one is said to be a factory end.`
      return [{ code: 'parted-with-factory-end', text, ...where }]
    }
    if (parted || (left.factory.right && right.factory.left)) return []
    const text = `At the joint of ${pieces} a cut end would have to lock.`
    return [{ code: 'joint-without-factory-end', text, ...where }]
  })
}

function seams({ seams }: Found): Finding[] {
  const told = new Set<string>()
  return seams.flatMap(({ from, before, after }) => {
    const pair = `${before.piece} ${after.piece}`
    if ((before.factory.high && after.factory.low) || told.has(pair)) return []
    told.add(pair)
    const text = `At the seam of pieces ${before.piece} and ${after.piece} a ripped edge would have to lock.`
    const { course, piece } = before.factory.high ? after : before
    return [{ code: 'seam-without-factory-edge', text, course, piece, at: from }]
  })
}
