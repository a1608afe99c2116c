import { pasteReadings } from '../features/paste-readings.ts'
import { answering, type Seen } from './answering.ts'
import { READINGS, type Readings, type ReadingsPasted } from './custom.ts'
import type { Feature } from './feature.ts'
import { textEdit } from './formatting.ts'

interface Asked extends Readings {
  readonly textDocument: { readonly uri: string }
}

/** A meter's plain list goes into the blanks of a room. */
export const readings: Feature = {
  listen(session) {
    const answer = answering<Asked, ReadingsPasted>(session, 'measured', null, pasted)
    session.connection.onRequest<ReadingsPasted, void>(READINGS, (asked: Readings, token) =>
      answer({ ...asked, textDocument: asked }, token),
    )
  },
}

function pasted({ view, places }: Seen, { position, text }: Readings): ReadingsPasted {
  const found = pasteReadings(view, places.offset(position), text)
  switch (found.kind) {
    case 'none':
      return null
    case 'refused':
      return { refused: found.why }
    case 'filled':
      return { edits: found.edits.map((edit) => textEdit(edit, places)), said: found.said }
  }
}
