import type { Shape } from '../../server/src/report/scene.ts'

/** The other pieces that are cut from the plank of a piece: where its offcut goes, or comes from. */
export function kinOf(piece: Shape, shapes: readonly Shape[]): readonly string[] {
  if (piece.kind !== 'piece') return []
  const floor = floorOf(piece.id)
  return shapes.flatMap((shape) =>
    shape.kind === 'piece' &&
    shape.plank === piece.plank &&
    shape.id !== piece.id &&
    floorOf(shape.id) === floor
      ? [shape.id]
      : [],
  )
}

/** Planks are numbered floor by floor. */
function floorOf(id: string): string {
  return id.slice(0, id.lastIndexOf(': piece '))
}
