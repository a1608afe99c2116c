import type { Writable } from 'node:stream'
import { AbstractMessageWriter, type Message, type MessageWriter } from 'vscode-jsonrpc'

/**
 * Writes messages to a stream at once: what is known is on its way before the next slice of work begins.
 * A client that is gone is told of by the end of the other stream.
 */
export class FrameWriter extends AbstractMessageWriter implements MessageWriter {
  readonly #stream: Writable

  constructor(stream: Writable) {
    super()
    this.#stream = stream
    stream.on('error', (error) => this.fireError(error))
    stream.on('close', () => this.fireClose())
  }

  async write(message: Message): Promise<void> {
    const body = JSON.stringify(message)
    this.#stream.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`)
  }

  end(): void {
    this.#stream.end()
  }
}
