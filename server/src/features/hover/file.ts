import { resolveInclude } from '../../job/include-path.ts'
import { fileName } from '../../job/includes.ts'
import { counted } from '../../job/sentence.ts'
import type { Block } from '../../language/tree.ts'
import { statusOf } from '../status.ts'
import type { View } from '../view.ts'
import { type HoverPart, step, steps, text, title } from './parts.ts'

/** What an include brings into the job. */
export function includeParts(view: View, block: Block): readonly HoverPart[] {
  const { root, trees } = view.measured
  const found = resolveInclude(block.text, view.file, root)
  const tree = found.kind === 'path' ? trees.find(({ file }) => file === found.path) : undefined
  if (tree === undefined) return [title(block.text), text('It is not read: its message says why.')]
  const named = tree.blocks.filter(({ name }) => name !== null)
  const lines = counted(tree.lines.length, 'line')
  return [
    title(fileName(tree.file, root)),
    text(named.length === 0 ? `${lines}, and no room or product.` : `${lines}. It tells:`),
    ...steps(named.map(({ word, name, line }) => step(`${word} ${name!.text}`, line.span))),
  ]
}

/** How the job stands. */
export function jobParts(view: View): readonly HoverPart[] {
  const { text: said, tooltip } = statusOf(view)
  return [title(view.measured.job.title), text(said), ...steps(tooltip.map((line) => step(line)))]
}
