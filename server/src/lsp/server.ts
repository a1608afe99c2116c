import {
  ExitNotification,
  type InitializeParams,
  InitializeRequest,
  type InitializeResult,
  type ProtocolConnection,
  type ServerCapabilities,
  ShutdownRequest,
  TextDocumentSyncKind,
} from 'vscode-languageserver-protocol'
import { abilitiesOf } from './abilities.ts'
import { FEATURES } from './features.ts'
import { openSession } from './open-session.ts'
import type { Surroundings } from './surroundings.ts'

/** Places are counted in UTF-16 units, which every editor knows. */
const CAPABILITIES: ServerCapabilities = Object.assign(
  {
    positionEncoding: 'utf-16',
    textDocumentSync: { openClose: true, change: TextDocumentSyncKind.Incremental },
  },
  ...FEATURES.map(({ offers }) => offers),
)

/** Serves one editor over a connection, until it says goodbye. */
export function serve(connection: ProtocolConnection, surroundings: Surroundings): void {
  let isShut = false
  connection.onRequest(InitializeRequest.type, (params: InitializeParams): InitializeResult => {
    const session = openSession(connection, surroundings, abilitiesOf(params))
    for (const feature of FEATURES) feature.listen(session)
    return { serverInfo: { name: 'Floorscribe' }, capabilities: CAPABILITIES }
  })
  connection.onRequest(ShutdownRequest.type, () => {
    isShut = true
  })
  // An editor that is gone without a shutdown says so by this alone.
  connection.onNotification(ExitNotification.type, () => surroundings.exit(isShut ? 0 : 1))
  connection.onClose(() => surroundings.exit(isShut ? 0 : 1))
  connection.listen()
}
