import { type ExtensionContext, workspace } from 'vscode'
import type { LanguageClientOptions } from 'vscode-languageclient'
import { servedDocuments } from './server/served.ts'
import type { Server } from './server/server.ts'

/** Everything that the extension does, whichever way its server runs. */
export function start(context: ExtensionContext, server: Server): void {
  const client = server.client(options())
  context.subscriptions.push({ dispose: () => client.dispose() })
  client.start()
}

function options(): LanguageClientOptions {
  const schemes = workspace.workspaceFolders?.map(({ uri }) => uri.scheme) ?? []
  return {
    documentSelector: servedDocuments(schemes, (scheme) =>
      workspace.fs.isWritableFileSystem(scheme),
    ),
  }
}
