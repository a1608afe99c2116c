import {
  CodeLensRefreshRequest,
  InlayHintRefreshRequest,
  type ProtocolConnection,
} from 'vscode-languageserver-protocol'
import type { Abilities } from './abilities.ts'
import type { Documents } from './documents.ts'
import type { OpenJob } from './open-job.ts'

/**
 * Has hints and lenses asked for again when the counts have settled, where an editor would not by
 * itself: it asks for the file that is typed in, and not for the others that the edit moved.
 */
export function refreshOthers(
  connection: ProtocolConnection,
  { refreshesHints, refreshesLenses }: Abilities,
  documents: Documents,
  job: OpenJob,
): void {
  const open = documents.uris.filter((uri) => job.names(uri))
  if (open.length < 2 && !job.isReread) return
  // A client that is on its way out has no answer, and needs none.
  const ask = (method: string) => connection.sendRequest(method).catch(() => {})
  if (refreshesHints) ask(InlayHintRefreshRequest.method)
  if (refreshesLenses) ask(CodeLensRefreshRequest.method)
}
