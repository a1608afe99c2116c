import type { Drawing } from './drawing.ts'
import { svg } from './elements.ts'

/**
 * Why a shape stands out: it is cut from the plank of the piece that is pointed at, it was pointed at in
 * a list, the cursor is on its line, it has the focus.
 */
export type Why = 'kin' | 'shown' | 'lit' | 'focused'

const LAST_ON_TOP: readonly Why[] = ['kin', 'shown', 'lit', 'focused']

/** Beyond these the rest of a long list of shapes adds nothing that the eye could follow. */
const MOST = 400

/** Shapes that stand out, drawn a second time over all others so that no neighbour hides their edge. */
export class Marks {
  private readonly drawing: Drawing
  private readonly layer = svg('g', { class: 'marks', 'aria-hidden': 'true' })
  private readonly ids = new Map<Why, readonly string[]>()

  constructor(drawing: Drawing) {
    this.drawing = drawing
    drawing.world.append(this.layer)
  }

  set(why: Why, ids: readonly string[]): void {
    this.ids.set(why, ids.slice(0, MOST))
    this.draw()
  }

  /** Once more, where what they stand for may have changed. */
  draw(): void {
    const all = LAST_ON_TOP.flatMap((why) =>
      (this.ids.get(why) ?? []).flatMap((id) => this.copy(id, why)),
    )
    this.layer.replaceChildren(...all)
  }

  private copy(id: string, why: Why): SVGElement[] {
    const element = this.drawing.shapes.element(id)
    if (element === null) return []
    const copy = element.cloneNode(true) as SVGElement
    for (const name of ['data-id', 'tabindex', 'role', 'aria-label']) copy.removeAttribute(name)
    for (const part of copy.querySelectorAll('title, .felt')) part.remove()
    copy.classList.add(why)
    return [copy]
  }
}
