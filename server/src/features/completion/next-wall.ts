import type { Heading, Way } from '../../job/job.ts'
import { lengthIn, measureOf } from '../../job/phrases.ts'
import { turnsOf } from '../../job/turning.ts'
import { eighths, isWallWord, isWay, WAYS } from '../../job/ways.ts'
import type { Block, Entry } from '../../language/tree.ts'
import { NM_PER_INCH, type Nm } from '../../units/length.ts'
import { compare, ratio, sum } from '../../units/ratio.ts'

/** A wall that may come next, and what it comes to where it would close the room. */
export interface NextWall {
  readonly way: Way
  readonly closes: Nm | null
}

/** Turns to the right from one wall to the next, in eighths, likeliest first (common practice, no source). */
const TURNS: readonly number[] = [2, 1, -2, -1, 3, -3, 0, 4]

/** Of more walls it is not tried out whether they come round: a cursor does not wait for that. */
const MOST_WALLS = 100

/**
 * The ways of the wall after those of a room that stand above an offset, likeliest first: after north
 * comes east, as one walks on to the right. Empty where they have come round already.
 */
export function nextWalls(block: Block, offset: number): readonly NextWall[] {
  const walls = block.under.filter(({ word, line }) => isWallWord(word) && line.span.end < offset)
  const headings = walls.length > MOST_WALLS ? [null] : walls.map(headingOf)
  const known = headings.filter((heading) => heading !== null)
  if (known.length === headings.length && comesRound(known)) return []
  const last = walls.findLast(({ word }) => isWay(word))?.word as Way | undefined
  const from = last === undefined ? -2 : eighths(last)
  const isLast = !block.under.some(({ word, line }) => isWallWord(word) && line.span.start > offset)
  const gap = isLast && known.length === headings.length ? gapOf(walls) : null
  return TURNS.map((turn) => {
    const way = WAYS[(from + turn + 8) % 8]!
    const closes = gap !== null && comesRound([...known, { kind: 'way', way }])
    return { way, closes: closes ? along(gap, way) : null }
  })
}

function headingOf(entry: Entry): Heading | null {
  return isWay(entry.word) ? { kind: 'way', way: entry.word } : null
}

function comesRound(headings: readonly Heading[]): boolean {
  if (headings.length < 3) return false
  const turns = turnsOf(headings)
  const isOnce = compare(sum(turns), ratio(360)) === 0
  return isOnce && !turns.some((turn) => compare(turn, ratio(180)) === 0)
}

interface Gap {
  readonly east: number
  readonly north: number
}

/** √½, for the ways between. */
const HALF = Math.sqrt(0.5)

/** Which way you walk along a wall that you see looking this way, from left to right. */
function walkAlong(way: Way): Gap {
  const east = [1, HALF, 0, -HALF, -1, -HALF, 0, HALF]
  return { east: east[eighths(way)]!, north: east[(eighths(way) + 2) % 8]! }
}

/** From where the walls end back to where they begin; null while one of them is still to be read. */
function gapOf(walls: readonly Entry[]): Gap | null {
  let [east, north] = [0, 0]
  for (const wall of walls) {
    const nm = lengthIn(measureOf(wall, 'LENGTH'))
    if (nm === null) return null
    const along = walkAlong(wall.word as Way)
    east -= nm * along.east
    north -= nm * along.north
  }
  return { east, north }
}

/** A gap further off the wall's line than this is closed by more than one wall. */
const OFF_LINE: Nm = 2 * NM_PER_INCH

function along({ east, north }: Gap, way: Way): Nm | null {
  const walk = walkAlong(way)
  const length = east * walk.east + north * walk.north
  const off = Math.abs(east * walk.north - north * walk.east)
  return off <= OFF_LINE && length > 0 ? Math.round(length) : null
}
