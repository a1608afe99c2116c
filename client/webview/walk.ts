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

/** Going aside counts more than going on, so that a step keeps to its course. */
const ASIDE = 3

/** The shape next to another in the way of an arrow key, or null where there is none. */
export function nextTo(from: Shape, step: Step, shapes: readonly Shape[]): Shape | null {
  const way = WAYS[step]
  const at = middleOf(from)
  let best: { readonly shape: Shape; readonly far: number } | null = null
  for (const shape of shapes) {
    const to = middleOf(shape)
    const ahead = (to.x - at.x) * way.x + (to.y - at.y) * way.y
    const aside = Math.abs((to.x - at.x) * way.y - (to.y - at.y) * way.x)
    const far = ahead + ASIDE * aside
    if (shape.id === from.id || ahead <= aside / ASIDE || (best !== null && far >= best.far))
      continue
    best = { shape, far }
  }
  return best?.shape ?? null
}

function middleOf(shape: Shape): Point {
  const points = pointsOf(shape)
  const xs = points.map(({ x }) => x)
  const ys = points.map(({ y }) => y)
  return {
    x: (Math.min(...xs) + Math.max(...xs)) / 2,
    y: (Math.min(...ys) + Math.max(...ys)) / 2,
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
