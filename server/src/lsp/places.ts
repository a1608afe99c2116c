import type { Position, Range } from 'vscode-languageserver-protocol'
import { TextDocument } from 'vscode-languageserver-textdocument'
import type { Tree } from '../language/tree.ts'

/** Between places in a text and places in a document. Offsets past an end mean that end. */
export interface Places {
  offset(position: Position): number
  position(offset: number): Position
  range(span: { readonly start: number; readonly end: number }): Range
}

const DOCUMENTS = new WeakMap<Tree, TextDocument>()

/** Of a file's text as it was read. Line starts are found once for each version of it. */
export function placesIn(tree: Tree): Places {
  const known = DOCUMENTS.get(tree) ?? TextDocument.create('', '', 0, tree.text)
  DOCUMENTS.set(tree, known)
  return placesOf(known)
}

export function placesOf(document: TextDocument): Places {
  const position = (offset: number) => document.positionAt(offset)
  return {
    offset: (at) => document.offsetAt(at),
    position,
    range: ({ start, end }) => ({ start: position(start), end: position(end) }),
  }
}
