import {
  type SelectionRange,
  type SelectionRangeParams,
  SelectionRangeRequest,
} from 'vscode-languageserver-protocol'
import { selections } from '../features/selection.ts'
import { answering, type Seen } from './answering.ts'
import type { Feature } from './feature.ts'

export const selection: Feature = {
  listen(session) {
    session.connection.onRequest(
      SelectionRangeRequest.type,
      answering(session, 'measured', [], selectionsAt),
    )
  },
}

function selectionsAt(seen: Seen, { positions }: SelectionRangeParams): SelectionRange[] {
  return positions.map((position) => growing(seen, seen.places.offset(position)))
}

/** The protocol hangs each range on the one around it. */
function growing({ view, places }: Seen, offset: number): SelectionRange {
  const [outermost, ...inward] = selections(view.tree, offset).toReversed()
  return inward.reduce<SelectionRange>((parent, span) => ({ range: places.range(span), parent }), {
    range: places.range(outermost!),
  })
}
