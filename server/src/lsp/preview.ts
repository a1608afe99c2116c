import { uinteger } from 'vscode-languageserver-protocol'
import { placeOf, shapesAt } from '../features/preview.ts'
import { canonical } from './addresses.ts'
import {
  FOLLOW_PREVIEW,
  type FollowPreview,
  PLACE_OF,
  type Place,
  type PlaceOf,
  SHAPES_AT,
  type Shapes,
  type ShapesAt,
} from './custom.ts'
import type { Feature } from './feature.ts'
import { locationOf } from './locations.ts'
import { placesIn } from './places.ts'
import type { Session } from './session.ts'

/** The page beside the text, and the ways between the two. */
export const preview: Feature = {
  listen(session) {
    const { connection } = session
    connection.onRequest(FOLLOW_PREVIEW, (asked: FollowPreview) => follow(session, asked))
    connection.onRequest(SHAPES_AT, (asked: ShapesAt) => shapes(session, asked))
    connection.onRequest(PLACE_OF, (asked: PlaceOf) => place(session, asked))
  },
}

async function follow({ jobs, preview }: Session, { uri }: FollowPreview): Promise<null> {
  const key = uri === null ? null : canonical(uri)
  const [job = null] = key === null ? [] : await jobs.of(key)
  preview.follow(key, job)
  return null
}

/** Those of the cursor's whole line. */
async function shapes({ preview }: Session, { uri, position }: ShapesAt): Promise<Shapes> {
  const shown = await preview.now()
  const view = shown?.job.view(canonical(uri)) ?? null
  if (shown === null || view === null) return { ids: [] }
  const { offset } = placesIn(view.tree)
  const start = offset({ ...position, character: 0 })
  const end = offset({ ...position, character: uinteger.MAX_VALUE })
  return { ids: shapesAt(shown.preview, view.file, start, end) }
}

async function place({ preview }: Session, { id }: PlaceOf): Promise<Place> {
  const shown = await preview.now()
  const span = shown === null ? null : placeOf(shown.preview, id)
  return shown === null || span === null ? null : locationOf(shown.job, span)
}
