import {
  LSPErrorCodes,
  type PrepareRenameParams,
  PrepareRenameRequest,
  type PrepareRenameResult,
  type RenameParams,
  RenameRequest,
  ResponseError,
  type WorkspaceEdit,
} from 'vscode-languageserver-protocol'
import {
  nameToChange,
  placesToRename,
  type RenameAsked,
  rename as renameAt,
} from '../features/rename.ts'
import { answering, type Seen, textMovedOn } from './answering.ts'
import { type PlacesToRename, RENAME_PLACES, type RenamePlaces } from './custom.ts'
import type { Feature } from './feature.ts'
import { placesIn } from './places.ts'
import { type FileEdit, workspaceEdit } from './workspace-edit.ts'

/** A name is changed in all jobs that use it, or in none; the editor shows the sentence why not. */
export const rename: Feature = {
  listen(session) {
    const { connection } = session
    connection.onRequest(
      PrepareRenameRequest.type,
      answering<PrepareRenameParams, PrepareRenameResult | null>(
        session,
        'measured',
        null,
        prepared,
      ),
    )
    connection.onRequest(
      RenameRequest.type,
      answering<RenameParams, WorkspaceEdit | null>(session, 'measured', null, renamed),
    )
    const answer = answering<Listed, PlacesToRename>(session, 'measured', { places: [] }, listed)
    connection.onRequest<PlacesToRename, void>(RENAME_PLACES, (asked: RenamePlaces, token) =>
      answer({ ...asked, textDocument: asked }, token),
    )
  },
}

interface Listed extends RenamePlaces {
  readonly textDocument: { readonly uri: string }
}

function prepared(
  { view, places }: Seen,
  { position }: PrepareRenameParams,
): PrepareRenameResult | null {
  const name = nameToChange(view, places.offset(position))
  if (name.kind === 'refused') throw refusal(name.why)
  return { range: places.range(name.span), placeholder: name.text }
}

async function renamed(
  seen: Seen,
  { position, newName }: RenameParams,
): Promise<WorkspaceEdit | null> {
  const asked = await askedAt(seen, seen.places.offset(position))
  const found = renameAt(asked, newName)
  if (found.kind === 'refused') throw refusal(found.why)
  const edits = found.edits.map((one) => ({ ...placeOf(asked, one), newText: one.text }))
  return workspaceEdit(edits, seen.session)
}

async function listed(seen: Seen, { position }: RenamePlaces): Promise<PlacesToRename> {
  const asked = await askedAt(seen, seen.places.offset(position))
  const found = placesToRename(asked)
  if (found.kind === 'refused') return { places: [], refused: found.why }
  return {
    places: found.places.map((one) => ({ location: placeOf(asked, one), line: one.lineText })),
  }
}

async function askedAt({ view, job, session }: Seen, offset: number): Promise<RenameAsked> {
  const { known } = session
  const { changes } = known
  const own = { measured: view.measured, addressOf: (file: string) => job.addressOf(file) }
  const shared = await known.sharing(job)
  if (known.changes !== changes) throw textMovedOn()
  return { view, offset, job: own, ...shared }
}

/** In the text of whichever job reads the file. */
function placeOf(
  { job, others }: RenameAsked,
  {
    address,
    start,
    end,
  }: { readonly address: string; readonly start: number; readonly end: number },
): Omit<FileEdit, 'newText'> {
  const trees = [job, ...others].flatMap(({ measured, addressOf }) =>
    measured.trees.filter(({ file }) => addressOf(file) === address),
  )
  return { uri: address, range: placesIn(trees[0]!).range({ start, end }) }
}

function refusal(why: string): ResponseError {
  return new ResponseError(LSPErrorCodes.RequestFailed, why)
}
