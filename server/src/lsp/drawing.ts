import { sceneOf } from '../report/scene-of.ts'
import { subjectOf } from '../report/subject-of.ts'
import { svg } from '../report/svg.ts'
import { answering, type Seen } from './answering.ts'
import { DRAWING, type Drawing, type DrawingOf } from './custom.ts'
import type { Feature } from './feature.ts'

/** The plan on paper: the very bytes that the command line writes. */
export const drawing: Feature = {
  listen(session) {
    const answer = answering(session, 'counted', { svg: null }, drawn)
    session.connection.onRequest(DRAWING, (asked: DrawingOf, token) =>
      answer({ textDocument: asked }, token),
    )
  },
}

function drawn({ view: { counted } }: Seen): Drawing {
  return { svg: counted === null ? null : svg(sceneOf(subjectOf(counted))) }
}
