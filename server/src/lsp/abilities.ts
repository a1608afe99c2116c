import type { InitializeParams } from 'vscode-languageserver-protocol'
import { canonical } from './addresses.ts'
import type { Introduction } from './custom.ts'

/** From the last key to the count: long enough that figures hold still while one types. */
const PAUSE_MS = 250

/** What the client can do, as far as an answer depends on it. What it does not say it cannot. */
export interface Abilities {
  readonly snippets: boolean
  readonly markdown: boolean
  /** Diagnostics may name other places. */
  readonly relates: boolean
  readonly linksToDefinition: boolean
  /** An edit may say which version it is for. */
  readonly versionsEdits: boolean
  /** Help for a line may mark none of its parts. */
  readonly marksNoPart: boolean
  readonly refreshesHints: boolean
  readonly refreshesLenses: boolean
  /** It can be asked to tell of files that change. */
  readonly watchesFiles: boolean
  readonly nestsSymbols: boolean
  readonly readsFiles: boolean
  readonly findsFiles: boolean
  readonly showsStatus: boolean
  readonly runsCommands: boolean
  /** Address of the reference page, or null. */
  readonly reference: string | null
  readonly pauseMs: number
  /** Files that are read and never counted, by canonical address. */
  readonly onlyRead: ReadonlySet<string>
}

export function abilitiesOf({ capabilities, initializationOptions }: InitializeParams): Abilities {
  const { textDocument: text, workspace } = capabilities
  const said: Introduction = initializationOptions ?? {}
  const completion = text?.completion?.completionItem
  return {
    snippets: completion?.snippetSupport === true,
    markdown: text?.hover?.contentFormat?.includes('markdown') === true,
    relates: text?.publishDiagnostics?.relatedInformation === true,
    linksToDefinition: text?.definition?.linkSupport === true,
    versionsEdits: workspace?.workspaceEdit?.documentChanges === true,
    marksNoPart: text?.signatureHelp?.signatureInformation?.noActiveParameterSupport === true,
    refreshesHints: workspace?.inlayHint?.refreshSupport === true,
    refreshesLenses: workspace?.codeLens?.refreshSupport === true,
    watchesFiles: workspace?.didChangeWatchedFiles?.dynamicRegistration === true,
    nestsSymbols: text?.documentSymbol?.hierarchicalDocumentSymbolSupport === true,
    readsFiles: said.readsFiles === true,
    findsFiles: said.findsFiles === true,
    showsStatus: said.showsStatus === true,
    runsCommands: said.runsCommands === true,
    reference: typeof said.reference === 'string' ? said.reference : null,
    pauseMs: typeof said.pauseMs === 'number' && said.pauseMs >= 0 ? said.pauseMs : PAUSE_MS,
    onlyRead: new Set(Array.isArray(said.onlyRead) ? said.onlyRead.map(String).map(canonical) : []),
  }
}
