import type { Diagnostic } from 'vscode'
import type { Middleware } from 'vscode-languageclient'
import type { ReferencePage } from '../reference-page.ts'
import { settings } from '../settings.ts'
import type { WorkEvent } from './crash-book.ts'
import { watchWork } from './work-watch.ts'

/** What the extension adds on the way between editor and server. */
export function middleware(note: (event: WorkEvent) => void, page: ReferencePage): Middleware {
  return {
    ...watchWork(note),
    handleDiagnostics: async (uri, diagnostics, next) => {
      const lines = await page.lines()
      next(
        uri,
        diagnostics.map((one) => linked(one, page, lines)),
      )
    },
    provideInlayHints: (document, range, token, next) =>
      settings().hints ? next(document, range, token) : [],
    provideCodeLenses: (document, token, next) => (settings().lenses ? next(document, token) : []),
  }
}

/**
 * The code of a problem leads to its place on the reference page: by its line, since the editor's
 * hover follows links to files and ignores those to commands.
 */
function linked(
  diagnostic: Diagnostic,
  { uri }: ReferencePage,
  lines: ReadonlyMap<string, number>,
): Diagnostic {
  const { code } = diagnostic
  const line = typeof code === 'string' ? lines.get(code) : undefined
  if (typeof code === 'string' && line !== undefined)
    diagnostic.code = { value: code, target: uri.with({ fragment: `L${line}` }) }
  return diagnostic
}
