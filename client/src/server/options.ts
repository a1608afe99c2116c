import { workspace } from 'vscode'
import { type LanguageClientOptions, RevealOutputChannelOn } from 'vscode-languageclient'
import type { Introduction } from '../../../server/src/lsp/custom.ts'
import type { ReferencePage } from '../reference-page.ts'
import { settings } from '../settings.ts'
import type { Lifeline } from './lifeline.ts'
import { middleware } from './middleware.ts'
import { servedDocuments } from './served.ts'

/** What the client is told once; what it tells the server of itself is asked for at each start. */
export function clientOptions(lifeline: Lifeline, page: ReferencePage): LanguageClientOptions {
  return {
    documentSelector: documents(),
    initializationOptions: () => introduction(lifeline.onlyRead),
    // A server that does not come up is started again, and the status item says so.
    initializationFailedHandler: () => false,
    revealOutputChannelOn: RevealOutputChannelOn.Never,
    markdown: { isTrusted: false, supportHtml: false },
    middleware: middleware((event) => lifeline.note(event), page),
  }
}

/** The documents of the folders that are open, and of the editors. */
export function documents() {
  const uris = [
    ...(workspace.workspaceFolders ?? []).map(({ uri }) => uri),
    ...workspace.textDocuments.map(({ uri }) => uri),
  ]
  const schemes = uris.map(({ scheme }) => scheme)
  return servedDocuments(schemes, (scheme) => workspace.fs.isWritableFileSystem(scheme))
}

function introduction(onlyRead: readonly string[]): Introduction {
  return {
    readsFiles: true,
    findsFiles: true,
    showsStatus: true,
    runsCommands: true,
    pauseMs: settings().pauseBeforeCountsMs,
    onlyRead,
  }
}
