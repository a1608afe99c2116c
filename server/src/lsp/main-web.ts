import {
  BrowserMessageReader,
  BrowserMessageWriter,
  createProtocolConnection,
} from 'vscode-languageserver-protocol/browser'
import { inOrder } from './gate.ts'
import { serve } from './server.ts'
import { webSurroundings } from './web-surroundings.ts'

// In a web worker: over the worker's own messages.
const port = globalThis as unknown as ConstructorParameters<typeof BrowserMessageReader>[0]
const writer = new BrowserMessageWriter(port)
const reader = inOrder(new BrowserMessageReader(port), (response) => void writer.write(response))

serve(createProtocolConnection(reader, writer), webSurroundings())
