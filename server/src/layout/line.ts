import type { Nm } from '../units/length.ts'
import { wholeNumber } from '../units/number.ts'
import { ratio } from '../units/ratio.ts'
import { roundRatio } from '../units/round.ts'
import { balanceCourses, type CourseWidths } from './balance.ts'
import { type Rip, ripsAt, type WallAlong, type WallWhole, wholeWalls } from './rips.ts'

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
  /** About how many pieces along walls come out narrower than they may. */
  readonly narrow: number
  /** About how many planks are wasted along walls; only to compare lines by. */
  readonly waste: number
}

/** What a line is chosen by: the product's plank and its narrowest rip. */
export interface LineRules {
  readonly width: Nm
  readonly narrowestRip: Nm
  readonly kerfAlong: Nm
  /** Of the longest plank: a narrow course is so many breaches as it takes planks. */
  readonly length: Nm
}

/** No house has more walls along its planks; beyond it the grid has to do. */
const MOST_WALLS = 100

/** The grid on which lines are tried, in parts of a plank's width. */
const PARTS = 16

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
  const balance = balanceFor(walls, startWall, rules)
  const first = wholeNumber(roundRatio(balance?.first ?? ratio(0), 'half to even'))
  const seam = start - first
  return lineAt({ seam, start, balance, moved: 0 }, walls, rules)
}

/** How the start wall's room divides; null where no wall faces it. */
function balanceFor(
  walls: readonly WallAlong[],
  startWall: readonly WallAlong[],
  rules: LineRules,
): CourseWidths | null {
  const opposite = wallOpposite(walls, startWall)
  if (opposite === null) return null
  const most = Math.max(...startWall.map((wall) => wall.high)) - opposite.low
  const least = Math.min(...startWall.map((wall) => wall.low)) - opposite.high
  return balanceCourses({ most, least }, rules.width, rules.narrowestRip)[0]!
}

/**
 * The longest wall of the start wall's room that faces it, openings in it left out; of two alike the
 * farther one.
 */
function wallOpposite(
  walls: readonly WallAlong[],
  startWall: readonly WallAlong[],
): WallWhole | null {
  const { room, level } = startWall[0]!
  if (!level) return null
  const start = Math.max(...startWall.map((wall) => wall.high))
  const facing = walls.filter(
    (wall) =>
      wall.room === room &&
      wall.floor === 'above' &&
      wall.wall !== null &&
      wall.level &&
      wall.low < start,
  )
  return wholeWalls(facing).reduce<WallWhole | null>(
    (best, wall) => (best === null || isLonger(wall, best) ? wall : best),
    null,
  )
}

const isLonger = (a: WallWhole, b: WallWhole) =>
  a.length > b.length || (a.length === b.length && a.low < b.low)

/** The line moved towards high v. */
export function movedLine(line: Line, by: Nm, walls: readonly WallAlong[], rules: LineRules): Line {
  return lineAt({ ...line, seam: line.seam + by, moved: line.moved + by }, walls, rules)
}

function lineAt(
  line: Omit<Line, 'narrow' | 'waste'>,
  walls: readonly WallAlong[],
  rules: LineRules,
): Line {
  const rips = ripsAt(
    // A slanted wall only cuts courses off; beside a round column a strip is left all the same.
    walls.filter(({ level, wall }) => level || wall === null),
    rules.width,
    line.seam,
  )
  return { ...line, narrow: narrowness(rips, rules), waste: wasteOf(rips, rules) }
}

/**
 * Lines off the balanced one that deserve a search: the one with the fewest narrow courses, and of those
 * with as few the one that wastes a whole plank less or more; of equals the nearest to the balanced
 * place. Tried are a grid over one plank's width and the lines at which some wall gets just the
 * narrowest rip or none. Cost: lines tried × walls.
 */
export function betterLines(
  balanced: Line,
  walls: readonly WallAlong[],
  rules: LineRules,
): readonly Line[] {
  const { width } = rules
  const grid = Array.from({ length: PARTS }, (_, i) => Math.floor((i * width) / PARTS))
  const tried = [
    ...grid,
    ...walls.slice(0, MOST_WALLS).flatMap((wall) => justWide(balanced, wall, rules)),
  ]
  const moves = [...new Set(tried.map((by) => nearest(by, width)))].sort(
    (a, b) => Math.abs(a) - Math.abs(b) || a - b,
  )
  let least = balanced
  let thrifty = balanced
  for (const by of moves) {
    const line = movedLine(balanced, by, walls, rules)
    if (line.narrow < least.narrow) least = line
    const saves = line.waste <= thrifty.waste - 1
    if (line.narrow < thrifty.narrow || (line.narrow === thrifty.narrow && saves)) thrifty = line
  }
  return [...new Set([least, thrifty])].filter((line) => line !== balanced)
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
  return 2 * positive > width ? positive - width : positive
}

/** Pieces narrower than they may be, or so: along each wall with a narrow course, a plank after another. */
function narrowness(rips: readonly Rip[], rules: LineRules): number {
  return rips
    .filter((rip) => rip.narrowest < rules.narrowestRip)
    .reduce((sum, { wall }) => sum + 1 + Math.floor((wall.to - wall.from) / rules.length), 0)
}

/**
 * About how many planks the walls' rips waste: one that leaves a strip for another rip takes half a
 * plank's width, any other a whole one.
 */
function wasteOf(rips: readonly Rip[], rules: LineRules): number {
  return rips.reduce((sum, { wall, narrowest, widest }) => {
    const taken = 2 * widest + rules.kerfAlong <= rules.width ? 1 / 2 : 1
    const laid = (narrowest + widest) / 2 / rules.width
    return sum + ((wall.to - wall.from) / rules.length) * (taken - laid)
  }, 0)
}
