import {
  type CompletionItem,
  CompletionItemKind,
  type CompletionList,
  type CompletionParams,
  CompletionRequest,
  InsertTextFormat,
} from 'vscode-languageserver-protocol'
import type { Completion, CompletionKind } from '../features/completion/completion-item.ts'
import { complete } from '../features/completion.ts'
import { at } from '../features/place/at.ts'
import { plainText } from '../features/writing/insert.ts'
import { answering, type Seen } from './answering.ts'
import type { Feature } from './feature.ts'
import { partsFor } from './include-choices.ts'
import { hasStops, snippet } from './snippet.ts'

export const completion: Feature = {
  listen(session) {
    session.connection.onRequest(
      CompletionRequest.type,
      answering(session, 'measured', { isIncomplete: false, items: [] }, completionAt),
    )
  },
}

const KINDS: Readonly<Record<CompletionKind, CompletionItemKind>> = {
  block: CompletionItemKind.Keyword,
  line: CompletionItemKind.Keyword,
  phrase: CompletionItemKind.Text,
  reading: CompletionItemKind.Value,
  unit: CompletionItemKind.Unit,
  room: CompletionItemKind.Class,
  closet: CompletionItemKind.Struct,
  wall: CompletionItemKind.Field,
  corner: CompletionItemKind.Constant,
  opening: CompletionItemKind.Interface,
  product: CompletionItemKind.Module,
  trim: CompletionItemKind.Module,
  warning: CompletionItemKind.Event,
  file: CompletionItemKind.File,
  skeleton: CompletionItemKind.Snippet,
}

async function completionAt(seen: Seen, { position }: CompletionParams): Promise<CompletionList> {
  const offset = seen.places.offset(position)
  const paths = isOnInclude(seen, offset) ? await partsFor(seen) : []
  const { items, whole } = complete(seen.view, offset, { paths, said: seen.job.said })
  return { isIncomplete: !whole, items: items.map((one, rank) => itemOf(one, rank, seen)) }
}

/** Only there are the folders looked through. */
function isOnInclude({ view }: Seen, offset: number): boolean {
  return at(view.tree, offset).block?.word === 'include'
}

function itemOf(one: Completion, rank: number, { places, session }: Seen): CompletionItem {
  const walks = session.abilities.snippets && hasStops(one.insert)
  return {
    label: one.label,
    kind: KINDS[one.kind],
    detail: one.detail,
    filterText: one.filter,
    // Editors sort by letters; the order given is by likelihood.
    sortText: String(rank).padStart(4, '0'),
    insertTextFormat: walks ? InsertTextFormat.Snippet : InsertTextFormat.PlainText,
    textEdit: {
      range: places.range(one.span),
      newText: walks ? snippet(one.insert) : plainText(one.insert),
    },
    ...(one.likely ? { preselect: true } : {}),
  }
}
