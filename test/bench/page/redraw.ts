import { SCREEN } from '../../../client/webview/screen-palette.ts'
import type { Scene } from '../../../server/src/report/scene.ts'
import { h, markup } from '../../../server/src/report/svg/element.ts'
import { groupStyle } from '../../../server/src/report/svg/group-style.ts'
import type { Pen } from '../../../server/src/report/svg/pen.ts'
import { drawn } from '../../../server/src/report/svg/shapes.ts'

/** All of a scene as the page would draw it, as text for `innerHTML`. */
export function redrawn({ shapes, em }: Scene): string {
  const pen: Pen = { place: ({ x, y }) => ({ x, y: -y }), em, palette: SCREEN }
  return shapes
    .map((shape) =>
      markup(
        h(
          'g',
          {
            class: shape.kind.replaceAll(' ', '-'),
            'data-id': shape.id,
            ...groupStyle(shape.kind, pen),
          },
          ...drawn(shape, pen),
        ),
      ),
    )
    .join('')
}
