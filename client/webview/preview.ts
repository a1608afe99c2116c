import type { Picture, StripItem } from '../../server/src/features/preview/picture.ts'
import type { PreviewChange, Sheet } from '../../server/src/features/preview-change.ts'
import { visible } from '../../server/src/report/visible.ts'
import { Camera } from './camera.ts'
import { CourseList } from './course-list.ts'
import { Drawing } from './drawing.ts'
import type { Frame } from './frame.ts'
import { Hand } from './hand.ts'
import type { Host, Kept } from './host.ts'
import { KeyedList } from './keyed-list.ts'
import { Legend } from './legend.ts'
import { Marks } from './marks.ts'
import type { ToPage } from './messages.ts'
import { stripItem } from './strip.ts'
import { inWords, type PageState, STATES } from './words.ts'

/** What is shown and what of it changes: the one place that knows all parts of the page. */
export class Preview {
  private readonly frame: Frame
  private readonly host: Host
  private readonly drawing: Drawing
  private readonly camera: Camera
  private readonly marks: Marks
  private readonly courses: CourseList
  private readonly legend = new Legend()
  private readonly strip: KeyedList<StripItem, HTMLLIElement>
  private sheet: Sheet | null = null
  /** What was seen when the page was last here: read before anything new is kept. */
  private readonly kept: Kept | null

  constructor(frame: Frame, host: Host) {
    this.frame = frame
    this.host = host
    this.kept = host.kept()
    this.drawing = new Drawing(frame.plan)
    this.camera = new Camera(frame.plan, this.drawing.world, (look) =>
      host.keep({ job: this.sheet?.title ?? '', look }),
    )
    this.marks = new Marks(this.drawing)
    this.strip = new KeyedList(
      frame.told,
      stripItem((item) => this.chooseItem(item)),
    )
    this.courses = new CourseList({
      show: (ids) => this.show(ids),
      choose: (id) => this.goTo(id),
    })
    new Hand({
      frame,
      drawing: this.drawing,
      camera: this.camera,
      marks: this.marks,
      laid: () => this.courses.laid(),
      choose: (id) => this.goTo(id),
    }).listen()
    frame.courses.append(this.courses.root)
    frame.reading.prepend(frame.reading.querySelector('summary') ?? '', this.legend.root)
    for (const list of [frame.told, this.courses.root])
      list.addEventListener('focusout', () => this.marks.set('shown', []))
    frame.save.onclick = () => host.send({ type: 'export' })
    this.state('reading')
  }

  hear(message: ToPage): void {
    switch (message.type) {
      case 'preview':
        this.change(message.change)
        break
      case 'cursor':
        this.cursor(message.ids)
        break
      case 'notice':
        this.frame.notice.textContent = visible(message.text)
        this.frame.notice.hidden = message.text === ''
    }
  }

  private change(change: PreviewChange): void {
    const isFirst = this.sheet === null
    if (change.kind === 'whole') this.whole(change.picture)
    else if (isFirst) {
      this.host.send({ type: 'ready' })
      return
    } else this.part(change)
    if (isFirst) this.restore()
    this.marks.draw()
    this.tell()
  }

  /** All of a picture. Of another job all of it is seen, too. */
  private whole(picture: Picture): void {
    const { shapes, ...sheet } = picture.scene
    const isOther = this.sheet !== null && this.sheet.title !== sheet.title
    this.drawing.whole(sheet, shapes)
    this.courses.whole(picture)
    this.strip.replace(picture.strip)
    this.lay(sheet)
    if (isOther) this.camera.fit()
    this.state(picture.state)
  }

  /** What was seen of this job when the page was last here. */
  private restore(): void {
    const { job, look } = this.kept ?? { job: '', look: null }
    if (look !== null && job === this.sheet?.title) this.camera.restore(look)
  }

  private part(change: Extract<PreviewChange, { kind: 'part' }>): void {
    this.drawing.change(change.sheet, change.shapes)
    this.courses.change(change.floors, change.courses)
    this.strip.change(change.strip)
    if (change.sheet !== null) this.lay(change.sheet)
    this.state(change.state)
  }

  private lay(sheet: Sheet): void {
    this.sheet = sheet
    this.frame.title.textContent = visible(sheet.title)
    this.camera.show(sheet)
  }

  private state(state: PageState): void {
    document.body.dataset.state = state
    this.frame.state.textContent = STATES[state]
  }

  /** What is said of the drawing as a whole; the live region speaks only when its text is another. */
  private tell(): void {
    const shapes = this.drawing.shapes.items()
    this.legend.show(shapes, this.sheet?.em ?? 1)
    this.frame.words.textContent = visible(inWords(shapes))
    const counts = this.strip.items().filter(({ about }) => about === 'boxes')
    const said = [this.frame.state.textContent, ...counts.map((one) => `${one.label}: ${one.text}`)]
    const text = visible(said.filter((part) => part !== '').join('. '))
    if (document.body.dataset.state === 'counting' || text === this.frame.live.textContent) return
    this.frame.live.textContent = text
  }

  /** The text is worked at: what its line draws is shown, and brought in sight if it is out of it. */
  private cursor(ids: readonly string[]): void {
    this.marks.set('lit', ids)
    if (!document.hasFocus()) this.bringIn(ids)
  }

  private show(ids: readonly string[]): void {
    this.marks.set('shown', ids)
    this.bringIn(ids)
  }

  private bringIn([first]: readonly string[]): void {
    const element = first === undefined ? null : this.drawing.shapes.element(first)
    if (element !== null) this.camera.reveal(element)
  }

  private chooseItem({ about, shapes: [first, ...others] }: StripItem): void {
    if (first === undefined) return
    this.show([first, ...others])
    if (about === 'missing' || about === 'edges') this.goTo(first)
  }

  private goTo(id: string): void {
    this.host.send({ type: 'go to', id })
  }
}
