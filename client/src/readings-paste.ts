import {
  type Disposable,
  DocumentDropOrPasteEditKind,
  DocumentPasteEdit,
  type DocumentSelector,
  languages,
  window,
} from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import { pastedReadings } from './readings.ts'

const KIND = DocumentDropOrPasteEditKind.Text.append('readings')

/**
 * A meter's list that is pasted into a room fills its blanks; the editor offers the plain text too. A list
 * that fills none is pasted as it is, and the reason told.
 */
export function pasteReadings(selector: DocumentSelector, client: BaseLanguageClient): Disposable {
  return languages.registerDocumentPasteEditProvider(
    selector,
    {
      provideDocumentPasteEdits: async (document, [range, another], data) => {
        const text = await data.get('text/plain')?.asString()
        if (range === undefined || another !== undefined || text === undefined) return []
        const pasted = await pastedReadings(client, document, range.start, text)
        if (pasted === null) return []
        if ('refused' in pasted) {
          window.showInformationMessage(pasted.refused)
          return []
        }
        const filled = new DocumentPasteEdit('', 'Fill in the readings', KIND)
        filled.additionalEdit = pasted.edit
        return [filled]
      },
    },
    { providedPasteEditKinds: [KIND], pasteMimeTypes: ['text/plain'] },
  )
}
