import {
  type InlayHint,
  type InlayHintParams,
  InlayHintRequest,
} from 'vscode-languageserver-protocol'
import { hints as hintsIn } from '../features/hints.ts'
import { answering, type Seen } from './answering.ts'
import type { Feature } from './feature.ts'

/**
 * Answered when the counts are there: until then an editor keeps the hints that it has, so that they
 * stand still while one types.
 */
export const hints: Feature = {
  listen(session) {
    session.connection.onRequest(InlayHintRequest.type, answering(session, 'counted', [], hintsOf))
  },
}

function hintsOf({ view, places }: Seen, { range }: InlayHintParams): InlayHint[] {
  const stretch = { start: places.offset(range.start), end: places.offset(range.end) }
  return hintsIn(view, stretch).map(({ at, text }) => ({
    position: places.position(at),
    label: text,
    paddingLeft: true,
  }))
}
