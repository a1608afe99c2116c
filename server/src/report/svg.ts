import type { Nm } from '../units/length.ts'
import type { Scene, Shape, ShapeKind } from './scene.ts'
import { type Attributes, type Element, h, markup } from './svg/element.ts'
import { mm } from './svg/number.ts'
import * as palette from './svg/palette.ts'
import { placeOn } from './svg/path.ts'
import { patterns } from './svg/patterns.ts'
import { drawn, type Pen, weight } from './svg/shapes.ts'

/**
 * The scene as a drawing file for print: black ink and pale grounds on white paper, sizes in
 * millimetres of the house. It holds no script, no style sheet, nothing from elsewhere; the same scene
 * gives the same bytes everywhere.
 */
export function svg(scene: Scene): string {
  const size = [scene.high.x - scene.low.x, scene.high.y - scene.low.y] as const
  const pen: Pen = { place: placeOn(scene.low, scene.high), em: scene.em }
  const root = h(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${mm(size[0])} ${mm(size[1])}`,
      'font-family': 'Helvetica, Arial, sans-serif',
      role: 'img',
    },
    h('title', {}, scene.title),
    patterns(scene),
    h('rect', { width: '100%', height: '100%', fill: palette.PAPER }),
    ...groups(scene.shapes, pen),
  )
  return `${markup(root)}\n`
}

/** Neighbours of one kind share a group and what it says of ink and weight. */
function groups(shapes: readonly Shape[], pen: Pen): Element[] {
  const runs: { readonly kind: ShapeKind; readonly shapes: Shape[] }[] = []
  for (const shape of shapes) {
    const last = runs.at(-1)
    if (last?.kind === shape.kind) last.shapes.push(shape)
    else runs.push({ kind: shape.kind, shapes: [shape] })
  }
  return runs.map((run) =>
    h(
      'g',
      { class: run.kind.replaceAll(' ', '-'), ...groupStyle(run.kind, pen.em) },
      ...run.shapes.flatMap((shape) => drawn(shape, pen)),
    ),
  )
}

function groupStyle(kind: ShapeKind, em: Nm): Attributes {
  const line = (stroke: string, hundredths: number, fill = 'none'): Attributes => ({
    fill,
    stroke,
    'stroke-width': weight(em, hundredths),
  })
  switch (kind) {
    case 'masonry':
      return line(palette.INK, palette.THIN, 'url(#wall)')
    case 'room':
    case 'closet':
      return { fill: palette.PAPER }
    case 'wall face':
      return { ...line(palette.INK, palette.HEAVY), 'stroke-linecap': 'square' }
    case 'sketch wall':
      return { fill: 'none', 'stroke-linecap': 'round' }
    case 'sketch corner':
      return line(palette.INK, palette.MEDIUM)
    case 'piece':
      return { 'stroke-linejoin': 'round' }
    case 'seam':
      return line(palette.SEAM, palette.HAIRLINE)
    case 'joint':
      return line(palette.JOINT, palette.THIN + 1)
    case 'opening':
    case 'obstacle':
      return line(palette.INK, palette.THIN)
    case 'transition':
      return line(palette.TRIM, palette.HEAVY)
    case 'working line':
      return line(palette.WORKING, palette.MEDIUM, palette.WORKING)
    case 'dimension':
    case 'rip label':
      return line(palette.SOFT_INK, palette.HAIRLINE)
    case 'laying':
      return line(palette.SOFT_INK, palette.THIN)
    case 'breach':
      return line(palette.ALARM, palette.MEDIUM)
    case 'rule':
      return line(palette.SOFT_INK, palette.HAIRLINE)
    case 'scale bar':
    case 'north':
      return line(palette.INK, palette.THIN)
    case 'label':
    case 'note':
    case 'swatch':
      return {}
  }
}
