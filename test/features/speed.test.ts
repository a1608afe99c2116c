import { expect, test } from 'vitest'
import { at } from '../../server/src/features/at.ts'
import { colouredWords } from '../../server/src/features/coloured-words.ts'
import { hints } from '../../server/src/features/hints.ts'
import { hover } from '../../server/src/features/hover.ts'
import { selections } from '../../server/src/features/selection.ts'
import type { View } from '../../server/src/features/view.ts'
import { effort } from '../effort.ts'
import { largeJob } from './large-job.ts'
import { view } from './marked.ts'

/** Steps of the text that are asked about: in the middle, where a scan from either end costs most. */
const PLACES = 200

/** Milliseconds for one answer, the middle one of many places; the first answers warm up. */
function cost(seen: View, ask: (offset: number) => unknown): number {
  const { length } = seen.tree.text
  const offsets = Array.from({ length: PLACES }, (_, i) => Math.floor(length / 2) + 97 * i)
  for (const offset of offsets) ask(offset)
  const times = offsets.map((offset) => {
    const before = performance.now()
    ask(offset + 1)
    return performance.now() - before
  })
  return times.toSorted((a, b) => a - b)[PLACES / 2]!
}

const small = view(largeJob(500), { counted: false }).view
const large = view(largeJob(effort(8_000, 50_000)), { counted: false }).view
const screen = (offset: number) => ({ start: offset, end: offset + 2000 })

test.each<readonly [string, (seen: View) => (offset: number) => unknown]>([
  [
    'what stands there',
    ({ tree }) =>
      (offset) =>
        at(tree, offset),
  ],
  ['an explanation', (seen) => (offset) => hover(seen, offset)],
  [
    'a growing selection',
    ({ tree }) =>
      (offset) =>
        selections(tree, offset),
  ],
  ['the hints of a screen', (seen) => (offset) => hints(seen, screen(offset))],
  [
    'the colours of a screen',
    ({ tree }) =>
      (offset) =>
        colouredWords(tree, screen(offset)),
  ],
])('%s takes low milliseconds, however long the file is', (_, ask) => {
  const [few, many] = [cost(small, ask(small)), cost(large, ask(large))]
  expect(many).toBeLessThan(2)
  // A scan of the file would take longer by as much as the file is longer: 16 times at least.
  expect(many).toBeLessThan(0.3 + 6 * few)
})
