import { type ExtensionContext, Uri } from 'vscode'
import { start } from './extension.ts'
import { workerServer } from './server/worker.ts'

/** Where extensions run in a browser: the server is a worker. */
export function activate(context: ExtensionContext): void {
  start(context, workerServer(Uri.joinPath(context.extensionUri, 'dist/server-web.js')))
}
