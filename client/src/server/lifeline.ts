import type { Disposable } from 'vscode'
import type {
  BaseLanguageClient,
  CloseAction,
  ErrorAction,
  ErrorHandler,
  LanguageClientOptions,
} from 'vscode-languageclient'
import { Signal } from '../signal.ts'
import { buried, NO_CRASHES, noted, type WorkEvent } from './crash-book.ts'
import type { Server } from './server.ts'

/** How the server is, for the status item and whoever shows what it last said. */
export type Health =
  | { readonly kind: 'starting' }
  | { readonly kind: 'running' }
  /** It fell and is started again in a while. */
  | { readonly kind: 'down'; readonly waitMs: number }

// The library's own values, written out: this file runs without an editor, so that it can be tested.
const CONTINUE: ErrorAction.Continue = 1
const DO_NOT_RESTART: CloseAction.DoNotRestart = 1

/** Keeps a server going for as long as the editor is open: whatever ends it, it is started again. */
export class Lifeline implements Disposable {
  readonly client: BaseLanguageClient
  readonly #server: Server
  readonly #health = new Signal<Health>()
  readonly #suspects = new Signal<readonly string[]>()
  #book = NO_CRASHES
  #timer: ReturnType<typeof setTimeout> | undefined
  #fall: Promise<number> | undefined
  #wanted = true

  readonly onHealth = this.#health.on
  /** Files that were in work when the server fell, twice: they are only read from now on. */
  readonly onSuspects = this.#suspects.on

  /** `options` is made once; it may ask for `onlyRead` at each start. */
  constructor(server: Server, options: (lifeline: Lifeline) => LanguageClientOptions) {
    this.#server = server
    this.client = server.client({ ...options(this), errorHandler: this.#errorHandler() })
  }

  get onlyRead(): readonly string[] {
    return [...this.#book.onlyRead]
  }

  note(event: WorkEvent): void {
    this.#book = noted(this.#book, event)
  }

  async start(): Promise<void> {
    clearTimeout(this.#timer)
    this.#fall = undefined
    this.#health.fire({ kind: 'starting' })
    try {
      await this.client.start()
      this.#health.fire({ kind: 'running' })
    } catch {
      await this.#fallen()
    }
  }

  /** Wanted by a person: all is forgiven, and a server that no longer listens is ended. */
  async restart(): Promise<void> {
    this.note({ kind: 'restarted' })
    await this.#stop()
    await this.start()
  }

  async dispose(): Promise<void> {
    this.#wanted = false
    clearTimeout(this.#timer)
    await this.#stop()
  }

  async #stop(): Promise<void> {
    try {
      await this.client.stop()
    } catch {
      // It did not answer, or did not run: it is ended all the same.
    }
    this.#server.end()
  }

  #errorHandler(): ErrorHandler {
    return {
      error: () => ({ action: CONTINUE, handled: true }),
      closed: async () => {
        const waitMs = await this.#fallen()
        const message = `The server has ended; it is started again in ${waitMs / 1000} s.`
        return { action: DO_NOT_RESTART, handled: true, message }
      },
    }
  }

  /** A lost connection and a start that failed may both tell of the same fall. */
  #fallen(): Promise<number> {
    this.#fall ??= this.#reviveLater()
    return this.#fall
  }

  /** The client's own restart gives up in the end; ours is a start like any other. */
  async #reviveLater(): Promise<number> {
    const death = await this.#server.death()
    this.#server.end()
    const { book, revival } = buried(this.#book, death, Date.now())
    this.#book = book
    if (revival.newlyOnlyRead.length > 0) this.#suspects.fire(revival.newlyOnlyRead)
    this.#health.fire({ kind: 'down', waitMs: revival.waitMs })
    if (this.#wanted) this.#timer = setTimeout(() => this.start(), revival.waitMs)
    return revival.waitMs
  }
}
