import type { Location, Position, Range } from 'vscode-languageserver-protocol'
import { TextDocument } from 'vscode-languageserver-textdocument'
import type { Span } from '../facts/span.ts'
import type { Tree } from '../language/tree.ts'
import type { OpenJob } from './open-job.ts'

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

/** A span of any file that a job reaches, or null where it reaches none of that name. */
export function locationOf(job: OpenJob, { file, start, end }: Span): Location | null {
  const tree = job.measured?.trees.find((one) => one.file === file)
  if (tree === undefined) return null
  return { uri: job.uriOf(file), range: placesIn(tree).range({ start, end }) }
}
