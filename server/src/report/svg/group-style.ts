import type { ShapeKind } from '../scene.ts'
import type { Attributes } from './element.ts'
import type { Pen } from './pen.ts'
import { HAIRLINE, HEAVY, MEDIUM, THIN, weight } from './weights.ts'

/** What all shapes of a kind share: it stands on the group that they are drawn in. */
export function groupStyle(kind: ShapeKind, { em, palette }: Omit<Pen, 'place'>): Attributes {
  const line = (stroke: string, hundredths: number, fill = 'none'): Attributes => ({
    fill,
    stroke,
    'stroke-width': weight(em, hundredths),
  })
  switch (kind) {
    case 'masonry':
      return line(palette.ink, THIN, 'url(#wall)')
    case 'room':
    case 'closet':
      return { fill: palette.paper }
    case 'wall face':
      return { ...line(palette.ink, HEAVY), 'stroke-linecap': 'square' }
    case 'sketch wall':
      return { fill: 'none', 'stroke-linecap': 'round' }
    case 'sketch corner':
      return line(palette.ink, MEDIUM)
    case 'piece':
      return { 'stroke-linejoin': 'round' }
    case 'seam':
      return line(palette.seam, HAIRLINE)
    case 'joint':
      return line(palette.joint, THIN + 1)
    case 'opening':
    case 'obstacle':
      return line(palette.ink, THIN)
    case 'transition':
      return line(palette.trim, HEAVY)
    case 'working line':
      return line(palette.working, MEDIUM, palette.working)
    case 'dimension':
    case 'rip label':
      return line(palette.softInk, HAIRLINE)
    case 'laying':
      return line(palette.softInk, THIN)
    case 'breach':
      return line(palette.alarm, MEDIUM)
    case 'rule':
      return line(palette.softInk, HAIRLINE)
    case 'scale bar':
    case 'north':
      return line(palette.ink, THIN)
    case 'label':
    case 'note':
    case 'swatch':
      return {}
  }
}
