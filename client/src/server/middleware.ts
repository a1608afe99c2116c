import { type Diagnostic, Uri } from 'vscode'
import type { Middleware } from 'vscode-languageclient'
import { settings } from '../settings.ts'
import type { WorkEvent } from './crash-book.ts'
import { watchWork } from './work-watch.ts'

/** What the extension adds on the way between editor and server. */
export function middleware(note: (event: WorkEvent) => void): Middleware {
  return {
    ...watchWork(note),
    handleDiagnostics: (uri, diagnostics, next) => next(uri, diagnostics.map(linked)),
    provideInlayHints: (document, range, token, next) =>
      settings().hints ? next(document, range, token) : [],
    provideCodeLenses: (document, token, next) => (settings().lenses ? next(document, token) : []),
  }
}

/** The code of a problem leads to its place on the reference page, which the extension brings. */
function linked(diagnostic: Diagnostic): Diagnostic {
  const { code } = diagnostic
  if (typeof code !== 'string') return diagnostic
  const query = encodeURIComponent(JSON.stringify([code]))
  diagnostic.code = { value: code, target: Uri.parse(`command:floorscribe.openReference?${query}`) }
  return diagnostic
}
