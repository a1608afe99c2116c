import type { Point } from '../../geometry/point.ts'
import type { Shape } from '../scene.ts'
import { groundOf } from './letter.ts'

/** Points of a plan's shape that may reach out furthest; all others lie within the walls. */
export function outermost(shape: Shape): readonly Point[] {
  switch (shape.kind) {
    case 'masonry':
      return shape.region.flat()
    case 'room':
      return shape.ring
    case 'dimension':
      return [...shape.line, ...shape.extensions.flat(), ...groundOf(shape.lettering)]
    case 'rip label':
      return [...shape.plate, ...shape.leader]
    case 'sketch wall':
      return [...shape.line, ...groundOf(shape.lettering)]
    case 'label':
      return shape.plate
    case 'opening':
      return [...shape.throat, ...shape.swing]
    default:
      return []
  }
}
