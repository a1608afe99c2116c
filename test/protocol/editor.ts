import type {
  Diagnostic,
  InitializeResult,
  PublishDiagnosticsParams,
} from 'vscode-languageserver-protocol'
import type { Frame } from './frames.ts'
import { type ServerProcess, startServer } from './process.ts'

/** An error that the server answered with. */
export class Refused extends Error {
  readonly code: number
  constructor({ code, message }: { readonly code: number; readonly message: string }) {
    super(message)
    this.code = code
  }
}

export interface EditorOptions {
  /** Another server than ours. */
  readonly script?: string
  /** For Node. */
  readonly flags?: readonly string[]
  readonly capabilities?: object
  readonly introduction?: object
  /** Answers what the server asks of an editor, by method. */
  readonly answers?: Readonly<Record<string, (params: never) => unknown>>
}

/** What any editor of today can do. */
export const ABLE = {
  workspace: {
    inlayHint: { refreshSupport: true },
    codeLens: { refreshSupport: true },
    didChangeWatchedFiles: { dynamicRegistration: true },
  },
  textDocument: {
    completion: { completionItem: { snippetSupport: true, documentationFormat: ['markdown'] } },
    hover: { contentFormat: ['markdown', 'plaintext'] },
    publishDiagnostics: { relatedInformation: true, codeDescriptionSupport: true },
    documentSymbol: { hierarchicalDocumentSymbolSupport: true },
    definition: { linkSupport: true },
  },
}

/** A small editor: it speaks to a real server over a pipe. */
export class Editor {
  readonly server: ServerProcess
  readonly #options: EditorOptions
  readonly #waiting = new Map<
    number,
    { resolve(value: unknown): void; reject(error: Error): void }
  >()
  readonly #told: Frame[] = []
  #listeners: (() => void)[] = []
  #id = 0
  #versions = new Map<string, number>()

  private constructor(server: ServerProcess, options: EditorOptions) {
    this.server = server
    this.#options = options
    server.onFrame((frame) => this.#take(frame))
    server.ended.then((code) => this.#end(code))
  }

  /** An editor whose server has not been greeted yet. */
  static raw(options: EditorOptions = {}): Editor {
    return new Editor(startServer(options.script, options.flags), options)
  }

  static async open(options: EditorOptions = {}): Promise<Editor> {
    const editor = Editor.raw(options)
    await editor.greet()
    return editor
  }

  async greet(): Promise<InitializeResult> {
    const { capabilities = ABLE, introduction } = this.#options
    const result = await this.ask<InitializeResult>('initialize', {
      processId: process.pid,
      rootUri: null,
      capabilities,
      initializationOptions: { pauseMs: 0, ...introduction },
    })
    this.tell('initialized', {})
    return result
  }

  /** Sends a request; its id is told, so that it can be cancelled. */
  request<T>(
    method: string,
    params: unknown,
  ): { readonly id: number; readonly answer: Promise<T> } {
    const id = ++this.#id
    const answer = new Promise<T>((resolve, reject) => {
      this.#waiting.set(id, { resolve: resolve as (value: unknown) => void, reject })
    })
    this.server.send({ jsonrpc: '2.0', id, method, params })
    return { id, answer }
  }

  ask<T>(method: string, params?: unknown): Promise<T> {
    return this.request<T>(method, params).answer
  }

  tell(method: string, params: unknown): void {
    this.server.send({ jsonrpc: '2.0', method, params })
  }

  openFile(uri: string, text: string, version = 1): void {
    this.#versions.set(uri, version)
    this.tell('textDocument/didOpen', {
      textDocument: { uri, languageId: 'floor', version, text },
    })
  }

  /** Changes as the protocol writes them; the version counts on. */
  change(uri: string, ...contentChanges: readonly object[]): number {
    const version = (this.#versions.get(uri) ?? 0) + 1
    this.#versions.set(uri, version)
    this.tell('textDocument/didChange', { textDocument: { uri, version }, contentChanges })
    return version
  }

  closeFile(uri: string): void {
    this.#versions.delete(uri)
    this.tell('textDocument/didClose', { textDocument: { uri } })
  }

  /** Closes every file, and forgets what was told of them. */
  async closeAll(): Promise<void> {
    for (const uri of [...this.#versions.keys()]) this.closeFile(uri)
    await this.ask('floorscribe/followPreview', { uri: null })
    this.forget()
  }

  /** Everything of one method that the server has told so far. */
  told<T>(method: string): readonly T[] {
    return this.#told.filter((frame) => frame.method === method).map(({ params }) => params as T)
  }

  /** From here on only what is told anew counts. */
  forget(): void {
    this.#told.length = 0
  }

  /** The first of what the server tells, now or later, that is the one. */
  async until<T>(method: string, isIt: (params: T) => boolean): Promise<T> {
    for (;;) {
      const found = this.told<T>(method).find(isIt)
      if (found !== undefined) return found
      await new Promise<void>((resolve) => this.#listeners.push(resolve))
    }
  }

  /** What the server last said of a file, once every stage of its newest text has been worked out. */
  async diagnostics(uri: string): Promise<readonly Diagnostic[]> {
    await this.ask('textDocument/codeLens', { textDocument: { uri } })
    const all = this.told<PublishDiagnosticsParams>('textDocument/publishDiagnostics')
    return all.findLast((one) => one.uri === uri)?.diagnostics ?? []
  }

  /** Says goodbye as the protocol asks; the exit code. */
  async close(): Promise<number | string> {
    await this.ask('shutdown')
    this.tell('exit', undefined)
    return await this.server.ended
  }

  #take(frame: Frame): void {
    const { id, method } = frame as { readonly id?: number; readonly method?: string }
    if (method !== undefined && id !== undefined) this.#answer(id, method, frame.params as never)
    else if (method !== undefined) this.#told.push(frame)
    else if (id !== undefined) this.#settle(id, frame)
    for (const go of this.#listeners.splice(0)) go()
  }

  /** Whoever waits for an answer waits for nothing now. */
  #end(code: number | string): void {
    const died = new Error(`the server ended (${code}): ${this.server.errors.join('')}`)
    for (const { reject } of this.#waiting.values()) reject(died)
    this.#waiting.clear()
  }

  #settle(id: number, { result, error }: Frame): void {
    const waiting = this.#waiting.get(id)
    this.#waiting.delete(id)
    if (error === undefined) waiting?.resolve(result)
    else waiting?.reject(new Refused(error as { code: number; message: string }))
  }

  async #answer(id: number, method: string, params: never): Promise<void> {
    this.#told.push({ method, params })
    const result = (await this.#options.answers?.[method]?.(params)) ?? null
    this.server.send({ jsonrpc: '2.0', id, result })
  }
}
