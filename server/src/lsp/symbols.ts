import {
  type DocumentSymbol,
  DocumentSymbolRequest,
  type SymbolInformation,
  SymbolKind,
} from 'vscode-languageserver-protocol'
import { type OutlineItem, type OutlineKind, outlineOf } from '../features/outline.ts'
import { answering, type Seen } from './answering.ts'
import type { Feature } from './feature.ts'
import type { Places } from './places.ts'

export const symbols: Feature = {
  listen(session) {
    session.connection.onRequest(
      DocumentSymbolRequest.type,
      answering(session, 'measured', [], symbolsIn),
    )
  },
}

/** Icons of the editor that come nearest. */
export const SYMBOL_KINDS: Readonly<Record<OutlineKind, SymbolKind>> = {
  job: SymbolKind.File,
  room: SymbolKind.Class,
  wall: SymbolKind.Field,
  opening: SymbolKind.Interface,
  closet: SymbolKind.Struct,
  obstacle: SymbolKind.Object,
  check: SymbolKind.Operator,
  product: SymbolKind.Package,
  floor: SymbolKind.Namespace,
  prices: SymbolKind.Array,
}

function symbolsIn({ view, places, uri, session }: Seen): DocumentSymbol[] | SymbolInformation[] {
  const items = outlineOf(view.tree)
  return session.abilities.nestsSymbols
    ? items.map((item) => nested(item, places))
    : items.flatMap((item) => flat(item, places, uri))
}

function nested(
  { kind, name, detail, span, at, under }: OutlineItem,
  places: Places,
): DocumentSymbol {
  return {
    name,
    detail,
    kind: SYMBOL_KINDS[kind],
    range: places.range(span),
    selectionRange: places.range(at),
    children: under.map((item) => nested(item, places)),
  }
}

function flat(
  { kind, name, at, under }: OutlineItem,
  places: Places,
  uri: string,
): SymbolInformation[] {
  const symbol = { name, kind: SYMBOL_KINDS[kind], location: { uri, range: places.range(at) } }
  return [symbol, ...under.flatMap((item) => flat(item, places, uri))]
}
