import type { Nm } from '../units/length.ts'
import { wholeNumber } from '../units/number.ts'
import { ratio } from '../units/ratio.ts'
import { roundRatio } from '../units/round.ts'
import { balanceCourses, type CourseWidths } from './balance.ts'
import { type Rip, ripsAt, type WallAlong } from './rips.ts'

/** The working line: where the seams lie across the run. */
export interface Line {
  /** v of one seam. */
  readonly seam: Nm
  /** v of the start wall, where the floor ends at it. */
  readonly start: Nm
  /** How the start room's courses fall when balanced; null where it has no wall opposite. */
  readonly balance: CourseWidths | null
  /** How far the line lies off its balanced place, towards high v. */
  readonly moved: Nm
}

/** What a line is chosen by: the product's plank and its narrowest rip. */
export interface LineRules {
  readonly width: Nm
  readonly narrowestRip: Nm
  /** Of the longest plank: a narrow course is so many breaches as it takes planks. */
  readonly length: Nm
}

/** The grid on which lines are tried, in parts of a plank's width. */
const PARTS = 32

/**
 * The line that makes first and last course of the start room equal (`balanceCourses`, rounded once to
 * whole nanometres, half to even); the seam lies on the start wall where that has no wall opposite.
 */
export function balancedLine(
  walls: readonly WallAlong[],
  startWall: readonly WallAlong[],
  rules: LineRules,
): Line {
  const start = Math.max(...startWall.map((wall) => wall.high))
  const opposite = wallOpposite(walls, startWall)
  if (opposite === null) return { seam: start, start, balance: null, moved: 0 }
  const clear = {
    most: start - opposite.low,
    least: Math.min(...startWall.map((wall) => wall.low)) - opposite.high,
  }
  if (clear.most <= 0) return { seam: start, start, balance: null, moved: 0 }
  const balance = balanceCourses(clear, rules.width, rules.narrowestRip)[0]!
  const first = balance.first ?? ratio(0)
  const seam = start - wholeNumber(roundRatio(first, 'half to even'))
  return { seam, start, balance, moved: 0 }
}

/** The longest wall of the start wall's room that faces it. */
function wallOpposite(
  walls: readonly WallAlong[],
  startWall: readonly WallAlong[],
): WallAlong | null {
  const room = startWall[0]!.room
  return walls
    .filter((wall) => wall.room === room && wall.floor === 'above')
    .reduce<WallAlong | null>(
      (best, wall) => (best === null || wall.to - wall.from > best.to - best.from ? wall : best),
      null,
    )
}

/** The line moved towards high v. */
export function movedLine(line: Line, by: Nm): Line {
  return { ...line, seam: line.seam + by, moved: line.moved + by }
}

/**
 * The line with the fewest narrow courses along all walls; of equals the nearest to the balanced place.
 * Tried are a grid over one plank's width and the lines at which some wall gets just the narrowest rip
 * or none. Cost: walls squared.
 */
export function leastNarrow(line: Line, walls: readonly WallAlong[], rules: LineRules): Line {
  const { width } = rules
  const grid = Array.from({ length: PARTS }, (_, i) => Math.floor((i * width) / PARTS))
  const tried = [0, ...grid, ...walls.flatMap((wall) => justWide(line, wall, rules))]
  const moves = [...new Set(tried.map((by) => nearest(by, width)))].sort(
    (a, b) => Math.abs(a) - Math.abs(b) || a - b,
  )
  let best = line
  let fewest = narrowness(ripsAt(walls, width, line.seam), rules)
  for (const by of moves) {
    if (fewest === 0) break
    const moved = movedLine(line, by)
    const narrow = narrowness(ripsAt(walls, width, moved.seam), rules)
    if (narrow >= fewest) continue
    best = moved
    fewest = narrow
  }
  return best
}

/** Moves of the line at which a wall's course is just as wide as it must be, or full. */
function justWide(line: Line, wall: WallAlong, rules: LineRules): readonly Nm[] {
  const sign = wall.floor === 'below' ? -1 : 1
  return [wall.low, wall.high].flatMap((v) =>
    [0, sign * rules.narrowestRip].map((off) => v + off - line.seam),
  )
}

/** The same move within half a plank's width either way. */
function nearest(by: Nm, width: Nm): Nm {
  const rest = by % width
  const positive = rest < 0 ? rest + width : rest
  return 2 * positive > width ? positive - width : positive + 0
}

/** About how many pieces come out narrower than they may. */
function narrowness(rips: readonly Rip[], rules: LineRules): number {
  return narrowRips(rips, rules).reduce(
    (sum, { wall }) => sum + 1 + Math.floor((wall.to - wall.from) / rules.length),
    0,
  )
}

/** Walls along which the course comes out too narrow, or a seam runs into the wall. */
export function narrowRips(rips: readonly Rip[], rules: LineRules): readonly Rip[] {
  return rips.filter((rip) => rip.narrowest < rules.narrowestRip)
}
