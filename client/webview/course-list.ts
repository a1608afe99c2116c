import type { ListChange } from '../../server/src/features/preview/list-change.ts'
import type {
  CoursePiece,
  CourseRow,
  FloorHead,
  Picture,
} from '../../server/src/features/preview/picture.ts'
import { h } from './elements.ts'
import { KeyedList } from './keyed-list.ts'

export interface CourseListEvents {
  /** Shapes that a row stands for are to be shown in the drawing. */
  readonly show: (ids: readonly string[]) => void
  /** A piece was chosen. */
  readonly choose: (id: string) => void
}

/**
 * Every course in the order of laying, under what is said of its floor. A course opens to its pieces;
 * those are made only then, for there may be thousands. The rows are one stop of the tab key.
 */
export class CourseList {
  readonly root = h('div', { class: 'course-list' })
  private readonly floors: KeyedList<FloorHead, HTMLLIElement>
  private readonly rows: KeyedList<CourseRow, HTMLElement>
  private readonly open = new Set<string>()
  private readonly events: CourseListEvents
  private several = false

  constructor(events: CourseListEvents) {
    this.events = events
    const floors = h('ul', { class: 'floors' })
    const rows = h('ol', { class: 'rows', 'aria-label': 'Courses in laying order' })
    this.floors = new KeyedList(floors, { make: () => h('li'), fill: fillFloor })
    this.rows = new KeyedList<CourseRow, HTMLElement>(rows, {
      make: () => h('li', { class: 'course' }),
      fill: (element, row) => this.fillRow(element, row),
    })
    rows.addEventListener('keydown', (event) => this.key(event))
    this.root.append(floors, rows)
  }

  /** Ids of all pieces in the order of laying. */
  laid(): readonly string[] {
    return this.rows.inOrder().flatMap(({ pieces }) => pieces.map(({ id }) => id))
  }

  whole({ floors, courses }: Picture): void {
    this.floors.replace(floors)
    this.rows.replace(courses)
    this.settle()
  }

  change(floors: ListChange<FloorHead>, courses: ListChange<CourseRow>): void {
    this.floors.change(floors)
    this.rows.change(courses)
    this.settle()
  }

  private fillRow(element: HTMLElement, row: CourseRow): void {
    const old = element.querySelector<HTMLButtonElement>(':scope > button')
    const button = old ?? h('button', { type: 'button', tabindex: '-1' })
    const isOpen = this.open.has(row.id)
    button.setAttribute('aria-expanded', `${isOpen}`)
    button.replaceChildren(
      h('span', { class: 'number' }, `Course ${row.course}`),
      ...(this.several ? [' ', h('span', {}, row.floor)] : []),
      ' ',
      h('span', { class: 'label' }, summary(row)),
    )
    button.onclick = () => this.toggle(element, row)
    button.onfocus = () => this.events.show(row.pieces.map(({ id }) => id))
    const pieces = isOpen
      ? [h('ol', { class: 'pieces' }, ...row.pieces.map((one) => this.piece(one)))]
      : []
    for (const child of [...element.children]) if (child !== button) child.remove()
    if (old === null) element.append(button)
    element.append(...pieces)
  }

  private piece({ id, piece, plank, size, work, offcut }: CoursePiece): HTMLLIElement {
    const button = h(
      'button',
      { type: 'button', tabindex: '-1' },
      h('span', { class: 'number' }, `${piece}`),
      ' ',
      h('strong', {}, size),
      ' ',
      h('span', {}, `${work}, `),
      h('span', { class: 'label' }, `plank ${plank}${offcut === '' ? '' : `, ${offcut}`}`),
    )
    button.onclick = () => this.events.choose(id)
    button.onfocus = () => this.events.show([id])
    return h('li', {}, button)
  }

  private toggle(element: HTMLElement, row: CourseRow): void {
    if (!this.open.delete(row.id)) this.open.add(row.id)
    this.fillRow(element, this.rows.item(row.id) ?? row)
    this.events.show(row.pieces.map(({ id }) => id))
  }

  /** Arrow keys go from row to row and through the pieces of an open one. */
  private key(event: KeyboardEvent): void {
    const buttons = [...this.rows.parent.querySelectorAll('button')]
    const at = buttons.indexOf(event.target as HTMLButtonElement)
    const to = nextIndex(event.key, at, buttons.length)
    if (at < 0 || to === null) return
    event.preventDefault()
    const next = buttons[to]
    if (next === undefined) return
    for (const button of buttons) button.tabIndex = -1
    next.tabIndex = 0
    next.focus()
  }

  /** One row can always be reached by the tab key; of several floors each row names its own. */
  private settle(): void {
    const several = this.floors.size > 1
    if (several !== this.several) {
      this.several = several
      this.rows.refill()
    }
    const buttons = [...this.rows.parent.querySelectorAll('button')]
    if (buttons.some(({ tabIndex }) => tabIndex === 0)) return
    const [first] = buttons
    if (first !== undefined) first.tabIndex = 0
  }
}

function nextIndex(key: string, at: number, count: number): number | null {
  switch (key) {
    case 'ArrowDown':
      return Math.min(count - 1, at + 1)
    case 'ArrowUp':
      return Math.max(0, at - 1)
    case 'Home':
      return 0
    case 'End':
      return count - 1
    default:
      return null
  }
}

function fillFloor(element: HTMLLIElement, { id, product, said }: FloorHead): void {
  element.replaceChildren(
    h('h2', {}, id),
    h('p', { class: 'product' }, product),
    ...said.map((line) => h('p', { class: 'label' }, line)),
  )
}

/** "9 pieces, 2 cut": how much there is to saw in it. */
function summary({ pieces }: CourseRow): string {
  const sawn = pieces.filter(({ work }) => work !== 'whole').length
  const count = `${pieces.length} ${pieces.length === 1 ? 'piece' : 'pieces'}`
  return sawn === 0 ? `${count}, all whole` : `${count}, ${sawn} to cut`
}
