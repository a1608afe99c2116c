import { cover, type Span } from '../facts/span.ts'
import type { Entry, Tree } from '../language/tree.ts'
import { at } from './place/at.ts'
import { spanOfEntry } from './place/entries.ts'

/**
 * What a growing selection takes in turn, the innermost first, each holding the one before: a figure
 * or name, its phrase, its line, the line with those under it, the block, the file.
 */
export function selections(tree: Tree, offset: number): readonly Span[] {
  const { offset: place, token, measure, name, phrase, path, block } = at(tree, offset)
  const whole: Span = { file: tree.file, start: 0, end: tree.text.length }
  const lines = path.toReversed().flatMap((entry) => [saidOn(entry), spanOfEntry(entry)])
  const inward = [
    token?.span,
    measure?.span,
    name?.name.span,
    phrase?.span,
    ...lines,
    block === null ? undefined : spanOfEntry(block),
    whole,
  ]
  const grown: Span[] = []
  for (const span of inward) {
    if (span === undefined || !holds(span, { start: place, end: place })) continue
    const before = grown.at(-1)
    if (before === undefined || (holds(span, before) && !holds(before, span))) grown.push(span)
  }
  return grown.length === 0 ? [whole] : grown
}

/** A line from its first word to the last before its comment. */
function saidOn({ line }: Entry): Span {
  const last = line.tokens.findLast(({ kind }) => kind !== 'blank' && kind !== 'comment')
  return cover(line.head?.span ?? line.span, last?.span ?? line.span)
}

type Stretch = Pick<Span, 'start' | 'end'>

function holds(outer: Stretch, inner: Stretch): boolean {
  return outer.start <= inner.start && inner.end <= outer.end
}
