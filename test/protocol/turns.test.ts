import { setTimeout as sleep } from 'node:timers/promises'
import { afterEach, describe, expect, test } from 'vitest'
import type { InlayHint } from 'vscode-languageserver-protocol'
import { manyRooms } from '../bench/many-rooms.ts'
import { Editor } from './editor.ts'
import { JOB, SOUND, uriOf } from './house.ts'

let editor: Editor
afterEach(() => void editor.server.child.kill('SIGKILL'))

const REQUEST_CANCELLED = -32800
const CONTENT_MODIFIED = -32801
const INTERNAL_ERROR = -32603
const ALL = { start: { line: 0, character: 0 }, end: { line: 99_999, character: 0 } }

/** A street whose floors take a while to lay. */
function openStreet(): string {
  const { files, root } = manyRooms(500)
  for (const [name, text] of files) if (name !== root) editor.openFile(uriOf(name), text)
  editor.openFile(uriOf(root), files.get(root)!)
  return uriOf(root)
}

function hintsIn(uri: string) {
  return editor.request<InlayHint[]>('textDocument/inlayHint', {
    textDocument: { uri },
    range: ALL,
  })
}

describe('while floors are being laid', () => {
  test('other questions are answered, and the drawing shows the rooms', async () => {
    editor = await Editor.open({ introduction: { showsStatus: true } })
    const uri = openStreet()
    const order: string[] = []
    const hints = hintsIn(uri).answer.then(() => order.push('hints'))
    await editor.ask('textDocument/hover', {
      textDocument: { uri },
      position: { line: 8, character: 6 },
    })
    order.push('hover')
    await editor.ask('textDocument/documentSymbol', { textDocument: { uri } })
    order.push('symbols')
    await hints
    expect(order).toEqual(['hover', 'symbols', 'hints'])
  })

  test('an edit drops what was under way, and the last version is always finished', async () => {
    editor = await Editor.open({ introduction: { showsStatus: true } })
    const uri = openStreet()
    await hintsIn(uri).answer
    editor.forget()
    for (let i = 0; i < 5; i++) {
      const start = { line: 2, character: 0 }
      editor.change(uri, { range: { start, end: start }, text: '# a remark\n' })
      await sleep(5)
    }
    await hintsIn(uri).answer
    const counted = editor
      .told<{ uri: string; state: string }>('floorscribe/status')
      .filter((one) => one.uri === uri && one.state !== 'counting')
    expect(counted.length).toBeGreaterThan(0)
    const last = editor.told<{ uri: string; state: string }>('floorscribe/status').at(-1)
    expect(last).toEqual(counted.at(-1))
  })

  test('counting waits for the keys to rest', async () => {
    editor = await Editor.open({ introduction: { showsStatus: true, pauseMs: 300 } })
    editor.openFile(JOB, SOUND)
    await hintsIn(JOB).answer
    editor.forget()
    const end = { line: 999, character: 0 }
    for (let i = 0; i < 8; i++) {
      editor.change(JOB, { range: { start: end, end }, text: '# a remark\n' })
      await sleep(40)
    }
    await hintsIn(JOB).answer
    const states = editor.told<{ state: string }>('floorscribe/status').map(({ state }) => state)
    expect(states.filter((state) => state === 'counted').length).toBe(1)
    expect(states.at(-1)).toBe('counted')
  })
})

describe('a request that is called off', () => {
  test('is refused, and the next answer is right', async () => {
    editor = await Editor.open()
    const uri = openStreet()
    const { id, answer } = hintsIn(uri)
    editor.tell('$/cancelRequest', { id })
    await expect(answer).rejects.toMatchObject({ code: REQUEST_CANCELLED })
    expect((await hintsIn(uri).answer).length).toBeGreaterThan(20)
  })

  test('at any moment leaves the others alone', async () => {
    editor = await Editor.open()
    editor.openFile(JOB, SOUND)
    const right = await hintsIn(JOB).answer
    for (let i = 0; i < 40; i++) {
      const end = { line: 999, character: 0 }
      editor.change(JOB, { range: { start: end, end }, text: '#\n' })
      const called = hintsIn(JOB)
      const kept = hintsIn(JOB)
      const settled = called.answer.catch(({ code }) => code)
      await sleep(i % 8)
      editor.tell('$/cancelRequest', { id: called.id })
      expect([REQUEST_CANCELLED, right]).toContainEqual(await settled)
      expect(await kept.answer).toEqual(right)
    }
  })
})

test('an answer about a text that has moved on is not given', async () => {
  editor = await Editor.open({ introduction: { pauseMs: 200 } })
  editor.openFile(JOB, SOUND)
  await hintsIn(JOB).answer
  const end = { line: 999, character: 0 }
  editor.change(JOB, { range: { start: end, end }, text: '# one\n' })
  const early = hintsIn(JOB).answer.catch(({ code }) => code)
  editor.change(JOB, { range: { start: end, end }, text: '# two\n' })
  expect(await early).toBe(CONTENT_MODIFIED)
  expect((await hintsIn(JOB).answer).length).toBeGreaterThan(0)
})

describe('questions that cannot be asked', () => {
  const PLACES = [
    { line: -1, character: -7 },
    { line: 1e9, character: 1e9 },
    { line: 3, character: 2.5 },
    { line: null, character: null },
    {},
    null,
    'here',
  ]
  const METHODS = [
    'hover',
    'completion',
    'signatureHelp',
    'definition',
    'references',
    'documentHighlight',
    'prepareRename',
    'rename',
    'selectionRange',
    'inlayHint',
    'codeAction',
    'rangeFormatting',
    'onTypeFormatting',
    'semanticTokens/range',
    'semanticTokens/full/delta',
  ]

  test('are answered or refused for themselves, and the server lives on', async () => {
    editor = await Editor.open()
    editor.openFile(JOB, SOUND)
    const right = await hintsIn(JOB).answer
    for (const method of METHODS)
      for (const position of PLACES) {
        const range = { start: position, end: position }
        await editor
          .ask(`textDocument/${method}`, { textDocument: { uri: JOB }, position, range })
          .catch(({ code }) => expect([INTERNAL_ERROR, -32803, -32602]).toContain(code))
      }
    for (const method of [
      'placeOf',
      'shapesAt',
      'followPreview',
      'drawing',
      'readings',
      'renamePlaces',
    ])
      for (const params of [{}, { uri: 5 }, { uri: JOB, position: 'x', id: 7 }, null])
        await editor
          .ask(`floorscribe/${method}`, params)
          .catch(({ code }) => expect(code).toBeLessThan(0))
    expect(await hintsIn(JOB).answer).toEqual(right)
    expect(editor.server.errors).toEqual([])
  })
})
