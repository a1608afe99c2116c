/// <reference lib="dom" />
import { type Uri, workspace } from 'vscode'
import {
  BrowserMessageReader,
  BrowserMessageWriter,
  LanguageClient,
} from 'vscode-languageclient/browser'
import { SERVER_ID, SERVER_NAME, type Server } from './server.ts'

/** The server as a worker of the browser. A worker is never put down from outside. */
export function workerServer(script: Uri): Server {
  let worker: Worker | undefined
  const start = async () => {
    worker = new Worker(await addressOf(script))
    return { reader: new WorkerReader(worker), writer: new BrowserMessageWriter(worker) }
  }
  return {
    client: (options) => new LanguageClient(SERVER_ID, SERVER_NAME, start, options),
    death: async () => 'of itself',
    end: () => worker?.terminate(),
  }
}

/** A worker has no exit: what nobody caught in it, or a script that does not load, is its end. */
class WorkerReader extends BrowserMessageReader {
  constructor(worker: Worker) {
    super(worker)
    worker.addEventListener('error', () => this.fireClose())
  }
}

/** A browser starts no worker from a file on another machine: such a file is read first. */
async function addressOf(script: Uri): Promise<string> {
  if (script.scheme !== 'vscode-remote') return script.toString(true)
  const bytes = new Uint8Array(await workspace.fs.readFile(script))
  return URL.createObjectURL(new Blob([bytes], { type: 'text/javascript' }))
}
