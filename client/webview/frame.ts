import { h, svg } from './elements.ts'
import { LEVELS, type Level } from './walk.ts'

/** The parts of the page that are always there. */
export interface Frame {
  readonly title: HTMLHeadingElement
  readonly state: HTMLParagraphElement
  readonly told: HTMLUListElement
  readonly notice: HTMLParagraphElement
  readonly plan: SVGSVGElement
  /** What is drawn, in words. */
  readonly words: HTMLParagraphElement
  /** What is pointed at, or has the focus. */
  readonly said: HTMLParagraphElement
  readonly live: HTMLParagraphElement
  readonly nearer: HTMLButtonElement
  readonly further: HTMLButtonElement
  readonly fit: HTMLButtonElement
  readonly save: HTMLButtonElement
  readonly level: HTMLSelectElement
  readonly courses: HTMLDetailsElement
  readonly reading: HTMLDetailsElement
}

const LEVEL_NAMES: Readonly<Record<Level, string>> = {
  rooms: 'rooms',
  walls: 'walls and openings',
  pieces: 'pieces',
}

const KEYS: readonly (readonly [string, string])[] = [
  ['arrow keys', 'to the next piece, wall or room'],
  ['Enter', 'to its line in the text'],
  ['Page Up, Page Down', 'rooms, walls, pieces'],
  ['Home, End', 'first, last'],
  ['+, −, 0', 'nearer, further, all of it'],
  ['Shift and arrow keys', 'move the drawing'],
]

export function buildFrame(body: HTMLElement): Frame {
  const frame: Frame = {
    title: h('h1'),
    state: h('p', { class: 'state' }),
    told: h('ul', { class: 'told', 'aria-label': 'Counts and what to look at' }),
    notice: h('p', { class: 'notice', hidden: '' }),
    plan: svg('svg', {
      class: 'plan',
      role: 'group',
      tabindex: '0',
      'aria-label': 'Drawing of the floor',
      'aria-describedby': 'words',
    }),
    words: h('p', { id: 'words', class: 'unseen' }),
    said: h('p', { class: 'said' }),
    live: h('p', { class: 'unseen', role: 'status' }),
    nearer: button('+', 'Nearer'),
    further: button('−', 'Further'),
    fit: button('Whole plan', 'See all of it'),
    save: button('Save drawing', 'Save the drawing as a file'),
    level: h(
      'select',
      { title: 'What the arrow keys move over in the drawing' },
      ...LEVELS.map((level) => h('option', { value: level }, LEVEL_NAMES[level])),
    ),
    courses: h('details', { class: 'fold' }, h('summary', {}, 'Courses in laying order')),
    reading: h('details', { class: 'fold' }, h('summary', {}, 'How to read it')),
  }
  frame.level.value = 'pieces'
  frame.reading.append(keys())
  const beside = h('div', { class: 'beside' }, frame.courses, frame.reading)
  const main = h('main', {}, sheet(frame), beside)
  for (const fold of [frame.courses, frame.reading])
    fold.addEventListener('toggle', () =>
      main.classList.toggle('unfolded', frame.courses.open || frame.reading.open),
    )
  body.append(
    h('header', {}, h('div', { class: 'heading' }, frame.title, frame.state), frame.told),
    main,
    frame.live,
  )
  return frame
}

function sheet({ plan, words, said, notice, ...frame }: Frame): HTMLElement {
  const look = h(
    'div',
    { class: 'bar', role: 'group', 'aria-label': 'View' },
    frame.further,
    frame.nearer,
    frame.fit,
    h('label', {}, 'Arrow keys: ', frame.level),
    frame.save,
  )
  return h('section', { class: 'sheet', 'aria-label': 'Drawing' }, look, notice, words, plan, said)
}

/** A sign alone is no name: the tip is spoken for it. */
function button(text: string, tip: string): HTMLButtonElement {
  const name = text.length === 1 ? tip : null
  return h('button', { type: 'button', title: tip, 'aria-label': name }, text)
}

function keys(): HTMLElement {
  const rows = KEYS.flatMap(([key, does]) => [h('dt', {}, key), h('dd', {}, does)])
  return h('div', { class: 'keys' }, h('h2', {}, 'Keys in the drawing'), h('dl', {}, ...rows))
}
