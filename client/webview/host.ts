import type { Look } from './camera.ts'
import { isNumber, isRecord, isText, orNull } from './checks.ts'
import { asToPage, type FromPage, type ToPage } from './messages.ts'

/** What the page keeps while it is hidden. */
export interface Kept {
  /** The title of the job that was seen. */
  readonly job: string
  readonly look: Look | null
}

/** The other side: the extension, and the editor that keeps a little for the page. */
export interface Host {
  readonly send: (message: FromPage) => void
  readonly keep: (kept: Kept) => void
  readonly kept: () => Kept | null
  /** What is no message of ours is not heard. */
  readonly listen: (hear: (message: ToPage) => void) => void
}

declare function acquireVsCodeApi(): {
  postMessage(message: unknown): void
  setState(state: unknown): void
  getState(): unknown
}

export function editorHost(): Host {
  const editor = acquireVsCodeApi()
  return {
    send: (message) => editor.postMessage(message),
    keep: (kept) => editor.setState(kept),
    kept: () => asKept(editor.getState()),
    listen: (hear) =>
      window.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
        const message = asToPage(data)
        if (message !== null) hear(message)
      }),
  }
}

const isLook = isRecord<Look>({ k: isNumber, x: isNumber, y: isNumber })
const isKept = isRecord<Kept>({ job: isText, look: orNull(isLook) })

function asKept(value: unknown): Kept | null {
  return isKept(value) ? value : null
}
