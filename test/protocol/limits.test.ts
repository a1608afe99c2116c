import { afterEach, describe, expect, test } from 'vitest'
import type { Diagnostic, PublishDiagnosticsParams } from 'vscode-languageserver-protocol'
import { Editor } from './editor.ts'
import { FOLDER, JOB, PRODUCT, SOUND } from './house.ts'

let editor: Editor
afterEach(() => void editor.server.child.kill('SIGKILL'))

const MOST = 1_000
const MOST_FILES = 4_000

describe('a text with more to say than anybody reads', () => {
  test('is listed up to a thousand, what weighs most first of all', async () => {
    editor = await Editor.open()
    const doors = '  door 30", 1\' 0" from left, in south, to den\n'.repeat(40)
    const rooms = Array.from({ length: 60 }, (_, i) => `room r${i}\n  north ?\n${doors}`)
    editor.openFile(JOB, `${SOUND}${rooms.join('')}${'oops\n'.repeat(30)}`)
    const said = await editor.diagnostics(JOB)
    expect(said.length).toBeLessThanOrEqual(MOST)
    expect(said.filter(({ code }: Diagnostic) => code === 'word-unknown').length).toBe(30)
  })

  test('of more than 5 MB gets one message, and the editor lives', async () => {
    editor = await Editor.open()
    editor.openFile(JOB, `${SOUND}${'# a remark as long as others are\n'.repeat(160_000)}`)
    const said = await editor.diagnostics(JOB)
    expect(said.map(({ code }) => code)).toEqual(['file-too-large'])
    const start = { line: 0, character: 0 }
    editor.change(JOB, { range: { start, end: start }, text: 'x' })
    expect((await editor.diagnostics(JOB)).map(({ code }) => code)).toEqual(['file-too-large'])
    expect(
      await editor.ask('textDocument/hover', { textDocument: { uri: JOB }, position: start }),
    ).toBeNull()
    editor.change(JOB, { text: SOUND })
    expect((await editor.diagnostics(JOB)).map(({ code }) => code)).not.toContain('file-too-large')
  })
})

describe('a folder of a hundred thousand files', () => {
  test('is looked through as far as it was asked for', async () => {
    const uris = Array.from({ length: 100_000 }, (_, i) => `memfs:/shop/${i}.floor`)
    const asked: string[] = []
    editor = await Editor.open({
      introduction: { findsFiles: true, readsFiles: true },
      answers: {
        'floorscribe/findFiles': ({ limit }: { limit: number }) => {
          expect(limit).toBe(MOST_FILES)
          return { uris }
        },
        'floorscribe/readFile': ({ uri }: { uri: string }) => {
          asked.push(uri)
          return { refused: 'Not now.' }
        },
      },
    })
    editor.openFile('memfs:/shop/larch.floor', PRODUCT)
    await editor.diagnostics('memfs:/shop/larch.floor')
    expect(new Set(asked).size).toBe(MOST_FILES)
    expect(asked.length).toBe(MOST_FILES)
  })

  test('is not looked at for a job that has its own line', async () => {
    editor = await Editor.open({ introduction: { findsFiles: true } })
    editor.openFile(JOB, SOUND)
    await editor.diagnostics(JOB)
    expect(editor.told('floorscribe/findFiles')).toEqual([])
  })
})

describe('addresses', () => {
  test.each([
    ['written by halves', 'file:///c:/floor jobs/a.floor', 'FILE:///C%3A/floor%20jobs/a.floor'],
    ['of no folder', 'untitled:Untitled-1', 'untitled:Untitled-1'],
    ['of a page', 'vscode-vfs://shop/a b/ä.floor', 'vscode-vfs://shop/a%20b/%C3%A4.floor'],
    ['with half an escape', 'file:///jobs/50%.floor', 'file:///jobs/50%25.floor'],
    ['with odd names', 'file:///__proto__/then.floor', 'file:///__proto__/then.floor'],
  ])('%s are known again, and the editor gets back its own', async (_, opened, asked) => {
    editor = await Editor.open()
    editor.openFile(opened, SOUND)
    expect(
      await editor.ask('textDocument/documentSymbol', { textDocument: { uri: asked } }),
    ).toMatchObject([{ name: 'Heron Cottage' }])
    await editor.diagnostics(asked)
    const uris = editor
      .told<PublishDiagnosticsParams>('textDocument/publishDiagnostics')
      .map(({ uri }) => uri)
    expect(new Set(uris)).toEqual(new Set([opened]))
  })

  test('two files whose addresses differ are two', async () => {
    editor = await Editor.open()
    editor.openFile(`${FOLDER}a.floor`, SOUND)
    editor.openFile(`${FOLDER}A.floor`, 'job other\n')
    expect(
      await editor.ask('textDocument/documentSymbol', {
        textDocument: { uri: `${FOLDER}A.floor` },
      }),
    ).toMatchObject([{ name: 'other' }])
  })
})
