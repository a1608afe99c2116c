import type { BaseLanguageClient, LanguageClientOptions } from 'vscode-languageclient'

/** How the language server is started, watched and ended: as a process, or as a worker in a browser. */
export interface Server {
  client(options: LanguageClientOptions): BaseLanguageClient
  /** Why the connection that was just lost is gone. */
  death(): Promise<Death>
  /** Ends what is left of it, whether it listens or not. */
  end(): void
}

/** Put down by a person or by the system, or fallen by a fault of its own. */
export type Death = 'from outside' | 'of itself'

export const SERVER_ID = 'floorscribe'
export const SERVER_NAME = 'Floorscribe'
