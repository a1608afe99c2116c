import type { Message } from '../facts/message.ts'
import { completePhrase } from './completion/complete-phrase.ts'
import { completeWord } from './completion/complete-word.ts'
import { type Completion, type Completions, MOST_OFFERS } from './completion/completion-item.ts'
import { type LineScope, lineScope } from './place/line-scope.ts'
import type { View } from './view.ts'
import { holdsInOrder } from './writing/holds-in-order.ts'
import { text } from './writing/insert.ts'

/** What the caller knows beyond the view. */
export interface Known {
  /** The files that an include line may name, as it would name them. */
  readonly paths?: readonly string[]
  /** What was last said of the job: a line that is being typed may hide it. */
  readonly said?: readonly Message[]
}

/**
 * What may be put in at an offset, likeliest first: words where a line begins, then what the line still
 * takes, with the names of this job. Nothing that was not read is offered as a reading.
 */
export function complete(
  view: View,
  offset: number,
  { paths = [], said = [] }: Known = {},
): Completions {
  const scope = lineScope(view, offset, said)
  const offers = offersAt(scope, paths)
  if (offers.length <= MOST_OFFERS) return { items: offers, whole: true }
  const fitting = offers.filter((offer) => fits(offer, scope))
  return {
    items: fitting.slice(0, MOST_OFFERS),
    whole: fitting.length <= MOST_OFFERS && fitting.length === offers.length,
  }
}

function offersAt(scope: LineScope, paths: readonly string[]): readonly Completion[] {
  const { line, offset, entered } = scope
  if (line.comment !== null && offset > line.comment.start) return []
  if (line.head === null)
    return offset === line.span.end || isBlank(scope) ? completeWord(scope) : []
  if (offset <= line.head.span.end) return offset < line.head.span.start ? [] : completeWord(scope)
  if (entered === null) return []
  if (entered.word.takes !== 'text') return completePhrase(scope)
  return entered.word.word === 'include' ? includeOffers(scope, paths) : []
}

function isBlank({ line, view }: LineScope): boolean {
  return view.tree.text.slice(line.span.start, line.span.end).trim() === ''
}

function includeOffers(
  { view, offset, rest }: LineScope,
  paths: readonly string[],
): readonly Completion[] {
  const typed = rest.text.length - rest.text.trimStart().length
  const start = Math.min(offset, rest.start + typed)
  const end = Math.max(offset, rest.start + rest.text.trimEnd().length)
  return paths.map((path) => ({
    label: path,
    kind: 'file',
    detail: 'A file that this one may include.',
    insert: [text(path)],
    span: { file: view.file, start, end },
    filter: path,
    likely: false,
  }))
}

/** What is typed stands in it, sign by sign: the rest are left out of a list that is too long. */
function fits({ filter, span }: Completion, { view, offset }: LineScope): boolean {
  const typed = view.tree.text.slice(span.start, offset).trim().toLowerCase()
  return holdsInOrder(filter.toLowerCase(), typed)
}
