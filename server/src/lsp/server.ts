import {
  ExitNotification,
  type InitializeParams,
  InitializeRequest,
  type InitializeResult,
  type ProtocolConnection,
  ShutdownRequest,
} from 'vscode-languageserver-protocol'
import { abilitiesOf } from './abilities.ts'
import { capabilities } from './capabilities.ts'
import { openSession } from './open-session.ts'
import type { Surroundings } from './surroundings.ts'

/** Serves one editor over a connection, until it says goodbye. */
export function serve(connection: ProtocolConnection, surroundings: Surroundings): void {
  let isShut = false
  connection.onRequest(InitializeRequest.type, (params: InitializeParams): InitializeResult => {
    const abilities = abilitiesOf(params)
    openSession(connection, surroundings, abilities)
    return { serverInfo: { name: 'Floorscribe' }, capabilities: capabilities(abilities) }
  })
  connection.onRequest(ShutdownRequest.type, () => {
    isShut = true
  })
  // An editor that is gone without a shutdown says so by this alone.
  connection.onNotification(ExitNotification.type, () => surroundings.exit(isShut ? 0 : 1))
  connection.onClose(() => surroundings.exit(isShut ? 0 : 1))
  connection.listen()
}
