import type {
  DidChangeTextDocumentParams,
  DidCloseTextDocumentParams,
  DidOpenTextDocumentParams,
  TextDocumentContentChangeEvent,
} from 'vscode-languageserver-protocol'
import { TextDocument } from 'vscode-languageserver-textdocument'
import { canonical } from './addresses.ts'

/** What is told of the files that are open. Addresses are canonical. */
export interface DocumentEvents {
  opened(uri: string): void
  changed(uri: string): void
  closed(uri: string): void
}

/** The texts that the editor holds, saved or not, by canonical address. */
export class Documents {
  readonly #open = new Map<string, TextDocument>()
  readonly #events: DocumentEvents

  constructor(events: DocumentEvents) {
    this.#events = events
  }

  /** In the order in which they were opened. */
  get uris(): readonly string[] {
    return [...this.#open.keys()]
  }

  get(uri: string): TextDocument | undefined {
    return this.#open.get(uri)
  }

  open({ textDocument: { uri, languageId, version, text } }: DidOpenTextDocumentParams): void {
    const key = canonical(uri)
    this.#open.set(key, TextDocument.create(uri, languageId, version, text))
    this.#events.opened(key)
  }

  /**
   * Every change is made, whatever its version: each is told against the text that the one before it
   * left. One for a file that is not open has no text to be made in.
   */
  change({ textDocument, contentChanges }: DidChangeTextDocumentParams): void {
    const key = canonical(textDocument.uri)
    const document = this.#open.get(key)
    if (document === undefined) return
    const { version = document.version } = textDocument
    for (const change of contentChanges)
      TextDocument.update(document, [within(document, change)], version ?? document.version)
    this.#events.changed(key)
  }

  close({ textDocument }: DidCloseTextDocumentParams): void {
    const key = canonical(textDocument.uri)
    if (this.#open.delete(key)) this.#events.closed(key)
  }
}

/** A range that begins past the last line is one at the end: the library would count lines between. */
function within(
  document: TextDocument,
  change: TextDocumentContentChangeEvent,
): TextDocumentContentChangeEvent {
  if (!('range' in change) || change.range.end.line < document.lineCount) return change
  const { start, end } = change.range
  const range = {
    start: document.positionAt(document.offsetAt(start)),
    end: document.positionAt(document.offsetAt(end)),
  }
  return { range, text: change.text }
}
