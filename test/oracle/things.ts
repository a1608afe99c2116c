import type { Thing } from './job.ts'
import { add, meeting, type Point, point, rounded, scaled } from './point.ts'
import { half, plus, type Ratio, ratio, size, times } from './ratio.ts'
import { wallNamed } from './read-room.ts'
import { drawnFaceOf, type Shape } from './shape.ts'
import { exactly } from './turns.ts'

/** A column, island, stairwell or vent in the plan, round ones as the 64-gon drawn round them. */
export function ringOf(shape: Shape, thing: Thing): readonly Point[] {
  const centre = centreOf(shape, thing)
  const corners = thing.round === null ? boxed(thing) : roundOf(half(ratio(thing.round)))
  return corners.map((corner) => rounded(add(centre, corner)))
}

/** Half its size and the distance off each of two walls, square to them. */
function centreOf(shape: Shape, thing: Thing): Point {
  const [one, two] = thing.from.map(({ wall, distance }) => {
    const face = drawnFaceOf(shape, wallNamed(shape.room.walls, wall) ?? 0)
    const off = plus(ratio(distance), reach(thing, face.out))
    return { from: add(face.left, scaled(face.out, ratio(-off.n, off.d))), along: face.along }
  })
  const met = one && two ? meeting(one.from, one.along, two.from, two.along) : null
  if (met === null) throw new RangeError('two walls that do not face each other place a thing')
  return met
}

/** From its middle to its nearest face, in a direction. */
function reach({ round, eastWest, northSouth }: Thing, way: Point): Ratio {
  if (round !== null) return half(ratio(round))
  return plus(
    times(half(ratio(eastWest)), size(way.x)),
    times(half(ratio(northSouth)), size(way.y)),
  )
}

function boxed({ eastWest, northSouth }: Thing): readonly Point[] {
  const [east, north] = [half(ratio(eastWest)), half(ratio(northSouth))]
  const corners = [point(-1n, -1n), point(1n, -1n), point(1n, 1n), point(-1n, 1n)]
  return corners.map(({ x, y }) => ({ x: times(x, east), y: times(y, north) }))
}

const SIDES = 64

/** Counter-clockwise, the first side's middle due east. */
function roundOf(radius: Ratio): readonly Point[] {
  const step = (2 * Math.PI) / SIDES
  return Array.from({ length: SIDES }, (_, i) => {
    const out = times(radius, exactly(1 / Math.cos(step / 2)))
    const turn = (i + 0.5) * step
    return { x: times(out, exactly(Math.cos(turn))), y: times(out, exactly(Math.sin(turn))) }
  })
}
