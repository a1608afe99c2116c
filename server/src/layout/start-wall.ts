import type { Floor, ProductRules } from '../job/job.ts'
import type { Survey } from '../survey/survey.ts'
import { reversed, wallFrame } from './direction.ts'
import { wallKey } from './edge-said.ts'
import type { FloorArea } from './floor-area.ts'
import type { Frame } from './frame.ts'
import { ROUNDED, type WallAlong, type WallWhole, wallsAlong, wholeWalls } from './rips.ts'
import { compareNumbers, standing, viewFrom } from './view-from.ts'

/**
 * Where laying starts. The frame is turned so that one faces the start wall: u runs to the right, the
 * wall lies at high v, and the courses go on to lower v.
 */
export interface Start {
  readonly frame: Frame
  readonly walls: readonly WallAlong[]
  /** The edges of the start wall, none where the floor has no edge along the planks. */
  readonly wall: readonly WallAlong[]
  /** Whether courses are begun at their right ends: as the lock has it, or chosen where it leaves both. */
  readonly fromRight: boolean
  /** Whether the text said where, and if it did, whether the planks run along that wall. */
  readonly said: 'said' | 'not said' | 'said, but across the planks'
}

/** What is started on. */
export interface ToStart {
  readonly floor: Floor
  readonly survey: Survey
  readonly area: FloorArea
  readonly laid: ProductRules['laid']
}

/**
 * The start as stated, else along the longest wall that the planks run along; of equals the one from
 * which the floor looks least by `viewFrom`. A lock that leaves it open is laid from the end from which
 * the floor looks so.
 */
export function startOf(to: ToStart, run: Frame): Start {
  const { floor, survey, area } = to
  const stated = floor.start === null ? null : statedStart(floor.start, survey, area, run)
  if (stated !== null) return leastView(to, [stated])
  const walls = wallsAlong(area, run)
  const wholes = wallsToStartAt(walls)
  const longest = wholes.reduce((most, wall) => Math.max(most, wall.length), 0)
  const said = floor.start === null ? 'not said' : 'said, but across the planks'
  const equals = wholes.filter((wall) => wall.length === longest)
  if (equals.length === 0) return { frame: run, walls, wall: [], fromRight: false, said }
  const fromBelow = facing(area, run, said)
  const fromAbove = facing(area, reversed(run), said)
  return leastView(
    to,
    equals.map((wall) => (wall.floor === 'below' ? fromBelow : fromAbove)(wall)),
  )
}

/**
 * Walls level with the planks, doors in them left out; where there is none, walls at an angle, and else
 * whatever the floor ends at.
 */
function wallsToStartAt(walls: readonly WallAlong[]): readonly WallWhole[] {
  const standing = walls.filter(({ wall }) => wall !== null)
  const choices = [standing.filter(({ level }) => level), standing, walls]
  return wholeWalls(choices.find((some) => some.length > 0) ?? [])
}

const HANDS = {
  'left to right': [false],
  'right to left': [true],
  'either way': [false, true],
} as const satisfies Record<ProductRules['laid'], readonly boolean[]>

function leastView({ area, laid }: ToStart, starts: readonly Omit<Start, 'fromRight'>[]): Start {
  const choices = starts.flatMap((start) =>
    HANDS[laid].map((fromRight): Start => ({ ...start, fromRight })),
  )
  if (choices.length === 1) return choices[0]!
  const least = new Set([...Map.groupBy(choices, sideOf).values()].map(leastOfSide))
  const views = choices
    .filter((start) => least.has(start))
    .map((start) => ({ start, view: viewFrom(area, { ...start, inMirror: start.fromRight }) }))
  return views.reduce((a, b) => (compareNumbers(b.view, a.view) < 0 ? b : a)).start
}

function sideOf({ frame, fromRight }: Start): string {
  return `${frame.east} ${frame.north} ${fromRight}`
}

/**
 * From one side a floor looks the same from everywhere, but counted from another place: the view is
 * least where the two numbers that it begins with are.
 */
function leastOfSide(starts: readonly Start[]): Start {
  const placed = starts.map((start) => ({
    start,
    at: standing({ ...start, inMirror: start.fromRight }),
  }))
  return placed.reduce((a, b) =>
    b.at.u > a.at.u || (b.at.u === a.at.u && b.at.v < a.at.v) ? b : a,
  ).start
}

function statedStart(
  start: NonNullable<Floor['start']>,
  survey: Survey,
  area: FloorArea,
  run: Frame,
): Omit<Start, 'fromRight'> | null {
  const along = wallFrame(survey, start.room.key, start.wall)
  if (along === null) return null
  const dot = along.east * run.east + along.north * run.north
  const across = along.east * run.north - along.north * run.east
  // At 45 degrees it lies along the planks, as an edge does that rises no more than its run.
  const rounded = Math.sqrt(run.east * run.east + run.north * run.north) * ROUNDED
  if (Math.abs(dot) < Math.abs(across) - rounded) return null
  const frame = dot > 0 ? run : reversed(run)
  // A wall that is known is found by itself, whatever it is called.
  const wall = { wall: wallKey(start.room.key, start.wall), label: '' }
  const found = facing(area, frame, 'said')(wall)
  return found.wall.length === 0 ? null : found
}

type Facing = (whole: Pick<WallWhole, 'wall' | 'label'>) => Omit<Start, 'fromRight'>

/** Faces any wall of a floor, out of edges that are looked through once. */
function facing(area: FloorArea, frame: Frame, said: Start['said']): Facing {
  const walls = wallsAlong(area, frame)
  const below = walls.filter(({ floor }) => floor === 'below')
  const byWall = Map.groupBy(below, nameOf)
  return (whole) => ({ frame, walls, wall: byWall.get(nameOf(whole)) ?? [], said })
}

function nameOf({ wall, label }: Pick<WallWhole, 'wall' | 'label'>): string {
  return wall === null ? `edge ${label}` : `wall ${wall}`
}
