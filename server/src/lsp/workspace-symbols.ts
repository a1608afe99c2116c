import {
  type SymbolKind,
  type WorkspaceSymbol,
  type WorkspaceSymbolParams,
  WorkspaceSymbolRequest,
} from 'vscode-languageserver-protocol'
import type { KnownJob } from '../features/rename/known-job.ts'
import {
  type NameKindShown,
  type WorkspaceName,
  workspaceNames,
} from '../features/workspace-names.ts'
import type { Feature } from './feature.ts'
import { placesIn } from './places.ts'
import type { Session } from './session.ts'
import { SYMBOL_KINDS } from './symbols.ts'

/** Names of all jobs of the folders. */
export const workspaceSymbols: Feature = {
  listen(session) {
    session.connection.onRequest(WorkspaceSymbolRequest.type, (asked) => named(session, asked))
  },
}

async function named(
  { known }: Session,
  { query }: WorkspaceSymbolParams,
): Promise<WorkspaceSymbol[]> {
  const jobs = await known.all()
  return workspaceNames(jobs, query).flatMap((one) => symbolOf(one, jobs))
}

function symbolOf(
  { name, kind, within, address, span }: WorkspaceName,
  jobs: readonly KnownJob[],
): WorkspaceSymbol[] {
  const tree = jobs
    .find((job) => job.addressOf(span.file) === address)
    ?.measured.trees.find(({ file }) => file === span.file)
  if (tree === undefined) return []
  const location = { uri: address, range: placesIn(tree).range(span) }
  return [{ name, kind: kindOf(kind), containerName: within, location }]
}

function kindOf(kind: NameKindShown): SymbolKind {
  return SYMBOL_KINDS[kind]
}
