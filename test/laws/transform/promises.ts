import type { Compiled } from '../../../server/src/report/compiled.ts'
import { blocksNamed, edited, treeOf } from './edit.ts'
import { type Changed, inRoot, type Texts } from './texts.ts'

/** Each warning of the job settled by an accept line, as somebody who looked at it would write. */
export function withAccepts(job: Texts, { messages }: Compiled): Changed | null {
  const codes = new Set(
    messages
      .filter(({ weight, accepted }) => weight === 'warning' && !accepted)
      .map(({ code }) => code),
  )
  if (codes.size === 0) return null
  const lines = [...codes].map((code) => `  accept      ${code.replaceAll('-', ' ')}`)
  return inRoot(job, (text) => text.replace(/^job.*$/im, (line) => [line, ...lines].join('\n')))
}

/** What each floor is said to need, as it does need it; null where that is not known. */
export function withExpectations(job: Texts, { takeoff }: Compiled): Changed | null {
  if (!takeoff.complete) return null
  const counted = new Map(
    takeoff.floors.map(({ floor, quantities }) => [
      floor,
      quantities.find(({ key }) => key === 'planks')!.value!.n,
    ]),
  )
  return inRoot(job, (text) => {
    const tree = treeOf(text)
    const floors = blocksNamed(tree, 'floor').filter((block) => counted.has(block.name!.text))
    const edits = floors.map((block) => {
      const { end } = block.line.span
      const line = `\n  expect      ${counted.get(block.name!.text)} planks`
      return { span: { start: end, end }, text: line }
    })
    return edited(text, edits)
  })
}
