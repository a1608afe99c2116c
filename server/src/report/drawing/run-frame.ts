import type { Point } from '../../geometry/point.ts'
import { type Frame, outOfFrame } from '../../layout/frame.ts'
import { roundToNm } from '../../units/round.ts'
import type { SubjectFloor } from './subject.ts'
import { type Direction, direction, left, opposite } from './vector.ts'

/** Where a floor's run lies in the drawing. */
export interface RunFrame {
  /** A place along and across the run, as a point of the plan. */
  readonly place: (u: number, v: number) => Point
  /** Along the planks, and across them to rising courses. */
  readonly along: Direction
  readonly across: Direction
}

export function runFrame(
  { published, rooms }: SubjectFloor,
  moves: ReadonlyMap<string, Point>,
): RunFrame {
  const by = rooms.map((room) => moves.get(room)).find((move) => move !== undefined)
  const place = (u: number, v: number): Point => {
    const { x, y } = outOfFrame(published.frame, { x: u, y: v })
    return { x: roundToNm(x + (by?.x ?? 0)), y: roundToNm(y + (by?.y ?? 0)) }
  }
  const along = alongOf(published.frame)
  return { place, along, across: left(along) }
}

/** Along the planks, and the way in which courses follow each other. */
export function runDirections(
  frame: Frame,
  upward: boolean,
): { readonly along: Direction; readonly onward: Direction } {
  const along = alongOf(frame)
  return { along, onward: upward ? left(along) : opposite(left(along)) }
}

export function alongOf({ east, north }: Frame): Direction {
  return direction({ x: 0, y: 0 }, { x: east, y: north })
}
