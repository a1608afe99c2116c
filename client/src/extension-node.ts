import type { ExtensionContext } from 'vscode'
import { provideCheckTasks } from './check-tasks.ts'
import { start } from './extension.ts'
import { processServer } from './server/process.ts'

/** Where extensions run on Node: the server is a process, and the command line can be run. */
export function activate(context: ExtensionContext): void {
  context.subscriptions.push(provideCheckTasks(context.asAbsolutePath('dist/floorscribe.mjs')))
  start(context, processServer(context.asAbsolutePath('dist/server/main.mjs')))
}
