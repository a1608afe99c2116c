import {
  type DocumentHighlight,
  DocumentHighlightKind,
  type DocumentHighlightParams,
  DocumentHighlightRequest,
  type Location,
  type ReferenceParams,
  ReferencesRequest,
} from 'vscode-languageserver-protocol'
import { highlights } from '../features/highlights.ts'
import { references as referencesAt } from '../features/references.ts'
import { canonical } from './addresses.ts'
import { answering, type Seen } from './answering.ts'
import type { Feature } from './feature.ts'
import { locationOf } from './locations.ts'

/** Where a thing is named: in the file, and in every job that the file is part of. */
export const references: Feature = {
  listen(session) {
    session.connection.onRequest(
      ReferencesRequest.type,
      answering(session, 'measured', null, namedIn),
    )
    session.connection.onRequest(
      DocumentHighlightRequest.type,
      answering(session, 'measured', null, highlighted),
    )
  },
}

async function namedIn(
  { session, places, uri }: Seen,
  { position, context }: ReferenceParams,
): Promise<Location[] | null> {
  const key = canonical(uri)
  const jobs = await session.jobs.of(key)
  await Promise.all(jobs.map((job) => job.until('measured')))
  const all = jobs.flatMap((job) => {
    const view = job.view(key)
    if (view === null) return []
    const spans = referencesAt(view, places.offset(position), context.includeDeclaration)
    return spans.flatMap((span) => locationOf(job, span) ?? [])
  })
  // Two jobs name what they share in the same places.
  return [...new Map(all.map((location) => [JSON.stringify(location), location])).values()]
}

function highlighted(
  { view, places }: Seen,
  { position }: DocumentHighlightParams,
): DocumentHighlight[] | null {
  return highlights(view, places.offset(position)).map(({ span, gives }) => ({
    range: places.range(span),
    kind: gives ? DocumentHighlightKind.Write : DocumentHighlightKind.Read,
  }))
}
