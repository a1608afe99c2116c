import type { MessageConnection } from 'vscode-jsonrpc'
import type {
  InitializeParams,
  InitializeResult,
  ProtocolConnection,
} from 'vscode-languageserver-protocol'
import type { Gate } from './gate.ts'
import { OFFERS } from './offers.ts'
import type { Surroundings } from './surroundings.ts'

/**
 * Serves one editor over a connection, until it says goodbye. The editor has its first answer before the
 * rest of the server is read; what it sends meanwhile waits at the gate.
 */
export function serve(connection: MessageConnection, gate: Gate, surroundings: Surroundings): void {
  let isShut = false
  connection.onRequest('initialize', (params: InitializeParams): InitializeResult => {
    // Not before the answer is written.
    surroundings.quiet(() => begin(connection, gate, surroundings, params))
    return { serverInfo: { name: 'Floorscribe' }, capabilities: OFFERS }
  })
  connection.onRequest('shutdown', () => {
    isShut = true
    return null
  })
  // An editor that is gone without a shutdown says so by this alone.
  connection.onNotification('exit', () => surroundings.exit(isShut ? 0 : 1))
  connection.onClose(() => surroundings.exit(isShut ? 0 : 1))
  connection.listen()
}

async function begin(
  connection: MessageConnection,
  gate: Gate,
  surroundings: Surroundings,
  params: InitializeParams,
): Promise<void> {
  const { openSession } = await import('./open-session.ts')
  // What the protocol adds to messages is their types alone.
  openSession(connection as ProtocolConnection, surroundings, params)
  gate.open()
}
