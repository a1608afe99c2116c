import type { Nm } from '../units/length.ts'
import type { FloorArea, RimEdge } from './floor-area.ts'
import { type Frame, intoFrame } from './frame.ts'
import { middleOf } from './middle.ts'
import type { WallAlong } from './rips.ts'

/** A wall of the floor and the frame in which one faces it, from the left or seen in a mirror. */
export interface Standpoint {
  readonly frame: Frame
  readonly wall: readonly WallAlong[]
  readonly inMirror: boolean
}

/**
 * All that a planner sees of a floor from a standpoint: its edges with their gaps, which of them are
 * walls and walls of the start room, and its doorways, measured from the end of the wall that one faces. Where a floor looks the same from two standpoints,
 * the same plan comes out of either; so what is chosen by this list depends neither on where the house
 * lies and how it is turned, nor on the order in which its rooms and walls were told.
 * Time: n log n in the edges.
 */
export function viewFrom(area: FloorArea, standpoint: Standpoint): readonly Nm[] {
  const { frame, inMirror } = standpoint
  const { u, v } = standing(standpoint)
  const middle = middleOf(area)
  const see = (point: Parameters<typeof intoFrame>[1]): readonly Nm[] => {
    const { x, y } = intoFrame(frame, point, middle)
    return [(inMirror ? 0 - x : x) - u, v - y]
  }
  const room = standpoint.wall[0]?.room
  const standingOf = (edge: RimEdge) => (edge.wall === null ? 0 : edge.room === room ? 2 : 1)
  const edges = area.rim.map((edge) => [
    ...inOrder(see(edge.from), see(edge.to)),
    edge.gap,
    standingOf(edge),
  ])
  const doorways = area.doorways.map(({ ring }) => ring.map(see).sort(compareNumbers).flat())
  return [...edges.sort(compareNumbers), ...doorways.sort(compareNumbers)].flat()
}

/** Where one stands: at the end of the wall that one faces. */
export function standing({ wall, inMirror }: Pick<Standpoint, 'wall' | 'inMirror'>): {
  readonly u: Nm
  readonly v: Nm
} {
  const ends = wall.map(({ from, to }) => (inMirror ? 0 - to : from))
  return {
    u: ends.reduce((least, end) => Math.min(least, end), Infinity),
    v: wall.reduce((most, { high }) => Math.max(most, high), -Infinity),
  }
}

/** An edge is the same one from either end. */
function inOrder(a: readonly Nm[], b: readonly Nm[]): readonly Nm[] {
  return compareNumbers(a, b) <= 0 ? [...a, ...b] : [...b, ...a]
}

/** By the first number that differs, else by their count. */
export function compareNumbers(a: readonly Nm[], b: readonly Nm[]): number {
  const at = a.findIndex((each, i) => each !== b[i])
  return at < 0 || at >= b.length ? a.length - b.length : a[at]! - b[at]!
}
