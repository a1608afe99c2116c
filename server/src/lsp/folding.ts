import {
  type FoldingRange,
  FoldingRangeKind,
  FoldingRangeRequest,
} from 'vscode-languageserver-protocol'
import { folds } from '../features/folding.ts'
import { answering, type Seen } from './answering.ts'
import type { Feature } from './feature.ts'

export const folding: Feature = {
  listen(session) {
    session.connection.onRequest(
      FoldingRangeRequest.type,
      answering(session, 'measured', [], foldsIn),
    )
  },
}

function foldsIn({ view }: Seen): FoldingRange[] {
  return folds(view.tree).map(({ kind, first, last }) => ({
    startLine: first - 1,
    endLine: last - 1,
    ...(kind === 'comment' ? { kind: FoldingRangeKind.Comment } : {}),
  }))
}
