import type { Point, Ring } from '../../geometry/point.ts'
import type { Doorway, SurveyedRoom } from '../../survey/survey.ts'
import { NM_PER_FOOT, type Nm } from '../../units/length.ts'
import type { Subject } from './subject.ts'
import { extent } from './vector.ts'

/** Between rooms that nothing ties together. */
const APART: Nm = 5 * NM_PER_FOOT

/** A subject whose untied rooms stand beside each other, and how far each room was moved for it. */
export interface Arranged {
  readonly rooms: readonly SurveyedRoom[]
  readonly doorways: readonly Doorway[]
  /** By room key; a room that is not there was not moved. */
  readonly moves: ReadonlyMap<string, Point>
}

/**
 * Rooms tied by doorways keep their places; each further group, whose place nobody measured, is set
 * to the right of the one before, tops level.
 */
export function sideBySide({ rooms, doorways }: Pick<Subject, 'rooms' | 'doorways'>): Arranged {
  const moveOf = networkMoves(rooms)
  const moves = new Map(rooms.map((room) => [room.room.name.key, moveOf(room.network)] as const))
  const ofRoom = (key: string): Point => moves.get(key) ?? { x: 0, y: 0 }
  return {
    rooms: rooms.map((room) => movedRoom(room, moveOf(room.network))),
    doorways: doorways.map((doorway) => movedDoorway(doorway, ofRoom(doorway.room))),
    moves,
  }
}

function networkMoves(rooms: readonly SurveyedRoom[]): (network: number) => Point {
  const moves = new Map<number, Point>()
  let edge: Point | null = null
  for (const [network, tied] of Map.groupBy(rooms, (room) => room.network)) {
    const points = tied.flatMap((room) => [
      ...room.outline,
      ...room.closets.flatMap((closet) => closet.outline),
    ])
    if (points.length === 0) continue
    const { low, high } = extent(points)
    const by: Point = edge === null ? { x: 0, y: 0 } : { x: edge.x - low.x, y: edge.y - high.y }
    moves.set(network, by)
    edge = { x: high.x + by.x + APART, y: high.y + by.y }
  }
  return (network) => moves.get(network) ?? { x: 0, y: 0 }
}

export function movedBy(by: Point): (point: Point) => Point {
  return (point) => ({ x: point.x + by.x, y: point.y + by.y })
}

function movedRoom(room: SurveyedRoom, by: Point): SurveyedRoom {
  const ring = (points: Ring): Ring => points.map(movedBy(by))
  return {
    ...room,
    corners: ring(room.corners),
    outline: ring(room.outline),
    closets: room.closets.map((closet) => ({
      ...closet,
      outline: ring(closet.outline),
      throat: ring(closet.throat),
    })),
    obstacles: room.obstacles.map((obstacle) => ({ ...obstacle, ring: ring(obstacle.ring) })),
  }
}

function movedDoorway(doorway: Doorway, by: Point): Doorway {
  const move = movedBy(by)
  return {
    ...doorway,
    near: [move(doorway.near[0]), move(doorway.near[1])],
    far: [move(doorway.far[0]), move(doorway.far[1])],
  }
}
