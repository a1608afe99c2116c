import {
  createProtocolConnection,
  IPCMessageReader,
  IPCMessageWriter,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node'
import { inOrder } from './gate.ts'
import { NODE_SURROUNDINGS } from './node-surroundings.ts'
import { serve } from './server.ts'

// A process of its own: over the channel of the process that started it, else over standard input and
// output, which then carry the protocol and nothing else.
const isForked = process.argv.includes('--node-ipc')
const reader = isForked ? new IPCMessageReader(process) : new StreamMessageReader(process.stdin)
const writer = isForked ? new IPCMessageWriter(process) : new StreamMessageWriter(process.stdout)

serve(
  createProtocolConnection(
    inOrder(reader, (response) => void writer.write(response)),
    writer,
  ),
  NODE_SURROUNDINGS,
)
