import type { Span } from '../facts/span.ts'
import { includesOf } from '../job/includes.ts'
import { mentionsOf } from './mentions.ts'
import { namedAt } from './named-at.ts'
import { definitionOf } from './thing.ts'
import type { View } from './view.ts'

/** Where the thing that is named at an offset is told; `from` is the name that leads there. */
export interface Definition {
  readonly from: Span
  /** One place, or both sides of a doorway. */
  readonly places: readonly Span[]
}

/** Null where nothing is named, or what is named stands on no line of the job. */
export function definition(view: View, offset: number): Definition | null {
  const named = namedAt(view, offset)
  if (named === null) return includedAt(view, offset)
  const { thing, span } = named
  const given = mentionsOf(view.measured, view.measured.trees, thing).filter(({ gives }) => gives)
  const told = definitionOf(thing)
  if (given.length > 0) return { from: span, places: given.map((one) => one.span) }
  return told === null ? null : { from: span, places: [told] }
}

/** An include line leads to the start of its file. */
function includedAt({ tree, measured }: View, offset: number): Definition | null {
  const include = includesOf(tree, measured.root).includes.find(
    ({ span }) => span.start <= offset && offset <= span.end,
  )
  const isRead = measured.trees.some(({ file }) => file === include?.path)
  if (include === undefined || !isRead) return null
  return { from: include.span, places: [{ file: include.path, start: 0, end: 0 }] }
}
