import type { ProtocolConnection } from 'vscode-languageserver-protocol'
import { type Preview, previewOf } from '../features/preview.ts'
import { previewChange } from '../features/preview-change.ts'
import type { View } from '../features/view.ts'
import { PREVIEW, type PreviewSent } from './custom.ts'
import type { Documents } from './documents.ts'
import type { OpenJob } from './open-job.ts'
import type { Schedule, Steps } from './schedule.ts'

/** Keeps the page beside the text up to date: the job of one file, in what differs from the last picture. */
export class PreviewFollower implements Steps {
  readonly #connection: ProtocolConnection
  readonly #schedule: Schedule
  readonly #documents: Documents
  #uri: string | null = null
  #job: OpenJob | null = null
  #shown: { readonly view: View; readonly preview: Preview } | null = null

  constructor(connection: ProtocolConnection, schedule: Schedule, documents: Documents) {
    this.#connection = connection
    this.#schedule = schedule
    this.#documents = documents
  }

  /** From now on this file, in this job; the next picture is sent whole. */
  follow(uri: string | null, job: OpenJob | null): void {
    this.#uri = uri
    this.#job = job
    this.#shown = null
    if (job !== null) this.#schedule.add(this)
  }

  /** A job came a stage further. Drawing waits its turn: what is wrong is said first. */
  moved(job: OpenJob): void {
    if (this.#job === null && this.#uri !== null && job.view(this.#uri) !== null) this.#job = job
    if (job === this.#job) this.#schedule.add(this)
  }

  /** Its last picture stays; whichever job reaches the file next is followed. */
  closed(job: OpenJob): void {
    if (job === this.#job) this.#job = null
  }

  /** The preview of the newest text, as soon as its rooms are measured; null where none is followed. */
  async now(): Promise<{ readonly job: OpenJob; readonly preview: Preview } | null> {
    await this.#job?.until('measured')
    this.step()
    if (this.#job === null || this.#shown === null) return null
    return { job: this.#job, preview: this.#shown.preview }
  }

  step(): boolean {
    const view = this.#uri === null ? null : (this.#job?.view(this.#uri) ?? null)
    if (view === null || this.#isShown(view)) return false
    const before = this.#shown?.preview ?? null
    const preview = previewOf(view, before)
    this.#shown = { view, preview }
    const sent: PreviewSent = {
      uri: this.#documents.get(this.#uri!)?.uri ?? this.#uri!,
      change: previewChange(before?.picture ?? null, preview.picture),
    }
    this.#connection.sendNotification(PREVIEW, sent)
    return false
  }

  #isShown({ measured, counted }: View): boolean {
    return this.#shown?.view.measured === measured && this.#shown.view.counted === counted
  }
}
