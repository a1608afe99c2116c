import type { Room } from '../job/job.ts'
import type { UnitStyle } from '../units/length.ts'
import { type Amount, likelyAmounts } from './amounts.ts'
import { checkValue } from './check-value.ts'
import { allowedMiss } from './closing.ts'
import type { Distance } from './distance.ts'
import { cornersFrom, type Solved } from './fixing.ts'
import { pathVariance } from './path-variance.ts'
import { lengthFrom, takenOf } from './reading.ts'
import { allowedShapeDifference } from './shape-checks.ts'
import { spreadCorners } from './spread.ts'
import { misclosureOf } from './traverse.ts'
import type { Vector } from './vector.ts'
import { courseOf, type ReadWall } from './walls.ts'

/** A single reading which, changed by a likely amount, makes everything agree. */
export interface Slip {
  readonly of: Distance['of']
  readonly amount: Amount
  /** The likely true value, nanometres. */
  readonly likely: number
  /** The closing error that is left, or 0 for a room fixed by distances. */
  readonly left: number
  /** Checks that agree after it; all of them, or 0 where the room has none. */
  readonly checks: number
}

/** More than this many suspects are not told apart by the checks: the checks are too few anyway. */
const MOST_TRIED = 64

/**
 * Walls of a traverse that a likely slip in one of them would explain: with it the room closes within
 * its tolerance and, where any such wall makes all checks agree too, only those. One for each wall, by
 * the amount that closes best, in the order of the walls.
 */
export function traverseSlips(
  room: Room,
  walls: readonly ReadWall[],
  style: UnitStyle,
): readonly Slip[] {
  const miss = misclosureOf(walls.map(courseOf))
  const allowed = allowedMiss(walls)
  const closing = walls.flatMap((wall) => {
    if (takenOf(wall.wall.reading).length > 1) return []
    const tries = likelyAmounts(wall.wall.reading, style).flatMap((amount) => {
      const east = miss.east + amount.nm * wall.direction.x
      const north = miss.north + amount.nm * wall.direction.y
      if (Math.abs(east) > allowed.east || Math.abs(north) > allowed.north) return []
      return [wallSlip(wall, amount, Math.sqrt(east * east + north * north))]
    })
    return tries.sort((a, b) => a.left - b.left).slice(0, 1)
  })
  if (closing.length > MOST_TRIED) return closing
  const agreeing = closing.flatMap((slip) => {
    const checks = agreeingChecks(room, corrected(walls, slip))
    return checks === null ? [] : [{ ...slip, checks }]
  })
  return agreeing.length > 0 ? agreeing : closing
}

function wallSlip({ wall, nm }: ReadWall, amount: Amount, left: number): Slip {
  return {
    of: { kind: 'wall', index: wall.index },
    amount,
    likely: nm + amount.nm,
    left,
    checks: 0,
  }
}

function corrected(walls: readonly ReadWall[], slip: Slip): readonly ReadWall[] {
  return walls.map((wall) =>
    wall.wall.index === slip.of.index ? { ...wall, nm: slip.likely } : wall,
  )
}

/** How many checks the room has, if the walls as given make them all agree; else null. */
function agreeingChecks(room: Room, walls: readonly ReadWall[]): number | null {
  const corners = spreadCorners(walls)
  const variance = pathVariance(walls)
  let count = 0
  for (const check of room.checks) {
    if (check.kind === 'square' || check.kind === 'room tie') continue
    const reading = lengthFrom(check.reading)
    const value = checkValue(check, corners)
    if (reading === null || value === null) continue
    const allowed = allowedShapeDifference(check, corners, variance)
    if (Math.abs(reading.nm - value) > allowed) return null
    count += 1
  }
  return count
}

/** Larger rooms would take too long, and a person too, to look through. */
const MOST_WALLS_TRIED = 12

/**
 * Readings of a room fixed by distances that a likely slip in one of them would explain: with it all
 * spare distances agree. `agree` holds a spare distance against a shape.
 */
export function distanceSlips(
  room: Room,
  { corners, distances, way }: Solved,
  {
    spare,
    agree,
    style,
  }: {
    readonly spare: readonly Distance[]
    readonly agree: (distance: Distance, corners: readonly Vector[]) => boolean
    readonly style: UnitStyle
  },
): readonly Slip[] {
  if (corners.length > MOST_WALLS_TRIED) return []
  const slips: Slip[] = []
  const tryAll = (distance: Distance, agrees: (nm: number) => boolean) => {
    const reading = readingOf(room, distance)
    if (reading === null || takenOf(reading).length > 1) return
    const amount = likelyAmounts(reading, style).find(({ nm }) => agrees(distance.nm + nm))
    if (!amount) return
    const likely = distance.nm + amount.nm
    slips.push({ of: distance.of, amount, likely, left: 0, checks: spare.length })
  }
  distances.forEach((distance, i) => {
    tryAll(distance, (nm) => {
      const changed = distances.map((other, j) => (i === j ? { ...other, nm } : other))
      const shape = cornersFrom(changed, corners, way)
      return shape !== null && spare.every((other) => agree(other, shape))
    })
  })
  spare.forEach((distance, i) => {
    if (!spare.every((other, j) => i === j || agree(other, corners))) return
    tryAll(distance, (nm) => agree({ ...distance, nm }, corners))
  })
  return slips
}

function readingOf(room: Room, { of }: Distance) {
  if (of.kind === 'wall') return room.walls[of.index]!.reading
  const check = room.checks[of.index]!
  return check.kind === 'square' ? null : check.reading
}
