import type { Scene, Shape, ShapeKind } from './scene.ts'
import { type Element, h, markup } from './svg/element.ts'
import { groupStyle } from './svg/group-style.ts'
import { mm } from './svg/number.ts'
import { PRINT } from './svg/palette.ts'
import { placeOn } from './svg/path.ts'
import { patterns } from './svg/patterns.ts'
import type { Pen } from './svg/pen.ts'
import { drawn } from './svg/shapes.ts'

/**
 * The scene as a drawing file for print: black ink and pale grounds on white paper, sizes in
 * millimetres of the house. It holds no script, no style sheet, nothing from elsewhere; the same scene
 * gives the same bytes everywhere.
 */
export function svg(scene: Scene): string {
  const size = [scene.high.x - scene.low.x, scene.high.y - scene.low.y] as const
  const pen: Pen = { place: placeOn(scene.low, scene.high), em: scene.em, palette: PRINT }
  const root = h(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${mm(size[0])} ${mm(size[1])}`,
      'font-family': 'Helvetica, Arial, sans-serif',
      role: 'img',
    },
    h('title', {}, scene.title),
    patterns(scene, PRINT),
    h('rect', { width: '100%', height: '100%', fill: PRINT.paper }),
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
      { class: run.kind.replaceAll(' ', '-'), ...groupStyle(run.kind, pen) },
      ...run.shapes.flatMap((shape) => drawn(shape, pen)),
    ),
  )
}
