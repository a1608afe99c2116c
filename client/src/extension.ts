import type { ExtensionContext } from 'vscode'
import { registerCommands } from './commands/commands.ts'
import { OwnRoom } from './own-room.ts'
import { PlanPanel } from './preview/plan-panel.ts'
import { pasteReadings } from './readings-paste.ts'
import { ReferencePage } from './reference-page.ts'
import { serveFiles } from './server/files.ts'
import { Lifeline } from './server/lifeline.ts'
import { clientOptions, documents } from './server/options.ts'
import type { Server } from './server/server.ts'
import { watchSettings } from './settings-watch.ts'
import { showStatus } from './status-item.ts'
import { tellSuspects } from './suspects.ts'

/** Everything that the extension does, whichever way its server runs. Nothing waits for the server. */
export function start(context: ExtensionContext, server: Server): void {
  const page = new ReferencePage(context.extensionUri)
  const lifeline = new Lifeline(server, (itself) => clientOptions(itself, page))
  const plan = new PlanPanel(context, lifeline)
  const ownRoom = new OwnRoom(context)
  serveFiles(lifeline.client)
  context.subscriptions.push(
    lifeline,
    plan,
    showStatus(lifeline, (job) => ownRoom.counted(job)),
    tellSuspects(lifeline),
    watchSettings(lifeline),
    pasteReadings(documents(), lifeline.client),
    ...registerCommands({ context, lifeline, plan, page, ownRoom }),
  )
  lifeline.start()
}
