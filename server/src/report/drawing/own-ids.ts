import type { Shape } from '../scene.ts'

/** Shapes of one name told apart by their number, so that every id is unlike any other in the scene. */
export function ownIds(shapes: readonly Shape[]): Shape[] {
  const seen = new Map<string, number>()
  const taken = new Set<string>()
  return shapes.map((shape) => {
    let id = shape.id
    while (taken.has(id)) {
      const count = (seen.get(shape.id) ?? 1) + 1
      seen.set(shape.id, count)
      id = `${shape.id}, ${count}`
    }
    taken.add(id)
    return id === shape.id ? shape : { ...shape, id }
  })
}
