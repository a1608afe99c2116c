import type { Point } from '../../server/src/geometry/point.ts'
import type { Shape, ShapeKind } from '../../server/src/report/scene.ts'

/** What the arrow keys move over. */
export type Level = 'rooms' | 'walls' | 'pieces'

export const LEVELS: readonly Level[] = ['rooms', 'walls', 'pieces']

const KINDS: Readonly<Record<Level, readonly ShapeKind[]>> = {
  rooms: ['room', 'closet'],
  walls: ['wall face', 'sketch wall', 'opening', 'transition', 'obstacle'],
  pieces: ['piece'],
}

export function isAt(level: Level, shape: Shape): boolean {
  return KINDS[level].includes(shape.kind)
}

/** Which keys would have come to a shape; null where none does, as to a dimension. */
export function levelOf(shape: Shape): Level | null {
  return LEVELS.find((level) => isAt(level, shape)) ?? null
}

export type Step = 'ArrowLeft' | 'ArrowRight' | 'ArrowUp' | 'ArrowDown'

const WAYS: Readonly<Record<Step, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
}

export function isStep(key: string): key is Step {
  return Object.hasOwn(WAYS, key)
}

/** The shape next to another in the way of an arrow key: in the same row if there is one. */
export function nextTo(from: Shape, step: Step, shapes: readonly Shape[]): Shape | null {
  const at = boxOf(from)
  let best: { readonly shape: Shape; readonly far: Far } | null = null
  for (const shape of shapes) {
    if (shape.id === from.id) continue
    const far = howFar(at, boxOf(shape), WAYS[step])
    if (far !== null && (best === null || isNearer(far, best.far))) best = { shape, far }
  }
  return best?.shape ?? null
}

interface Far {
  readonly inRow: boolean
  readonly way: number
}

function isNearer(a: Far, b: Far): boolean {
  return a.inRow === b.inRow ? a.way < b.way : a.inRow
}

/** Going aside counts more than going on. */
const ASIDE = 3

/** From the middle of one box to that of another; null where it does not lie ahead. */
function howFar(from: Box, to: Box, way: Point): Far | null {
  const x = (to.low.x + to.high.x - from.low.x - from.high.x) / 2
  const y = (to.low.y + to.high.y - from.low.y - from.high.y) / 2
  const ahead = x * way.x + y * way.y
  const aside = Math.abs(x * way.y - y * way.x)
  if (ahead <= aside / ASIDE) return null
  const inRow = way.x === 0 ? overlaps(from, to, 'x') : overlaps(from, to, 'y')
  return { inRow, way: ahead + ASIDE * aside }
}

interface Box {
  readonly low: Point
  readonly high: Point
}

/** By more than half of the smaller. */
function overlaps(a: Box, b: Box, axis: 'x' | 'y'): boolean {
  const shared = Math.min(a.high[axis], b.high[axis]) - Math.max(a.low[axis], b.low[axis])
  const smaller = Math.min(a.high[axis] - a.low[axis], b.high[axis] - b.low[axis])
  return shared > smaller / 2
}

function boxOf(shape: Shape): Box {
  const points = pointsOf(shape)
  const xs = points.map(({ x }) => x)
  const ys = points.map(({ y }) => y)
  return {
    low: { x: Math.min(...xs), y: Math.min(...ys) },
    high: { x: Math.max(...xs), y: Math.max(...ys) },
  }
}

function pointsOf(shape: Shape): readonly Point[] {
  switch (shape.kind) {
    case 'wall face':
      return shape.lines.flat()
    case 'sketch wall':
      return shape.line
    case 'opening':
      return shape.throat
    case 'transition':
      return [shape.from, shape.to]
    case 'room':
    case 'closet':
    case 'obstacle':
    case 'piece':
      return shape.ring
    default:
      return []
  }
}
