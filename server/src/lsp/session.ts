import type { ProtocolConnection } from 'vscode-languageserver-protocol'
import type { Abilities } from './abilities.ts'
import type { Documents } from './documents.ts'
import type { Jobs } from './jobs.ts'
import type { KnownJobs } from './known-jobs.ts'
import type { PreviewFollower } from './preview-follower.ts'
import type { Workspace } from './workspace.ts'

/** One editor, from its `initialize` to the end: what every answer is made from. */
export interface Session {
  readonly connection: ProtocolConnection
  readonly abilities: Abilities
  readonly documents: Documents
  readonly workspace: Workspace
  readonly jobs: Jobs
  readonly known: KnownJobs
  readonly preview: PreviewFollower
}
