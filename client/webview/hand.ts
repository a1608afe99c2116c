import type { Shape } from '../../server/src/report/scene.ts'
import { visible } from '../../server/src/report/visible.ts'
import type { Camera } from './camera.ts'
import type { Drawing } from './drawing.ts'
import type { Frame } from './frame.ts'
import { kinOf } from './kin.ts'
import type { Marks } from './marks.ts'
import { titleOf } from './title-of.ts'
import { isAt, isStep, LEVELS, type Level, levelOf, nextTo, type Step } from './walk.ts'

const HINT = 'Choose a piece, wall or opening to go to its line.'

/** Pixels that the drawing moves for one key. */
const NUDGE = 60

export interface HandParts {
  readonly frame: Frame
  readonly drawing: Drawing
  readonly camera: Camera
  readonly marks: Marks
  /** Ids of all pieces in the order of laying. */
  readonly laid: () => readonly string[]
  /** A shape was chosen. */
  readonly choose: (id: string) => void
}

/** Mouse and keys on the drawing. They share one place: a key or a click moves the focus, nothing else. */
export class Hand {
  private readonly frame: Frame
  private readonly drawing: Drawing
  private readonly camera: Camera
  private readonly marks: Marks
  private readonly laid: HandParts['laid']
  private readonly choose: HandParts['choose']
  /** The shape that the keys or a click were on last. */
  private at: string | null = null
  private pointed: string | null = null

  constructor({ frame, drawing, camera, marks, laid, choose }: HandParts) {
    this.frame = frame
    this.drawing = drawing
    this.camera = camera
    this.marks = marks
    this.laid = laid
    this.choose = choose
  }

  listen(): void {
    const { frame, camera } = this
    this.say('')
    const { plan } = frame
    plan.addEventListener('click', (event) => this.click(event))
    plan.addEventListener('pointermove', (event) => this.point(idOf(event.target)))
    plan.addEventListener('pointerleave', () => this.point(null))
    plan.addEventListener('keydown', (event) => this.key(event))
    plan.addEventListener('focusin', () =>
      this.marks.set('focused', this.at === null ? [] : [this.at]),
    )
    plan.addEventListener('focusout', () => this.unmark())
    frame.nearer.onclick = () => camera.nearer()
    frame.further.onclick = () => camera.further()
    frame.fit.onclick = () => camera.fit()
  }

  private unmark(): void {
    this.marks.set('focused', [])
    this.marks.set('kin', [])
  }

  private click(event: MouseEvent): void {
    const id = idOf(event.target)
    const shape = id === null ? null : this.drawing.shapes.item(id)
    if (shape === null) return
    this.goOnFrom(shape)
    this.choose(shape.id)
  }

  /** From a shape that was clicked the arrow keys go on, over others of its kind. */
  private goOnFrom(shape: Shape): void {
    const level = levelOf(shape)
    if (level === null) return
    this.frame.level.value = level
    const element = this.drawing.shapes.element(shape.id)
    if (element !== null) this.stand(shape, element)
  }

  /** What is pointed at says what it is; of a piece the others from its plank stand out. */
  private point(id: string | null): void {
    if (id === this.pointed) return
    this.pointed = id
    const shape = id === null ? null : this.drawing.shapes.item(id)
    this.say(shape === null ? '' : titleOf(shape))
    this.marks.set('kin', shape === null ? [] : kinOf(shape, this.drawing.shapes.items()))
  }

  private say(text: string): void {
    const shape = this.at === null ? null : this.drawing.shapes.item(this.at)
    const stays = this.frame.plan.contains(document.activeElement) && shape ? titleOf(shape) : HINT
    this.frame.said.textContent = visible(text === '' ? stays : text)
  }

  private key(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return
    if (!this.did(event)) return
    event.preventDefault()
    event.stopPropagation()
  }

  private did({ key, shiftKey }: KeyboardEvent): boolean {
    if (isStep(key)) return shiftKey ? this.pan(key) : this.step(key)
    switch (key) {
      case '+':
      case '=':
        this.camera.nearer()
        return true
      case '-':
        this.camera.further()
        return true
      case '0':
        this.camera.fit()
        return true
      case 'Enter':
      case ' ':
        if (this.at !== null) this.choose(this.at)
        return this.at !== null
      case 'Escape':
        return this.leave()
      case 'Home':
      case 'End':
        return this.focus(this.there().at(key === 'Home' ? 0 : -1) ?? null)
      case 'PageUp':
      case 'PageDown':
        return this.turn(key === 'PageUp' ? -1 : 1)
      default:
        return false
    }
  }

  private pan(key: Step): true {
    const x = key === 'ArrowLeft' ? NUDGE : key === 'ArrowRight' ? -NUDGE : 0
    const y = key === 'ArrowUp' ? NUDGE : key === 'ArrowDown' ? -NUDGE : 0
    this.camera.pan(x, y)
    return true
  }

  private step(key: Step): boolean {
    const shapes = this.there()
    const from = shapes.find(({ id }) => id === this.at)
    return this.focus(from === undefined ? (shapes[0] ?? null) : nextTo(from, key, shapes))
  }

  /** To rooms, walls or pieces: to the first that there are. */
  private turn(by: 1 | -1): boolean {
    const at = LEVELS.indexOf(this.level())
    const level = LEVELS[at + by]
    if (level === undefined) return true
    this.frame.level.value = level
    return this.focus(this.there()[0] ?? null)
  }

  private level(): Level {
    return LEVELS.find((level) => level === this.frame.level.value) ?? 'pieces'
  }

  /** What the arrow keys move over: pieces in the order of laying, others in that of the drawing. */
  private there(): readonly Shape[] {
    const level = this.level()
    const { shapes } = this.drawing
    if (level === 'pieces') return this.laid().flatMap((id) => shapes.item(id) ?? [])
    return shapes.inOrder().filter((shape) => isAt(level, shape))
  }

  private focus(shape: Shape | null): true {
    const element = shape === null ? null : this.drawing.shapes.element(shape.id)
    if (shape === null || element === null) return true
    this.stand(shape, element)
    this.camera.reveal(element)
    return true
  }

  private stand(shape: Shape, element: SVGGElement): void {
    this.at = shape.id
    element.setAttribute('tabindex', '-1')
    element.setAttribute('role', 'button')
    element.setAttribute('aria-label', visible(titleOf(shape)))
    element.focus({ preventScroll: true })
    this.marks.set('focused', [shape.id])
    this.marks.set('kin', kinOf(shape, this.drawing.shapes.items()))
    this.say('')
  }

  private leave(): true {
    this.at = null
    this.unmark()
    this.frame.plan.focus({ preventScroll: true })
    this.say('')
    return true
  }
}

/** The shape that a part of the drawing belongs to. */
function idOf(target: EventTarget | null): string | null {
  const group = target instanceof Element ? target.closest('[data-id]') : null
  return group?.getAttribute('data-id') ?? null
}
