import { boxes } from '../../geometry/boxes.ts'
import type { Point, Ring } from '../../geometry/point.ts'
import { type Box, boxOf } from '../../geometry/ring.ts'
import type { Doorway, SurveyedRoom } from '../../survey/survey.ts'
import type { Nm, UnitStyle } from '../../units/length.ts'
import { printLength } from '../../units/print.ts'
import { areaText } from '../area-text.ts'
import type { ClosetFloor, ObstacleShape, RoomFloor, WallFace } from '../scene.ts'
import { isOpen } from './masonry.ts'
import { type Direction, direction, distance, moved } from './vector.ts'

export function roomFloors(rooms: readonly SurveyedRoom[], units: UnitStyle): RoomFloor[] {
  return rooms.map((room) => ({
    kind: 'room',
    id: `room ${room.room.name.key}`,
    span: room.room.name.span,
    ring: room.outline,
    title: `${room.room.name.text}: ${areaText([room.outline], units)}`,
  }))
}

export function closets(rooms: readonly SurveyedRoom[], units: UnitStyle): ClosetFloor[] {
  return rooms.flatMap((room) =>
    room.closets.map((closet) => ({
      kind: 'closet',
      id: `closet ${closet.name}`,
      span: room.room.recesses[closet.recess]?.span ?? null,
      ring: closet.outline,
      throat: closet.throat,
      title: `${closet.name}: ${areaText([closet.outline], units)}`,
    })),
  )
}

export function obstacles(rooms: readonly SurveyedRoom[]): ObstacleShape[] {
  return rooms.flatMap((room) =>
    room.obstacles.map((obstacle, i) => ({
      kind: 'obstacle',
      id: `${room.room.name.key}: obstacle ${i + 1}`,
      span: obstacle.span,
      of: obstacle.kind,
      ring: obstacle.ring,
      title: obstacle.label,
    })),
  )
}

/** The face of each wall between its openings, so that a click on it finds its line. */
export function wallFaces(
  rooms: readonly SurveyedRoom[],
  doorways: readonly Doorway[],
  units: UnitStyle,
): WallFace[] {
  const gapsBeside = finderOf([
    ...doorways.flatMap((doorway) => [doorway.near, doorway.far]),
    ...rooms.flatMap((room) => room.closets.flatMap((closet) => edgesOf(closet.throat))),
  ])
  return rooms.flatMap((room) => {
    const lines = Map.groupBy(edgesOf(room.outline).entries(), ([i]) => room.edges[i]?.wall)
    return room.room.walls.map((wall) => ({
      kind: 'wall face',
      id: `${room.room.name.key}: wall ${wall.index}`,
      span: wall.span,
      lines: (lines.get(wall.index) ?? []).flatMap(([, line]) => without(line, gapsBeside(line))),
      open: isOpen(room, wall.index),
      title: `${wall.label} of ${room.room.name.text}: ${
        wall.reading.nm === null ? 'to be read' : printLength(wall.reading.nm, units)
      }`,
    }))
  })
}

type Line = readonly [Point, Point]

function edgesOf(ring: Ring): Line[] {
  return ring.map((from, i) => [from, ring[(i + 1) % ring.length] ?? from] as const)
}

/** A thousandth of what the eye sees: corners of openings are rounded on their own. */
const ON_THE_LINE: Nm = 100_000

/** Finds the gaps whose boxes come near a line, in the order given. */
function finderOf(gaps: readonly Line[]): (line: Line) => readonly Line[] {
  const found = boxes<number>()
  for (const [i, gap] of gaps.entries()) found.add(i, widened(gap))
  return (line) => {
    const near = new Set<number>()
    found.some(widened(line), (i) => {
      near.add(i)
      return false
    })
    return [...near].sort((a, b) => a - b).map((i) => gaps[i]!)
  }
}

function widened(line: Line): Box {
  const { west, south, east, north } = boxOf(line)
  return {
    west: west - ON_THE_LINE,
    south: south - ON_THE_LINE,
    east: east + ON_THE_LINE,
    north: north + ON_THE_LINE,
  }
}

/** What is left of a wall's face between its openings. */
function without([from, to]: Line, gaps: readonly Line[]): Line[] {
  const along = direction(from, to)
  const long = distance(from, to)
  const cuts = gaps
    .filter((gap) => gap.every((end) => Math.abs(offTheLine(from, along, end)) < ON_THE_LINE))
    .map((gap) => gap.map((end) => onTheLine(from, along, end)).sort((a, b) => a - b))
    .filter((cut) => (cut[1] ?? 0) > 0 && (cut[0] ?? 0) < long)
    .sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0))
  const marks = [0, ...cuts.flat(), long]
  return marks.flatMap((start, i) => {
    const end = marks[i + 1]
    const face = i % 2 === 0 && end !== undefined && end > start
    return face ? [[moved(from, along, start), moved(from, along, end)] as const] : []
  })
}

function onTheLine(from: Point, along: Direction, point: Point): number {
  return (point.x - from.x) * along.x + (point.y - from.y) * along.y
}

function offTheLine(from: Point, along: Direction, point: Point): number {
  return (point.y - from.y) * along.x - (point.x - from.x) * along.y
}
