import {
  type CancellationToken,
  LSPErrorCodes,
  ResponseError,
} from 'vscode-languageserver-protocol'
import type { TextDocument } from 'vscode-languageserver-textdocument'
import type { View } from '../features/view.ts'
import { canonical } from './addresses.ts'
import type { OpenJob } from './open-job.ts'
import { type Places, placesOf } from './places.ts'
import type { Session } from './session.ts'
import type { Milestone } from './waiting.ts'

/** An open file as an answer sees it. */
export interface Seen {
  readonly session: Session
  readonly job: OpenJob
  readonly view: View
  readonly document: TextDocument
  readonly places: Places
  /** As the editor writes it. */
  readonly uri: string
}

interface AboutOneFile {
  readonly textDocument: { readonly uri: string }
}

/**
 * Makes a handler of a pure answer. It waits until the newest text is as far as the answer needs it, and
 * gives none when the text moved on meanwhile: the editor asks again. `none` is for files that are not
 * open or that no job reaches.
 */
export function answering<Params extends AboutOneFile, Answer>(
  session: Session,
  stage: Milestone,
  none: Answer,
  answer: (seen: Seen, params: Params) => Answer | Promise<Answer>,
): (params: Params, token: CancellationToken) => Promise<Answer> {
  return async (params, token) => {
    const key = canonical(params.textDocument.uri)
    const document = session.documents.get(key)
    if (document === undefined) return none
    const { version, uri } = document
    const checkIsWanted = () => {
      if (token.isCancellationRequested) throw calledOff()
      if (session.documents.get(key) !== document || document.version !== version)
        throw textMovedOn()
    }
    const job = await session.jobs.at(key, stage)
    checkIsWanted()
    const view = job?.view(key) ?? null
    if (job === undefined || view === null) return none
    const places = placesOf(document)
    const answered = await answer({ session, job, view, document, places, uri }, params)
    checkIsWanted()
    return answered
  }
}

function calledOff(): ResponseError {
  return new ResponseError(LSPErrorCodes.RequestCancelled, 'The request was called off.')
}

/** The editor asks again by itself, where it still wants to know. */
export function textMovedOn(): ResponseError {
  return new ResponseError(LSPErrorCodes.ContentModified, 'The text has moved on.')
}
