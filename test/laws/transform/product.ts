import type { Entry } from '../../../server/src/language/tree.ts'
import { blocksNamed, type Edit, edited, entriesOf, figureSpan, treeOf } from './edit.ts'
import { rewritten } from './notation.ts'

/** Every product promises some more planks to be left with the customer. */
export function withMoreSpares(text: string, more: number): string | null {
  return withCounts(text, 'spares', 'COUNT planks', more)
}

/** Every product expects some more planks to be spoiled. */
export function withMoreSpoil(text: string, more: number): string | null {
  return withCounts(text, 'spoil', 'COUNT planks', more)
}

function withCounts(text: string, word: string, form: string, more: number): string | null {
  const tree = treeOf(text)
  const edits = blocksNamed(tree, 'product').map((product): Edit => {
    const line = product.under.find((entry) => entry.word === word)
    const measure = line?.phrases.find((phrase) => phrase.form === form)?.measures[0]
    if (measure?.figure.kind === 'number') {
      return { span: figureSpan(tree, measure), text: `${measure.figure.value.n + BigInt(more)}` }
    }
    const { end } = line === undefined ? product.line.span : line.phrases.at(-1)!.span
    const said = `${more} planks`
    return {
      span: { start: end, end },
      text: line === undefined ? `\n  ${word} ${said}` : `, ${said}`,
    }
  })
  return edits.length === 0 ? null : edited(text, edits)
}

/** Every gap of products wider by so many nanometres; gaps that an edge has of its own stay. */
export function withWiderGaps(text: string, by: number): string | null {
  return withLengths(
    text,
    (entry) => entry.word === 'gap',
    (nm) => nm + by,
  )
}

function withLengths(
  text: string,
  is: (entry: Entry) => boolean,
  change: (nm: number) => number,
): string | null {
  const tree = treeOf(text)
  const edits = entriesOf(tree)
    .filter(is)
    .flatMap(({ phrases }) => phrases.flatMap(({ measures }) => measures))
    .flatMap((measure): readonly Edit[] =>
      measure.figure.kind === 'length'
        ? [{ span: figureSpan(tree, measure), text: `${change(measure.figure.nm) / 1_000_000} mm` }]
        : [],
    )
  return edits.length === 0 ? null : edited(text, edits)
}

/** Planks of every product as thick again: they lie as they did. */
export function thicker(text: string): string | null {
  const tree = treeOf(text)
  const edits = entriesOf(tree)
    .filter((entry) => entry.word === 'plank')
    .flatMap(({ phrases }) => phrases.filter(({ form }) => form === 'LENGTH thick'))
    .map(({ measures }) => ({ span: figureSpan(tree, measures[0]!), text: '23 mm' }))
  return edits.length === 0 ? null : edited(text, edits)
}

/** Every length of the job twice as long, tolerances and products too. */
export function doubled(text: string): string {
  return rewritten(text, (nm) => `${(2 * nm) / 1_000_000} mm`)
}
