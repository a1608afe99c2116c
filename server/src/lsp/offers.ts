import type {
  SemanticTokenModifiers,
  SemanticTokensLegend,
  SemanticTokenTypes,
  ServerCapabilities,
} from 'vscode-languageserver-protocol'

/** The colours that the text may have: names of the protocol's, which every theme has a colour for. */
export const LEGEND = {
  tokenTypes: [
    'keyword',
    'operator',
    'class',
    'property',
    'interface',
    'struct',
    'type',
    'namespace',
    'enumMember',
    'variable',
    'number',
    'macro',
    'string',
  ],
  tokenModifiers: ['declaration'],
} as const satisfies {
  readonly tokenTypes: readonly `${SemanticTokenTypes}`[]
  readonly tokenModifiers: readonly `${SemanticTokenModifiers}`[]
}

/**
 * What the server offers to every editor, as the protocol names it. It stands by itself, so that an
 * editor has its answer before anything else of the server is read.
 */
export const OFFERS: ServerCapabilities = {
  // UTF-16 units, which every editor knows.
  positionEncoding: 'utf-16',
  textDocumentSync: { openClose: true, change: 2 },
  // A blank ends a word, a comma a phrase: what may follow is offered there.
  completionProvider: { triggerCharacters: [' ', ','], resolveProvider: false },
  signatureHelpProvider: { triggerCharacters: [' ', ','] },
  hoverProvider: true,
  definitionProvider: true,
  referencesProvider: true,
  documentHighlightProvider: true,
  renameProvider: { prepareProvider: true },
  codeActionProvider: { codeActionKinds: ['quickfix'] },
  codeLensProvider: { resolveProvider: false },
  inlayHintProvider: { resolveProvider: false },
  documentLinkProvider: { resolveProvider: false },
  documentSymbolProvider: { label: 'Floorscribe' },
  workspaceSymbolProvider: true,
  foldingRangeProvider: true,
  selectionRangeProvider: true,
  semanticTokensProvider: {
    legend: LEGEND as unknown as SemanticTokensLegend,
    full: { delta: true },
    range: true,
  },
  documentFormattingProvider: true,
  documentRangeFormattingProvider: true,
  documentOnTypeFormattingProvider: { firstTriggerCharacter: '\n' },
  workspace: { workspaceFolders: { supported: true, changeNotifications: true } },
}
