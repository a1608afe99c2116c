import { type ServerCapabilities, TextDocumentSyncKind } from 'vscode-languageserver-protocol'
import type { Abilities } from './abilities.ts'

/** What the server offers, as the protocol names it. Places are counted in UTF-16 units. */
export function capabilities(_abilities: Abilities): ServerCapabilities {
  return {
    positionEncoding: 'utf-16',
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
  }
}
