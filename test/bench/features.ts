import { colouredWords } from '../../server/src/features/coloured-words.ts'
import { complete } from '../../server/src/features/completion.ts'
import { hints } from '../../server/src/features/hints.ts'
import { hover } from '../../server/src/features/hover.ts'
import { at } from '../../server/src/features/place/at.ts'
import { selections } from '../../server/src/features/selection.ts'
import type { View } from '../../server/src/features/view.ts'
import { largeJob } from '../features/large-job.ts'
import { view } from '../features/marked.ts'
import { work } from './clock.ts'
import { median } from './median.ts'
import { ms, table } from './table.ts'

const LINES = [500, 5000, 50_000]

/** Places in the middle of the text, where a scan from either end would cost most. */
const PLACES = 100

/** About what a window shows. */
const screen = (offset: number) => ({ start: offset, end: offset + 2000 })

const QUESTIONS: readonly (readonly [string, (seen: View, offset: number) => unknown])[] = [
  ['what stands there', ({ tree }, offset) => at(tree, offset)],
  ['an explanation', hover],
  ['what may come next', complete],
  ['a growing selection', ({ tree }, offset) => selections(tree, offset)],
  ['the hints of a screen', (seen, offset) => hints(seen, screen(offset))],
  ['the colours of a screen', ({ tree }, offset) => colouredWords(tree, screen(offset))],
]

/** What one answer at the cursor costs, the middle one of five rounds: it must not grow with the file. */
export function featureTable(): string {
  const views = LINES.map((lines) => view(largeJob(lines), { counted: false }).view)
  const rows = QUESTIONS.map(([name, ask]) => [name, ...views.map((seen) => ms(cost(seen, ask)))])
  return table(['one answer at the cursor', ...LINES.map((lines) => `${lines} lines`)], rows)
}

function cost(seen: View, ask: (seen: View, offset: number) => unknown): number {
  const middle = Math.floor(seen.tree.text.length / 2)
  const round = (first: number) => {
    for (let i = 0; i < PLACES; i += 1) ask(seen, middle + first + 97 * i)
  }
  round(0)
  return median([1, 2, 3, 4, 5].map((first) => work(() => round(first)))) / PLACES
}
