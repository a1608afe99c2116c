import {
  type SemanticTokens,
  type SemanticTokensDelta,
  SemanticTokensDeltaRequest,
  SemanticTokensRangeRequest,
  SemanticTokensRequest,
} from 'vscode-languageserver-protocol'
import { type ColourKind, colouredWords as wordsIn } from '../features/coloured-words.ts'
import { answering, type Seen } from './answering.ts'
import type { Feature } from './feature.ts'
import { LEGEND } from './offers.ts'
import { SentTokens } from './sent-tokens.ts'

const TYPES: Readonly<Record<ColourKind, (typeof LEGEND.tokenTypes)[number]>> = {
  'first word': 'keyword',
  word: 'operator',
  room: 'class',
  wall: 'property',
  corner: 'property',
  opening: 'interface',
  closet: 'struct',
  recess: 'struct',
  obstacle: 'struct',
  product: 'type',
  floor: 'namespace',
  prices: 'namespace',
  trim: 'type',
  code: 'enumMember',
  free: 'variable',
  reading: 'number',
  asked: 'macro',
  text: 'string',
}

export const colouredWords: Feature = {
  listen(session) {
    const { connection } = session
    const sent = new SentTokens()
    const none: SemanticTokens = { data: [] }
    connection.onRequest(
      SemanticTokensRequest.type,
      answering(session, 'measured', none, (seen) => sent.whole(seen.document, tokensIn(seen))),
    )
    connection.onRequest(
      SemanticTokensDeltaRequest.type,
      answering(session, 'measured', none as SemanticTokens | SemanticTokensDelta, (seen, params) =>
        sent.difference(seen.document, tokensIn(seen), params.previousResultId),
      ),
    )
    connection.onRequest(
      SemanticTokensRangeRequest.type,
      answering(session, 'measured', none, (seen, { range }) => {
        const { offset } = seen.places
        return { data: tokensIn(seen, { start: offset(range.start), end: offset(range.end) }) }
      }),
    )
  },
}

/** Five numbers a stretch, each place counted from the one before, as the protocol has it. */
function tokensIn({ view, places }: Seen, stretch?: { start: number; end: number }): number[] {
  const data: number[] = []
  let line = 0
  let character = 0
  for (const { span, kind, gives } of wordsIn(view.tree, stretch)) {
    const at = places.position(span.start)
    const along = at.line === line ? at.character - character : at.character
    const type = LEGEND.tokenTypes.indexOf(TYPES[kind])
    data.push(at.line - line, along, span.end - span.start, type, gives ? 1 : 0)
    line = at.line
    character = at.character
  }
  return data
}
