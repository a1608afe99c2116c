import { type LegendRow, legendOf } from '../../server/src/report/drawing/legend.ts'
import type { Shape, Swatch } from '../../server/src/report/scene.ts'
import { drawn } from '../../server/src/report/svg/shapes.ts'
import { PLACE } from './drawing.ts'
import { h, made, svg } from './elements.ts'
import { SCREEN } from './screen-palette.ts'

/** How to read what is drawn: a sample of each, drawn as the thing itself is. */
export class Legend {
  readonly root = h('ul', { class: 'legend' })
  private said = ''

  show(shapes: Iterable<Shape>, em: number): void {
    const rows = legendOf(shapes)
    const said = `${em} ${rows.map(({ of }) => of).join(', ')}`
    if (said === this.said) return
    this.said = said
    this.root.replaceChildren(...rows.map((row) => sample(row, em)))
  }
}

/** In parts of the lettering's height. */
const WIDE = 2.6
const HIGH = 1.1

function sample({ of, text }: LegendRow, em: number): HTMLLIElement {
  const [wide, high] = [em * WIDE, em * HIGH]
  const ring = [
    { x: 0, y: 0 },
    { x: wide, y: 0 },
    { x: wide, y: high },
    { x: 0, y: high },
  ]
  const shape: Swatch = { kind: 'swatch', id: of, span: null, of, ring }
  const [width, height] = [wide / 1_000_000, high / 1_000_000]
  const box = svg('svg', {
    viewBox: `0 ${-height} ${width} ${height}`,
    class: 'sample',
    'aria-hidden': 'true',
  })
  box.append(...drawn(shape, { place: PLACE, em, palette: SCREEN }).map(made))
  return h('li', {}, box, text)
}
