import { fork } from 'node:child_process'
import { once } from 'node:events'
import { join } from 'node:path'
import { afterEach, describe, expect, test } from 'vitest'
import { ABLE, Editor } from './editor.ts'
import { JOB, SOUND } from './house.ts'

let editor: Editor
afterEach(() => void editor.server.child.kill('SIGKILL'))

const NOT_INITIALIZED = -32002
const INVALID_REQUEST = -32600
const METHOD_NOT_FOUND = -32601

describe('the order of messages', () => {
  test('a request before initialize is refused, and a notification is left out', async () => {
    editor = Editor.raw()
    editor.openFile(JOB, SOUND)
    await expect(
      editor.ask('textDocument/codeLens', { textDocument: { uri: JOB } }),
    ).rejects.toMatchObject({ code: NOT_INITIALIZED })
    await editor.greet()
    await expect(
      editor.ask('textDocument/codeLens', { textDocument: { uri: JOB } }),
    ).resolves.toEqual([])
    expect(editor.told('textDocument/publishDiagnostics')).toEqual([])
  })

  test('a second initialize is refused, and the first still holds', async () => {
    editor = await Editor.open()
    await expect(editor.ask('initialize', { capabilities: {} })).rejects.toMatchObject({
      code: INVALID_REQUEST,
    })
    editor.openFile(JOB, SOUND)
    expect((await editor.diagnostics(JOB)).length).toBeGreaterThan(0)
  })

  test('after shutdown every request is refused', async () => {
    editor = await Editor.open()
    await editor.ask('shutdown')
    for (const method of ['shutdown', 'initialize', 'textDocument/hover'])
      await expect(editor.ask(method, {})).rejects.toMatchObject({ code: INVALID_REQUEST })
    editor.tell('exit', undefined)
    expect(await editor.server.ended).toBe(0)
  })

  test('exit without shutdown ends it as a fault', async () => {
    editor = await Editor.open()
    editor.tell('exit', undefined)
    expect(await editor.server.ended).toBe(1)
  })

  test('exit before initialize ends it', async () => {
    editor = Editor.raw()
    editor.tell('exit', undefined)
    expect(await editor.server.ended).toBe(1)
  })

  test('it ends with the editor', async () => {
    editor = await Editor.open()
    editor.server.child.stdin?.end()
    expect(await editor.server.ended).toBe(1)
  })

  test('an unknown request is refused and an unknown notification left out', async () => {
    editor = await Editor.open()
    editor.tell('$/whatever', { a: 1 })
    editor.tell('floorscribe/unknown', null)
    await expect(editor.ask('floorscribe/unknown', {})).rejects.toMatchObject({
      code: METHOD_NOT_FOUND,
    })
  })
})

describe('what is offered', () => {
  test('is the same for every client', async () => {
    editor = Editor.raw({ capabilities: {} })
    const poor = await editor.greet()
    editor.server.child.kill('SIGKILL')
    editor = Editor.raw({ capabilities: ABLE })
    expect(await editor.greet()).toEqual(poor)
    expect(poor.capabilities.positionEncoding).toBe('utf-16')
  })

  test('files are watched where the client can', async () => {
    editor = await Editor.open()
    const [asked] = [await editor.until('client/registerCapability', () => true)]
    expect(asked).toMatchObject({
      registrations: [
        {
          method: 'workspace/didChangeWatchedFiles',
          registerOptions: { watchers: [{ globPattern: '**/*.floor' }] },
        },
      ],
    })
  })
})

test('a whole session leaves nothing but protocol on standard output, and standard error empty', async () => {
  editor = await Editor.open()
  editor.openFile(JOB, SOUND)
  await editor.diagnostics(JOB)
  expect(await editor.close()).toBe(0)
  expect(editor.server.strays).toEqual([])
  expect(editor.server.errors).toEqual([])
})

test('over the channel of the process that started it, it says the same', async () => {
  const child = fork(join(import.meta.dirname, '../../dist/server/main.mjs'), ['--node-ipc'])
  const answer = new Promise((resolve) => child.once('message', resolve))
  child.send({ jsonrpc: '2.0', id: 1, method: 'initialize', params: { capabilities: {} } })
  const { result } = (await answer) as { result: unknown }
  const ended = once(child, 'exit')
  child.disconnect()
  expect(await ended).toEqual([0, null])
  editor = Editor.raw()
  expect(result).toEqual(await editor.greet())
})
