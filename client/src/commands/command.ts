import type { ExtensionContext } from 'vscode'
import type { OwnRoom } from '../own-room.ts'
import type { PlanPanel } from '../preview/plan-panel.ts'
import type { ReferencePage } from '../reference-page.ts'
import type { Lifeline } from '../server/lifeline.ts'

/** What a command works with. */
export interface Tools {
  readonly context: ExtensionContext
  readonly lifeline: Lifeline
  readonly plan: PlanPanel
  readonly page: ReferencePage
  readonly ownRoom: OwnRoom
}

/** A command as the palette lists it; `run` takes what came with it, checked by itself. */
export interface Command {
  readonly id: `floorscribe.${string}`
  run(tools: Tools, ...given: readonly unknown[]): Promise<unknown>
}
