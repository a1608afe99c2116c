import {
  ErrorCodes,
  Message,
  type MessageReader,
  type RequestMessage,
  type ResponseMessage,
} from 'vscode-languageserver-protocol'

type Phase = 'new' | 'open' | 'shut'

/**
 * Lets messages through in the order that the protocol asks for: first `initialize`, and after
 * `shutdown` only `exit`. Others get its error, notifications nothing.
 */
export function inOrder(
  reader: MessageReader,
  refuse: (response: ResponseMessage) => void,
): MessageReader {
  let phase: Phase = 'new'
  const listen: MessageReader['listen'] = (callback) =>
    reader.listen((message) => {
      const code = refusal(message, phase)
      if (code === null) {
        phase = phaseAfter(message, phase)
        callback(message)
      } else if (Message.isRequest(message)) refuse(refused(message, code))
    })
  return {
    listen,
    onError: reader.onError,
    onClose: reader.onClose,
    onPartialMessage: reader.onPartialMessage,
    dispose: () => reader.dispose(),
  }
}

function refusal(message: Message, phase: Phase): number | null {
  if (Message.isResponse(message) || methodOf(message) === 'exit') return null
  switch (phase) {
    case 'new':
      return methodOf(message) === 'initialize' ? null : ErrorCodes.ServerNotInitialized
    case 'open':
      return methodOf(message) === 'initialize' ? ErrorCodes.InvalidRequest : null
    case 'shut':
      return ErrorCodes.InvalidRequest
  }
}

function phaseAfter(message: Message, phase: Phase): Phase {
  if (methodOf(message) === 'initialize') return 'open'
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
