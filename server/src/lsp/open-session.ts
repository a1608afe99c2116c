import {
  DidChangeTextDocumentNotification,
  DidChangeWatchedFilesNotification,
  DidChangeWorkspaceFoldersNotification,
  DidCloseTextDocumentNotification,
  DidOpenTextDocumentNotification,
  FileChangeType,
  InitializedNotification,
  type InitializeParams,
  LogMessageNotification,
  MessageType,
  type ProtocolConnection,
  RegistrationRequest,
} from 'vscode-languageserver-protocol'
import { type Abilities, abilitiesOf } from './abilities.ts'
import { canonical } from './addresses.ts'
import { FIND_FILES, type FileSent, type FilesFound, READ_FILE } from './custom.ts'
import { Documents } from './documents.ts'
import { FEATURES } from './features.ts'
import type { Sources } from './job-texts.ts'
import { Jobs } from './jobs.ts'
import { KnownJobs } from './known-jobs.ts'
import type { OpenJob } from './open-job.ts'
import { PreviewFollower } from './preview-follower.ts'
import { Publisher } from './publisher.ts'
import { refreshOthers } from './refresh.ts'
import { Schedule } from './schedule.ts'
import type { Session } from './session.ts'
import { tellStatus } from './statuses.ts'
import type { Surroundings } from './surroundings.ts'
import { MOST_FILES, Workspace } from './workspace.ts'

/** Puts the parts of a session together, and listens to what the editor tells and asks. */
export function openSession(
  connection: ProtocolConnection,
  surroundings: Surroundings,
  params: InitializeParams,
): Session {
  const abilities = abilitiesOf(params)
  const isOnlyRead = (uri: string) => abilities.onlyRead.has(uri)
  const documents: Documents = new Documents({
    opened: (uri) => (isOnlyRead(uri) ? publisher.showRead(uri) : jobs.opened(uri)),
    changed: (uri) => {
      known.forget()
      if (isOnlyRead(uri)) publisher.showRead(uri)
      else jobs.changed(uri, abilities.pauseMs)
    },
    closed: (uri) => (isOnlyRead(uri) ? publisher.dropRead(uri) : jobs.closed(uri)),
  })
  const sources = sourcesOf(connection, surroundings, abilities, documents)
  const workspace = new Workspace(sources, () => findFiles(connection, abilities))
  const schedule = new Schedule(surroundings)
  const publisher = new Publisher(connection, documents, abilities)
  const preview = new PreviewFollower(connection, schedule, documents)
  const joined = (job: OpenJob) => {
    preview.moved(job)
    const isFor = (uri: string) => jobs.firstOf(uri) === job
    if (abilities.showsStatus) tellStatus(connection, documents, job, isFor)
  }
  const moved = (job: OpenJob) => {
    publisher.show(job)
    joined(job)
  }
  const jobs: Jobs = new Jobs(sources, schedule, workspace, {
    joined,
    measured: moved,
    counted: (job: OpenJob) => {
      moved(job)
      refreshOthers(connection, abilities, documents, job)
    },
    closed: (job: OpenJob) => {
      publisher.drop(job)
      preview.closed(job)
    },
    failed: (error: unknown) => log(connection, error),
  })
  const known = new KnownJobs(sources, schedule, workspace, jobs)
  const session = { connection, abilities, documents, workspace, jobs, known, preview }
  listen(session)
  for (const feature of FEATURES) feature.listen(session)
  return session
}

function sourcesOf(
  connection: ProtocolConnection,
  surroundings: Surroundings,
  { readsFiles, onlyRead }: Abilities,
  documents: Documents,
): Sources {
  const ask = (file: { readonly uri: string; readonly limit: number }) =>
    connection.sendRequest<FileSent | null>(READ_FILE, file)
  return { documents, surroundings, askClient: readsFiles ? ask : null, onlyRead }
}

async function findFiles(
  connection: ProtocolConnection,
  { findsFiles }: Abilities,
): Promise<readonly string[]> {
  if (!findsFiles) return []
  const found = await connection
    .sendRequest<FilesFound | null>(FIND_FILES, { limit: MOST_FILES })
    .catch(() => null)
  return Array.isArray(found?.uris) ? found.uris.map(String) : []
}

/** What becomes of files: those in the editor at once, those on the disk as it is told of them. */
function listen({ connection, abilities, documents, workspace, jobs, known }: Session): void {
  connection.onNotification(DidOpenTextDocumentNotification.type, (said) => documents.open(said))
  connection.onNotification(DidChangeTextDocumentNotification.type, (said) =>
    documents.change(said),
  )
  connection.onNotification(DidCloseTextDocumentNotification.type, (said) => documents.close(said))
  connection.onNotification(InitializedNotification.type, () => {
    if (abilities.watchesFiles) watchFiles(connection)
  })
  connection.onNotification(DidChangeWorkspaceFoldersNotification.type, () => {
    known.forget()
    workspace.foldersChanged()
    jobs.reread([], abilities.pauseMs)
  })
  connection.onNotification(DidChangeWatchedFilesNotification.type, ({ changes }) => {
    const { gone = [], here = [] } = Object.groupBy(changes, ({ type }) =>
      type === FileChangeType.Deleted ? 'gone' : 'here',
    )
    const uris = (some: typeof changes) => some.map(({ uri }) => canonical(uri))
    known.forget()
    workspace.changed(uris(here), uris(gone))
    jobs.reread(uris(changes), abilities.pauseMs)
  })
}

function watchFiles(connection: ProtocolConnection): void {
  const watch = {
    id: 'floor files',
    method: DidChangeWatchedFilesNotification.method,
    registerOptions: { watchers: [{ globPattern: '**/*.floor' }] },
  }
  connection
    .sendRequest(RegistrationRequest.type, { registrations: [watch] })
    .catch((error) => log(connection, error))
}

/** Says in the editor's log what should not have happened. */
function log(connection: ProtocolConnection, error: unknown): void {
  const message = error instanceof Error ? (error.stack ?? error.message) : String(error)
  connection.sendNotification(LogMessageNotification.type, { type: MessageType.Error, message })
}
