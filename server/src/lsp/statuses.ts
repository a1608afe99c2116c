import type { ProtocolConnection } from 'vscode-languageserver-protocol'
import { statusOf } from '../features/status.ts'
import { STATUS, type StatusSent } from './custom.ts'
import type { Documents } from './documents.ts'
import type { OpenJob } from './open-job.ts'

/** Tells how a job stands, for each open file that it is looked at for, when it came a stage further. */
export function tellStatus(
  connection: ProtocolConnection,
  documents: Documents,
  job: OpenJob,
  isFor: (uri: string) => boolean,
): void {
  const views = documents.uris.filter(isFor).map((uri) => ({ uri, view: job.view(uri) }))
  const seen = views.find(({ view }) => view !== null)?.view
  if (seen == null) return
  // It is a job that stands so: each of its files shows the same.
  const { state, text, tooltip } = statusOf(seen)
  for (const { uri, view } of views) {
    if (view === null) continue
    const own = documents.get(uri)!.uri
    const sent: StatusSent = { uri: own, state, text, tooltip: tooltip.join('\n') }
    connection.sendNotification(STATUS, sent)
  }
}
