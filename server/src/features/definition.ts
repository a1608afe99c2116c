import type { Span } from '../facts/span.ts'
import { includesOf } from '../job/includes.ts'
import { jobIndex } from './names/job-index.ts'
import { namedAt } from './names/named-at.ts'
import { definitionOf, type Thing } from './names/thing.ts'
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
  const places = toldAt(view, named.thing)
  return places.length === 0 ? null : { from: named.span, places }
}

/** A doorway with a name is told on a line of each of its rooms. */
function toldAt({ measured }: View, thing: Thing): readonly Span[] {
  const told = definitionOf(thing)
  if (told === null || thing.kind !== 'opening') return told === null ? [] : [told]
  const { name, to } = thing.opening
  const beyond = name === null ? undefined : jobIndex(measured).rooms.get(to?.key ?? '')
  const others = beyond?.openings.flatMap((opening) => {
    const isSame = opening.name?.key === name?.key && opening.to?.key === thing.room.name.key
    return isSame && opening.name !== null ? [opening.name.span] : []
  })
  return [told, ...(others ?? [])]
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
