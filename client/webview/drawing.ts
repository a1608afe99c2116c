import type { ListChange } from '../../server/src/features/preview/list-change.ts'
import type { Sheet } from '../../server/src/features/preview-change.ts'
import type { Shape, ShapeKind } from '../../server/src/report/scene.ts'
import { groupStyle } from '../../server/src/report/svg/group-style.ts'
import type { Place } from '../../server/src/report/svg/path.ts'
import { patterns } from '../../server/src/report/svg/patterns.ts'
import type { Pen } from '../../server/src/report/svg/pen.ts'
import { drawn } from '../../server/src/report/svg/shapes.ts'
import { weight } from '../../server/src/report/svg/weights.ts'
import { made, svg } from './elements.ts'
import { KeyedList } from './keyed-list.ts'
import { SCREEN } from './screen-palette.ts'

/**
 * The plan's own axes with y turned down: a room that grows moves nothing else, so that nothing else is
 * drawn again.
 */
export const PLACE: Place = ({ x, y }) => ({ x, y: -y })

/** Lines that are thinner than a pointer finds, and how wide they are felt, in hundredths of lettering. */
const FELT: ReadonlyMap<ShapeKind, number> = new Map([
  ['wall face', 70],
  ['sketch wall', 90],
  ['transition', 60],
])

/** The scene on the page: one group a shape, each drawn as the drawing file draws it. */
export class Drawing {
  readonly world = svg('g', { class: 'world' })
  readonly shapes: KeyedList<Shape, SVGGElement>
  private defs: SVGElement | null = null
  private sheet: Sheet | null = null

  constructor(root: SVGSVGElement) {
    const shapes = svg('g')
    this.shapes = new KeyedList<Shape, SVGGElement>(shapes, {
      make: () => svg('g'),
      fill: (group, shape) => this.draw(group, shape),
    })
    this.world.append(shapes)
    root.append(this.world)
  }

  whole(sheet: Sheet, shapes: readonly Shape[]): void {
    this.lay(sheet)
    this.shapes.replace(shapes)
  }

  change(sheet: Sheet | null, shapes: ListChange<Shape>): void {
    if (sheet !== null) this.lay(sheet)
    this.shapes.change(shapes)
  }

  /** A new sheet. Where lettering has another size everything is drawn anew, line weights too. */
  private lay(sheet: Sheet): void {
    const { em, run } = this.sheet ?? {}
    this.sheet = sheet
    if (em === sheet.em && run?.x === sheet.run.x && run.y === sheet.run.y) return
    const defs = made(patterns(sheet, SCREEN))
    if (this.defs === null) this.world.prepend(defs)
    else this.defs.replaceWith(defs)
    this.defs = defs
    this.world.style.setProperty('--em', `${weight(sheet.em, 100)}px`)
    if (em !== sheet.em) this.shapes.refill()
  }

  private draw(group: SVGGElement, shape: Shape): void {
    const pen: Pen = { place: PLACE, em: this.sheet?.em ?? 1, palette: SCREEN }
    const style = Object.entries(groupStyle(shape.kind, pen))
    group.setAttribute('class', shape.kind.replaceAll(' ', '-'))
    group.setAttribute('data-id', shape.id)
    for (const [name, value] of style) if (value !== null) group.setAttribute(name, value)
    group.replaceChildren(...drawn(shape, pen).map(made))
    const felt = FELT.get(shape.kind)
    if (felt !== undefined) group.prepend(feltLine(group, weight(pen.em, felt)))
  }
}

/** The group's first line once more, wide and unseen. */
function feltLine(group: SVGGElement, width: string): SVGElement {
  const d = group.querySelector('path')?.getAttribute('d') ?? ''
  return svg('path', { d, class: 'felt', 'stroke-width': width })
}
