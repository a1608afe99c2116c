import type { Point } from '../geometry/point.ts'
import { NM_PER_M } from '../units/length.ts'
import { leastFirst } from './least-first.ts'
import type { Pair } from './pairing.ts'
import type { RoomPlan } from './room-plan.ts'
import { throughAt } from './through.ts'
import { minus, plus, times, toPoint, type Vector } from './vector.ts'

/** How the rooms lie together. */
export interface Placing {
  /** By room: how far it is moved from its own origin. */
  readonly moves: readonly Point[]
  /** By room: rooms tied by doorways share a number, counted in written order. */
  readonly networks: readonly number[]
  /** By room: the doorway it was placed by, from a room placed before; null where it starts a network. */
  readonly placedBy: readonly (Pair | null)[]
  /** By room: through how many doorways it was placed from the first room of its network. */
  readonly depths: readonly number[]
}

const NOWHERE: Point = { x: 0, y: 0 }

/**
 * Places the rooms one after the other: the first of each network stays, and always the first room in
 * written order that has a doorway to a placed one comes next, the middles of its two faces a wall's
 * thickness apart. Networks that nothing ties stand side by side, a metre or two apart, so that no
 * drawing overlaps; the first keeps its origin.
 */
export function placeRooms(plans: readonly RoomPlan[], pairs: readonly Pair[]): Placing {
  const doors = doorsByRoom(plans.length, pairs)
  const moves: Point[] = plans.map(() => NOWHERE)
  const networks: number[] = plans.map(() => -1)
  const placedBy: (Pair | null)[] = plans.map(() => null)
  const depths: number[] = plans.map(() => 0)
  let network = 0
  plans.forEach((_, first) => {
    if (networks[first] !== -1) return
    networks[first] = network
    const ready = leastFirst()
    const reachedBy = new Map<number, Pair>()
    const reach = (room: number) => {
      for (const pair of doors[room]!) {
        const next = otherRoom(pair, room)
        if (networks[next] !== -1 || reachedBy.has(next)) continue
        reachedBy.set(next, pair)
        ready.add(next)
      }
    }
    reach(first)
    for (let room = ready.take(); room !== undefined; room = ready.take()) {
      const pair = reachedBy.get(room)!
      moves[room] = moveOf(pair, room, plans, moves)
      networks[room] = network
      placedBy[room] = pair
      depths[room] = depths[otherRoom(pair, room)]! + 1
      reach(room)
    }
    network += 1
  })
  return { moves: setApart(plans, networks, moves), networks, placedBy, depths }
}

function doorsByRoom(count: number, pairs: readonly Pair[]): readonly Pair[][] {
  const doors: Pair[][] = Array.from({ length: count }, () => [])
  for (const pair of pairs) {
    if (pair.far === null) continue
    doors[pair.near.room]!.push(pair)
    doors[pair.far.room]!.push(pair)
  }
  return doors
}

export const otherRoom = ({ near, far }: Pair, room: number) =>
  near.room === room ? far!.room : near.room

/** From the middle of the face in the placed room, out through the wall, to the room's own middle. */
function moveOf(
  pair: Pair,
  room: number,
  plans: readonly RoomPlan[],
  moves: readonly Point[],
): Point {
  const { near, far } = pair
  const [own, placed] = near.room === room ? [near, far!] : [far!, near]
  const at = plus(placed.face.middle, moves[placed.room]!)
  const through = times(placed.face.frame.out, throughAt(pair, plans))
  return toPoint(minus(plus(at, through), own.face.middle))
}

/** From a doorway's middle in its near room to its middle in the far one, less the wall between. */
export function missAt(pair: Pair, plans: readonly RoomPlan[], moves: readonly Point[]): Vector {
  const { near, far } = pair
  const from = plus(near.face.middle, moves[near.room]!)
  const through = times(near.face.frame.out, throughAt(pair, plans))
  return minus(plus(far!.face.middle, moves[far!.room]!), plus(from, through))
}

function setApart(
  plans: readonly RoomPlan[],
  networks: readonly number[],
  moves: readonly Point[],
): readonly Point[] {
  const count = networks.reduce((most, network) => Math.max(most, network), -1) + 1
  const west: number[] = new Array(count).fill(Infinity)
  const east: number[] = new Array(count).fill(-Infinity)
  plans.forEach((plan, i) => {
    if (plan.box === null) return
    const network = networks[i]!
    west[network] = Math.min(west[network]!, plan.box.west + moves[i]!.x)
    east[network] = Math.max(east[network]!, plan.box.east + moves[i]!.x)
  })
  const shifts = shiftsOf(west, east)
  return moves.map(({ x, y }, i) => ({ x: x + shifts[networks[i]!]!, y }))
}

/**
 * How far east each network is moved: it begins on the first whole metre that lies a metre past the one
 * before it, so that a corrected reading seldom moves a network to which it does not belong.
 */
function shiftsOf(west: readonly number[], east: readonly number[]): readonly number[] {
  let edge: number | null = null
  return west.map((start, network) => {
    if (start === Infinity) return 0
    const shift = edge === null ? 0 : wholeMetrePast(edge) - start
    edge = east[network]! + shift
    return shift
  })
}

/** A corner that was rounded may lie this much past where it would be: 1 µm is no distance. */
const ROUNDED = 1000

function wholeMetrePast(edge: number): number {
  return Math.ceil((edge + NM_PER_M - ROUNDED) / NM_PER_M) * NM_PER_M + 0
}
