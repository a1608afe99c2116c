import type { ExtensionContext } from 'vscode'
import { start } from './extension.ts'
import { processServer } from './server/process.ts'

/** Where extensions run on Node: the server is a process. */
export function activate(context: ExtensionContext): void {
  start(context, processServer(context.asAbsolutePath('dist/server.cjs')))
}
