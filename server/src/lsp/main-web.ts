import {
  BrowserMessageReader,
  BrowserMessageWriter,
  createMessageConnection,
} from 'vscode-jsonrpc/browser'
import { Gate } from './gate.ts'
import { serve } from './server.ts'
import { webSurroundings } from './web-surroundings.ts'

// In a web worker: over the worker's own messages.
const port = globalThis as unknown as ConstructorParameters<typeof BrowserMessageReader>[0]
const writer = new BrowserMessageWriter(port)
const gate = new Gate(new BrowserMessageReader(port), (response) => void writer.write(response))

serve(createMessageConnection(gate.reader, writer), gate, webSurroundings())
