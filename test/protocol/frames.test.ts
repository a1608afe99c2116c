import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { Editor } from './editor.ts'
import { frameOf } from './frames.ts'

let editor: Editor
const started: Editor[] = []
afterAll(() => {
  for (const { server } of started) server.child.kill('SIGKILL')
})

async function start(): Promise<void> {
  editor = await Editor.open()
  started.push(editor)
}

const PARSE_ERROR = -32700
const QUESTION = { textDocument: { uri: 'file:///none.floor' } }

/** What the server answers with no id: it could not read whose question it was. */
function answerToNobody(): Promise<unknown> {
  return new Promise((resolve) =>
    editor.server.onFrame((frame) => (frame.id === null ? resolve(frame.error) : undefined)),
  )
}

describe('a body that is no message', () => {
  beforeAll(start)

  test.each(['{"a', '', '5', 'null', '"text"', '\u0000', '{"jsonrpc":"2.0",}'])(
    '%j is refused, and the next message is read',
    async (body) => {
      const refused = answerToNobody()
      editor.server.write(`Content-Length: ${Buffer.byteLength(body)}\r\n\r\n${body}`)
      expect(await refused).toMatchObject({ code: PARSE_ERROR })
      expect(await editor.ask('textDocument/codeLens', QUESTION)).toEqual([])
    },
  )

  test.each([
    ['an empty list', []],
    ['nothing but braces', {}],
    ['an id of no kind', { id: {}, method: 'x' }],
    ['a method that is a number', { method: 5 }],
    ['an answer to no question', { id: 99, result: null }],
    ['an error to no question', { id: 99, error: { code: 1, message: 'x' } }],
    ['a cancel of nothing', { method: '$/cancelRequest', params: null }],
    ['a cancel of an unknown id', { method: '$/cancelRequest', params: { id: 'x' } }],
    ['changes that are none', { method: 'textDocument/didChange', params: null }],
    ['an opening of nothing', { method: 'textDocument/didOpen', params: { textDocument: 3 } }],
  ])('%s is passed over', async (_, body) => {
    editor.server.write(frameOf({ jsonrpc: '2.0', ...body }))
    expect(await editor.ask('textDocument/codeLens', QUESTION)).toEqual([])
  })
})

describe('a header that cannot be read', () => {
  test.each([
    'Content-Length: -5\r\n\r\n',
    'Content-Length: abc\r\n\r\n',
    'Content-Length: 1e3\r\n\r\n',
    'Content-Length: 99999999999999\r\n\r\n',
    'Length: 5\r\n\r\n',
    'GET / HTTP/1.1\r\n\r\n',
    'x'.repeat(5_000),
  ])('%j ends the server, for nothing behind it can be trusted', async (header) => {
    await start()
    editor.server.write(header)
    expect(await editor.server.ended).toBe(1)
  })
})

describe('whole messages', () => {
  test('are read from single bytes and from many at once', async () => {
    await start()
    const question = (id: number) =>
      frameOf({ jsonrpc: '2.0', id, method: 'textDocument/codeLens', params: QUESTION })
    const answers = new Map<unknown, unknown>()
    editor.server.onFrame(({ id, result }) => answers.set(id, result))
    for (const byte of Buffer.from(question(101))) editor.server.write(Uint8Array.of(byte))
    editor.server.write(question(102) + question(103))
    await editor.ask('textDocument/codeLens', QUESTION)
    expect([101, 102, 103].map((id) => answers.get(id))).toEqual([[], [], []])
  })

  test('may name their kind and put the length second', async () => {
    await start()
    const body = JSON.stringify({
      jsonrpc: '2.0',
      id: 101,
      method: 'textDocument/codeLens',
      params: QUESTION,
    })
    const kind = 'Content-Type: application/vscode-jsonrpc; charset=utf-8'
    const answered = new Promise((resolve) =>
      editor.server.onFrame(({ id, result }) => (id === 101 ? resolve(result) : undefined)),
    )
    editor.server.write(`${kind}\r\ncontent-length: ${body.length}\r\n\r\n${body}`)
    expect(await answered).toEqual([])
  })
})

test('a message cut off by the end of the stream is left out', async () => {
  await start()
  editor.server.write('Content-Length: 100\r\n\r\n{"jsonrpc":')
  editor.server.child.stdin?.end()
  expect(await editor.server.ended).toBe(1)
  expect(editor.server.strays).toEqual([])
})
