import {
  type SignatureHelp,
  type SignatureHelpParams,
  SignatureHelpRequest,
  type SignatureInformation,
} from 'vscode-languageserver-protocol'
import { lineHelp as helpAt, type LineForm } from '../features/line-help.ts'
import { answering, type Seen } from './answering.ts'
import type { Feature } from './feature.ts'

/** What a line may say, as the parts of one signature: its parts stand in any order. */
export const lineHelp: Feature = {
  listen(session) {
    session.connection.onRequest(
      SignatureHelpRequest.type,
      answering(session, 'measured', null, helped),
    )
  },
}

function helped(
  { view, places, session }: Seen,
  { position }: SignatureHelpParams,
): SignatureHelp | null {
  const help = helpAt(view, places.offset(position))
  if (help === null) return null
  const { word, says, forms } = help
  const activeParameter = help.active ?? (session.abilities.marksNoPart ? null : 0)
  const signature = { ...laidOut(word, forms), documentation: says, activeParameter }
  return { signatures: [signature], activeSignature: 0, activeParameter }
}

/** Each form is named by where it stands in the line: two may be written alike. */
function laidOut(word: string, forms: readonly LineForm[]): SignatureInformation {
  let label = word
  const parameters = forms.map(({ example, says }, i) => {
    label += i === 0 ? ' ' : ' · '
    const start = label.length
    label += example
    return { label: [start, label.length] as [number, number], documentation: says }
  })
  return { label, parameters }
}
