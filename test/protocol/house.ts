import type { Position, Range } from 'vscode-languageserver-protocol'
import { TextDocument } from 'vscode-languageserver-textdocument'
import { readMarks } from '../features/marked.ts'
import { Editor, type EditorOptions } from './editor.ts'

/** Jobs of these tests lie in a folder that is not there: only what is open can be read. */
export const FOLDER = 'file:///floor%20jobs/'
export const JOB = `${FOLDER}job.floor`

export const PRODUCT = `product larch
  plank       6 3/4" x 47 7/8", 3/16" thick
  box         10 planks
  pad         attached
  joints      8" stagger, 10" shortest end, 2" narrowest rip
  gap         1/4"
  spoil       2 planks
`

/** A job without anything to say that is not a note. */
export const SOUND = `floorscribe 1
job Heron Cottage
tape 1/16"
base 1/2" thick, kept

${PRODUCT}
room den
  north       12' 0"
  east        10' 0"
  south       12' 0"
  west        10' 0"

floor all
  rooms       den
  lay         larch, running east-west
`

/** Marked texts as an editor has them open, by file name. */
export interface Opened {
  readonly editor: Editor
  readonly uri: string
  /** The first cursor of the first file that has one. */
  readonly at: { readonly textDocument: { readonly uri: string }; readonly position: Position }
  /** Ranges of the file with the cursor, in written order. */
  readonly ranges: readonly Range[]
  rangesIn(name: string): readonly Range[]
  uriOf(name: string): string
  textOf(name: string): string
}

export function uriOf(name: string): string {
  return FOLDER + name.split('/').map(encodeURIComponent).join('/')
}

const shared = new Map<string, Editor>()

/** One editor for all that ask for the same abilities, with nothing open in it. */
async function emptyEditor(options: EditorOptions): Promise<Editor> {
  const key = JSON.stringify(options)
  const editor = shared.get(key) ?? (await Editor.open(options))
  shared.set(key, editor)
  await editor.closeAll()
  return editor
}

/** Ends the servers of all editors that were shared. */
export function endShared(): void {
  for (const { server } of shared.values()) server.child.kill('SIGKILL')
  shared.clear()
}

/** Opens files with marks in an editor: in the order given. */
export async function opened(
  sources: string | Readonly<Record<string, string>>,
  options: EditorOptions = {},
): Promise<Opened> {
  const files = typeof sources === 'string' ? { 'job.floor': sources } : sources
  const marked = new Map(Object.entries(files).map(([name, text]) => [name, readMarks(text)]))
  const editor = await emptyEditor(options)
  for (const [name, { text }] of marked) editor.openFile(uriOf(name), text)
  const names = [...marked.keys()]
  const looked = names.find((name) => marked.get(name)!.cursors.length > 0) ?? names[0]!
  const document = (name: string) => TextDocument.create('', '', 0, marked.get(name)!.text)
  const rangesIn = (name: string) =>
    marked.get(name)!.ranges.map(({ start, end }) => ({
      start: document(name).positionAt(start),
      end: document(name).positionAt(end),
    }))
  const position = document(looked).positionAt(marked.get(looked)!.cursors[0] ?? 0)
  return {
    editor,
    uri: uriOf(looked),
    at: { textDocument: { uri: uriOf(looked) }, position },
    ranges: rangesIn(looked),
    rangesIn,
    uriOf,
    textOf: (name) => marked.get(name)!.text,
  }
}
