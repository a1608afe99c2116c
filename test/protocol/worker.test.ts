import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Worker } from 'node:worker_threads'
import { expect, test } from 'vitest'
import type { PublishDiagnosticsParams } from 'vscode-languageserver-protocol'
import { ABLE, Editor } from './editor.ts'
import type { Frame } from './frames.ts'
import { FOLDER, JOB, PRODUCT, SOUND } from './house.ts'

const BUNDLE = join(import.meta.dirname, '../../dist/server-web.js')

/** A worker as browsers have it: it knows of nothing but its messages. */
const AS_IN_BROWSERS = `
  const { parentPort } = require('node:worker_threads')
  globalThis.postMessage = (message) => parentPort.postMessage(message)
  const target = new EventTarget()
  globalThis.addEventListener = target.addEventListener.bind(target)
  parentPort.on('message', (data) => {
    target.dispatchEvent(Object.assign(new Event('message'), { data }))
    globalThis.onmessage?.({ data })
  })
  for (const name of ['process', 'setImmediate', 'require', 'module', 'exports'])
    Object.defineProperty(globalThis, name, { value: undefined })
`

test('in a worker without Node it says what the process says, and has files from the client', async () => {
  const text = SOUND.replace(PRODUCT, 'include larch.floor\n').replace("12' 0", "12' 3")
  const worker = new Worker(
    `${AS_IN_BROWSERS};(0, eval)(${JSON.stringify(readFileSync(BUNDLE, 'utf8'))})`,
    {
      eval: true,
    },
  )
  const published: PublishDiagnosticsParams[] = []
  const answered = new Promise((resolve) => {
    worker.on('message', (frame: Frame & { id: number; params: never }) => {
      if (frame.method === 'textDocument/publishDiagnostics') published.push(frame.params)
      if (frame.method === 'floorscribe/readFile')
        worker.postMessage({
          jsonrpc: '2.0',
          id: frame.id,
          result: { text: Buffer.from(PRODUCT).toString('base64') },
        })
      if (frame.method === undefined && frame.id === 2) resolve(frame.result)
    })
  })
  const send = (message: object) => worker.postMessage({ jsonrpc: '2.0', ...message })
  const initializationOptions = { readsFiles: true, pauseMs: 0 }
  send({ id: 1, method: 'initialize', params: { capabilities: ABLE, initializationOptions } })
  send({ method: 'initialized', params: {} })
  const textDocument = { uri: JOB, languageId: 'floor', version: 1, text }
  send({ method: 'textDocument/didOpen', params: { textDocument } })
  send({ id: 2, method: 'textDocument/codeLens', params: { textDocument } })
  const lenses = await answered
  await worker.terminate()

  const editor = await Editor.open()
  editor.openFile(`${FOLDER}larch.floor`, PRODUCT)
  editor.openFile(JOB, text)
  const said = await editor.diagnostics(JOB)
  expect(published.findLast(({ uri }) => uri === JOB)?.diagnostics).toEqual(said)
  expect(said.length).toBeGreaterThan(0)
  expect(lenses).toEqual(await editor.ask('textDocument/codeLens', { textDocument: { uri: JOB } }))
  await editor.close()
})
