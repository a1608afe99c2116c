import {
  createMessageConnection,
  ErrorCodes,
  IPCMessageReader,
  IPCMessageWriter,
  type MessageReader,
  type MessageWriter,
  type ResponseMessage,
} from 'vscode-jsonrpc/node'
import { FrameReader } from './frame-reader.ts'
import { FrameWriter } from './frame-writer.ts'
import { Gate } from './gate.ts'
import { NODE_SURROUNDINGS } from './node-surroundings.ts'
import { serve } from './server.ts'

const NO_MESSAGE: ResponseMessage = {
  jsonrpc: '2.0',
  id: null,
  error: { code: ErrorCodes.ParseError, message: 'This is no message.' },
}

// A process of its own: over the channel of the process that started it, else over standard input and
// output, which then carry the protocol and nothing else.
const isForked = process.argv.includes('--node-ipc')
const writer: MessageWriter = isForked
  ? new IPCMessageWriter(process)
  : new FrameWriter(process.stdout)
const reader: MessageReader = isForked
  ? new IPCMessageReader(process)
  : new FrameReader(process.stdin, {
      body: () => void writer.write(NO_MESSAGE),
      stream: () => NODE_SURROUNDINGS.exit(1),
    })
const gate = new Gate(reader, (response) => void writer.write(response))

serve(createMessageConnection(gate.reader, writer), gate, NODE_SURROUNDINGS)
