import { formatEdits } from '../language/format.ts'
import type { Tree } from '../language/tree.ts'
import { lineAt } from './place/line-at.ts'
import type { Edit } from './view.ts'

/** What brings a whole file into the canonical form: of each line only what changes. */
export function formatFile(tree: Tree): readonly Edit[] {
  return formatEdits(tree).map((edit) => smallest(tree, edit))
}

/** The same for the lines that a stretch touches; a line that it only reaches the start of is left out. */
export function formatRange(tree: Tree, start: number, end: number): readonly Edit[] {
  const last = lineAt(tree, end)
  const stop = end > start && last.span.start === end ? end - 1 : end
  return formatEdits(tree, { start, end: stop }).map((edit) => smallest(tree, edit))
}

/**
 * What a line end just typed lets be written anew: the line that the cursor has left, never the one that
 * it is on now.
 */
export function formatTyped(tree: Tree, offset: number): readonly Edit[] {
  const line = lineAt(tree, offset)
  const left = tree.lines[line.number - 2]
  if (left === undefined) return []
  return formatEdits(tree, left.span)
    .filter(({ span }) => span.start === left.span.start)
    .map((edit) => smallest(tree, edit))
}

/** An edit without what it leaves as it was on both sides, so that cursors in the line keep their place. */
function smallest({ text: whole }: Tree, { span, text }: Edit): Edit {
  const typed = whole.slice(span.start, span.end)
  const most = Math.min(typed.length, text.length)
  let before = 0
  while (before < most && typed[before] === text[before]) before += 1
  let after = 0
  while (after < most - before && typed.at(-1 - after) === text.at(-1 - after)) after += 1
  return {
    span: { file: span.file, start: span.start + before, end: span.end - after },
    text: text.slice(before, text.length - after),
  }
}
