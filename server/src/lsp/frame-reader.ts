import type { Readable } from 'node:stream'
import {
  AbstractMessageReader,
  type DataCallback,
  type Disposable,
  type Message,
} from 'vscode-jsonrpc'

/** A header longer than this is none, and a body larger holds no text that would be looked at. */
const LONGEST_HEADER = 4_096
const LARGEST_BODY = 256_000_000
const HEADER_END = '\r\n\r\n'

/** What is to be done about bytes that are no message. */
export interface Faults {
  /** A body that is no JSON: the next message stands where it should all the same. */
  body(): void
  /** A header that cannot be read: nobody knows where the next message begins. */
  stream(): void
}

/**
 * Reads messages off a stream, strictly: where a length cannot be trusted nothing after it can, and a
 * server that read on would wait for ever for the end of a message that never was.
 */
export class FrameReader extends AbstractMessageReader {
  readonly #stream: Readable
  readonly #faults: Faults
  #chunks: Buffer[] = []
  #held = 0
  /** Bytes of the body that is being read; null while that is a header. */
  #wanted: number | null = null

  constructor(stream: Readable, faults: Faults) {
    super()
    this.#stream = stream
    this.#faults = faults
  }

  listen(callback: DataCallback): Disposable {
    const take = (bytes: Buffer) => {
      this.#chunks.push(bytes)
      this.#held += bytes.length
      while (this.#readHeader() && this.#readBody(callback)) this.#wanted = null
    }
    this.#stream.on('data', take)
    this.#stream.on('error', (error) => this.fireError(error))
    this.#stream.on('close', () => this.fireClose())
    return { dispose: () => void this.#stream.off('data', take) }
  }

  /** Whether the length of the next body is known. */
  #readHeader(): boolean {
    if (this.#wanted !== null) return true
    const held = this.#all()
    const end = held.indexOf(HEADER_END)
    if (end < 0) {
      if (held.length > LONGEST_HEADER) this.#faults.stream()
      return false
    }
    const length = /^Content-Length: *(\d{1,9})$/im.exec(held.toString('ascii', 0, end))?.[1]
    if (length === undefined || Number(length) > LARGEST_BODY) {
      this.#faults.stream()
      return false
    }
    this.#wanted = Number(length)
    this.#keep(held.subarray(end + HEADER_END.length))
    return true
  }

  /** Whether the whole body was there. */
  #readBody(callback: DataCallback): boolean {
    if (this.#wanted === null || this.#held < this.#wanted) return false
    const held = this.#all()
    const message = messageIn(held.toString('utf8', 0, this.#wanted))
    this.#keep(held.subarray(this.#wanted))
    if (message === null) this.#faults.body()
    else this.#give(message, callback)
    return true
  }

  #give(message: Message, callback: DataCallback): void {
    try {
      callback(message)
    } catch (error) {
      this.fireError(error)
    }
  }

  /** Joined only when a header or a whole body may be in it: a long body comes in many chunks. */
  #all(): Buffer {
    const all = this.#chunks.length === 1 ? this.#chunks[0]! : Buffer.concat(this.#chunks)
    this.#chunks = [all]
    return all
  }

  #keep(rest: Buffer): void {
    // An empty rest would hold on to the memory of all that was read with it.
    this.#chunks = rest.length === 0 ? [] : [rest]
    this.#held = rest.length
  }
}

function messageIn(body: string): Message | null {
  try {
    const read: unknown = JSON.parse(body)
    return typeof read === 'object' && read !== null ? (read as Message) : null
  } catch {
    return null
  }
}
