import type { ProtocolConnection } from 'vscode-languageserver-protocol'
import { statusOf } from '../features/status.ts'
import { STATUS, type StatusSent } from './custom.ts'
import type { Documents } from './documents.ts'
import type { OpenJob } from './open-job.ts'

/** Tells how the job of each open file stands, whenever it comes a stage further. */
export function tellStatus(
  connection: ProtocolConnection,
  documents: Documents,
  job: OpenJob,
): void {
  for (const key of documents.uris) {
    const view = job.view(key)
    if (view === null) continue
    const { state, text, tooltip } = statusOf(view)
    const sent: StatusSent = {
      uri: documents.get(key)!.uri,
      state,
      text,
      tooltip: tooltip.join('\n'),
    }
    connection.sendNotification(STATUS, sent)
  }
}
