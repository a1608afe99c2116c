import { bowed } from './bows.ts'
import type { Placed } from './house.ts'
import { add, type Point, rounded, scaled } from './point.ts'
import { compare, ratio } from './ratio.ts'
import { faceOf } from './shape.ts'
import type { Spot } from './spots.ts'

/** A straight stretch of a room's outline, and whether it is the wall itself or an alcove's side. */
export interface Outlined {
  readonly from: Point
  readonly to: Point
  readonly place: number
  /** Which side of an alcove in its wall, numbered from 1; 0 for the wall. */
  readonly alcove: number
}

/** A room's outline: its walls, those with a bow as an arc, alcoves pushed out. */
export function outlineOf(room: Placed): readonly Outlined[] {
  const { shape, spots } = room
  return shape.room.walls.flatMap((wall, place) => {
    const face = faceOf(shape, place)
    const alcoves = spots
      .filter(({ one }) => one.wall === place && one.kind === 'alcove')
      .toSorted((a, b) => compare(a.from, b.from))
    const between = wall.bow === null ? alcoves.flatMap(pushedOut) : bowed(face, wall.bow)
    const line = [face.left, ...between, face.right].map(rounded)
    return line.slice(1).map((to, i) => {
      const isAlcove = wall.bow === null && i % 4 !== 0
      return { from: line[i] ?? to, to, place, alcove: isAlcove ? i : 0 }
    })
  })
}

function pushedOut({ one, left, right, face }: Spot): readonly Point[] {
  const deep = scaled(face.out, ratio(one.deep ?? 0n))
  return [left, add(left, deep), add(right, deep), right]
}
