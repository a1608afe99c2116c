import type { ServerCapabilities } from 'vscode-languageserver-protocol'
import type { Session } from './session.ts'

/** One thing that an editor may ask for: how it is offered, and who answers. */
export interface Feature {
  readonly offers: ServerCapabilities
  listen(session: Session): void
}
