import type {
  SemanticTokens,
  SemanticTokensDelta,
  SemanticTokensEdit,
} from 'vscode-languageserver-protocol'
import type { TextDocument } from 'vscode-languageserver-textdocument'

interface Sent {
  readonly resultId: string
  readonly data: readonly number[]
}

/** The colours that an editor was last sent for each document, so that only what changed need follow. */
export class SentTokens {
  readonly #sent = new WeakMap<TextDocument, Sent>()
  #count = 0

  whole(document: TextDocument, data: number[]): SemanticTokens {
    const resultId = String(++this.#count)
    this.#sent.set(document, { resultId, data })
    return { resultId, data }
  }

  /** The one stretch that differs; everything, where the editor has another version than the last. */
  difference(
    document: TextDocument,
    data: number[],
    previous: string,
  ): SemanticTokens | SemanticTokensDelta {
    const before = this.#sent.get(document)
    const { resultId = '' } = this.whole(document, data)
    if (before?.resultId !== previous) return { resultId, data }
    return { resultId, edits: editsBetween(before.data, data) }
  }
}

function editsBetween(before: readonly number[], after: readonly number[]): SemanticTokensEdit[] {
  const shorter = Math.min(before.length, after.length)
  let start = 0
  while (start < shorter && before[start] === after[start]) start++
  if (start === before.length && start === after.length) return []
  let behind = 0
  while (behind < shorter - start && before.at(-1 - behind) === after.at(-1 - behind)) behind++
  const deleteCount = before.length - start - behind
  return [{ start, deleteCount, data: after.slice(start, after.length - behind) }]
}
