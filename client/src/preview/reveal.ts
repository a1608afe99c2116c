import { Range, Selection, TextEditorRevealType, Uri, ViewColumn, window } from 'vscode'
import type { Location } from 'vscode-languageserver-protocol'

/** Shows a place in the text while the drawing keeps the focus. */
export async function reveal(place: Location, drawing: ViewColumn | undefined): Promise<void> {
  const uri = Uri.parse(place.uri)
  const { start, end } = place.range
  const range = new Range(start.line, start.character, end.line, end.character)
  const cursor = new Selection(range.start, range.start)
  const seen = window.visibleTextEditors.find(
    ({ document }) => document.uri.toString() === uri.toString(),
  )
  const editor =
    seen ??
    (await window.showTextDocument(uri, {
      viewColumn: columnForText(drawing),
      preserveFocus: true,
      preview: true,
    }))
  editor.selection = cursor
  editor.revealRange(range, TextEditorRevealType.InCenterIfOutsideViewport)
}

/** Where text is seen already, or else beside the drawing. */
function columnForText(drawing: ViewColumn | undefined): ViewColumn {
  const [text] = window.visibleTextEditors.filter(({ viewColumn }) => viewColumn !== undefined)
  if (text?.viewColumn !== undefined) return text.viewColumn
  return drawing === ViewColumn.One ? ViewColumn.Two : ViewColumn.One
}
