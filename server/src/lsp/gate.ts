import {
  ErrorCodes,
  Message,
  type MessageReader,
  type RequestMessage,
  type ResponseMessage,
} from 'vscode-jsonrpc'

/**
 * - `new`: only `initialize` may come.
 * - `held`: it came, and what comes behind it waits until there is someone to answer.
 * - `shut`: after `shutdown` only `exit` may come.
 */
type Phase = 'new' | 'held' | 'open' | 'shut'

/**
 * Lets messages through in the order that the protocol asks for. Requests out of order get its error,
 * notifications nothing.
 */
export class Gate {
  /** What a connection reads from. */
  readonly reader: MessageReader
  readonly #refuse: (response: ResponseMessage) => void
  #phase: Phase = 'new'
  #waiting: Message[] = []
  #pass: (message: Message) => void = () => {}

  constructor(reader: MessageReader, refuse: (response: ResponseMessage) => void) {
    this.#refuse = refuse
    this.reader = {
      listen: (callback) => {
        this.#pass = callback
        return reader.listen((message) => this.#take(message))
      },
      onError: reader.onError,
      onClose: reader.onClose,
      onPartialMessage: reader.onPartialMessage,
      dispose: () => reader.dispose(),
    }
  }

  /** Everything is there to answer with: what has waited comes through. */
  open(): void {
    this.#phase = 'open'
    for (const message of this.#waiting.splice(0)) this.#take(message)
  }

  #take(message: Message): void {
    const code = refusal(message, this.#phase)
    if (code !== null) {
      if (Message.isRequest(message)) this.#refuse(refused(message, code))
    } else if (this.#phase === 'held' && methodOf(message) !== 'exit') this.#waiting.push(message)
    else {
      this.#phase = phaseAfter(message, this.#phase)
      this.#pass(message)
    }
  }
}

function refusal(message: Message, phase: Phase): number | null {
  const method = methodOf(message)
  if (Message.isResponse(message) || method === 'exit') return null
  switch (phase) {
    case 'new':
      return method === 'initialize' ? null : ErrorCodes.ServerNotInitialized
    case 'held':
    case 'open':
      return method === 'initialize' ? ErrorCodes.InvalidRequest : null
    case 'shut':
      return ErrorCodes.InvalidRequest
  }
}

function phaseAfter(message: Message, phase: Phase): Phase {
  if (methodOf(message) === 'initialize') return 'held'
  return methodOf(message) === 'shutdown' ? 'shut' : phase
}

function methodOf(message: Message): string {
  return Message.isRequest(message) || Message.isNotification(message) ? message.method : ''
}

function refused({ id, method }: RequestMessage, code: number): ResponseMessage {
  const message =
    code === ErrorCodes.ServerNotInitialized
      ? `${method} came before initialize.`
      : `${method} does not belong here.`
  return { jsonrpc: '2.0', id, error: { code, message } }
}
