import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import type { PublishDiagnosticsParams } from 'vscode-languageserver-protocol'
import { Editor } from './editor.ts'
import { JOB, SOUND } from './house.ts'

let editor: Editor
let other: Editor
beforeAll(async () => {
  editor = await Editor.open()
  other = await Editor.open()
})
beforeEach(async () => {
  editor.closeFile(JOB)
  await editor.diagnostics(JOB)
  editor.forget()
})
afterAll(() => {
  for (const { server } of [editor, other]) server.child.kill('SIGKILL')
})

/** What a server says that has never seen another version of a text. */
async function fresh(text: string): Promise<unknown> {
  other.openFile(JOB, text)
  const said = await other.diagnostics(JOB)
  other.closeFile(JOB)
  return said
}

const range = (line: number, character: number, toLine = line, to = character) => ({
  range: { start: { line, character }, end: { line: toLine, character: to } },
})
const END = range(9_999, 9_999)

/** A text that says all is well, but for what is put at its end. */
async function expectText(text: string): Promise<void> {
  expect(await editor.diagnostics(JOB)).toEqual(await fresh(text))
}

describe('what an edit makes of a text', () => {
  test('ranges past the end mean the end, ever so often', async () => {
    editor.openFile(JOB, SOUND)
    editor.change(JOB, { ...range(500, 7, 501, 3), text: 'oops one\n' })
    editor.change(JOB, { ...range(99_999, 0, 99_999, 99), text: 'oops two\nand\n' })
    editor.change(JOB, { ...range(6, 4_000, 6, 5_000), text: ', 5' })
    editor.change(JOB, { ...range(800, 0, 804, 0), text: 'a\nb\nc\nd\n' })
    const lines = SOUND.split('\n')
    lines[6] += ', 5'
    await expectText(`${lines.join('\n')}oops one\noops two\nand\na\nb\nc\nd\n`)
  })

  test('a range that runs past the end takes all that follows', async () => {
    editor.openFile(JOB, SOUND)
    editor.change(JOB, { ...range(2, 0, 70_000, 0), text: 'tape 1/16"\nx' })
    await expectText(`${SOUND.split('\n').slice(0, 2).join('\n')}\ntape 1/16"\nx`)
  })

  test('ranges written back to front are turned round', async () => {
    editor.openFile(JOB, SOUND)
    editor.change(JOB, {
      range: { start: { line: 2, character: 4 }, end: { line: 1, character: 0 } },
      text: 'y',
    })
    const lines = SOUND.split('\n')
    await expectText([lines[0], `y${lines[2]!.slice(4)}`, ...lines.slice(3)].join('\n'))
  })

  test('halves of a pair may be parted and joined again', async () => {
    editor.openFile(JOB, `${SOUND}\nroom \u{1F6CB}\n`)
    const line = SOUND.split('\n').length
    editor.change(JOB, { ...range(line, 6), text: 'x' })
    await editor.diagnostics(JOB)
    for (const method of [
      'hover',
      'completion',
      'definition',
      'documentHighlight',
      'signatureHelp',
    ])
      await editor.ask(`textDocument/${method}`, {
        textDocument: { uri: JOB },
        position: { line, character: 6 },
      })
    editor.change(JOB, { ...range(line, 6, line, 7), text: '' })
    await expectText(`${SOUND}\nroom \u{1F6CB}\n`)
  })

  test('ten thousand changes in one message are all made', async () => {
    editor.openFile(JOB, SOUND)
    const sign = (i: number) => ({ ...END, text: 'abcdefghi\n'[i % 10]! })
    editor.change(JOB, ...Array.from({ length: 10_000 }, (_, i) => sign(i)))
    await expectText(SOUND + 'abcdefghi\n'.repeat(1_000))
  })

  test('a whole text in place of another', async () => {
    editor.openFile(JOB, SOUND)
    editor.change(JOB, { text: 'job other\nroom\n' })
    await expectText('job other\nroom\n')
  })

  test('line ends of every system', async () => {
    const text = SOUND.replaceAll('\n', '\r\n')
    editor.openFile(JOB, text)
    editor.change(JOB, { ...range(1, 4, 1, 5), text: '\r' })
    editor.change(JOB, { ...range(0, 12, 0, 99), text: '\rx' })
    await editor.diagnostics(JOB)
    editor.change(JOB, { text })
    await expectText(text)
  })
})

describe('versions', () => {
  test.each([
    ['repeated', [2, 2, 2]],
    ['skipped', [5, 90, 1_000]],
    ['backwards', [9, 3, -4]],
    ['none', [null, undefined, null]],
  ])('%s: every change is made in its order', async (_, versions) => {
    editor.openFile(JOB, SOUND)
    for (const [i, version] of versions.entries())
      editor.tell('textDocument/didChange', {
        textDocument: { uri: JOB, version },
        contentChanges: [{ ...END, text: `x${i}\n` }],
      })
    await expectText(`${SOUND}x0\nx1\nx2\n`)
  })

  test('what is said is said of the newest version, and of none that was passed over in between', async () => {
    editor.openFile(JOB, SOUND)
    for (let i = 0; i < 200; i++) editor.change(JOB, { ...END, text: 'x' })
    await editor.diagnostics(JOB)
    const said = editor
      .told<PublishDiagnosticsParams>('textDocument/publishDiagnostics')
      .map(({ version }) => version!)
    expect(said.at(-1)).toBe(201)
    expect(said.toSorted((a, b) => a - b)).toEqual(said)
    expect(said.length).toBeLessThan(100)
  })
})

describe('files that are not open', () => {
  test('a change before the opening and one after the closing have no effect', async () => {
    editor.change(JOB, { ...range(0, 0), text: 'x' })
    editor.openFile(JOB, SOUND)
    await expectText(SOUND)
    editor.closeFile(JOB)
    editor.change(JOB, { ...range(0, 0), text: 'x' })
    await expect(
      editor.ask('textDocument/codeLens', { textDocument: { uri: JOB } }),
    ).resolves.toEqual([])
    const last = await editor.until<PublishDiagnosticsParams>(
      'textDocument/publishDiagnostics',
      ({ diagnostics }) => diagnostics.length === 0,
    )
    expect(last.uri).toBe(JOB)
    editor.openFile(JOB, SOUND)
    await expectText(SOUND)
  })

  test('a file opened twice has its second text', async () => {
    editor.openFile(JOB, 'job one\nroom\n')
    editor.openFile(JOB, SOUND)
    await expectText(SOUND)
  })

  test('a file closed twice is closed', async () => {
    editor.openFile(JOB, SOUND)
    editor.closeFile(JOB)
    editor.closeFile(JOB)
    editor.openFile(JOB, SOUND)
    await expectText(SOUND)
  })
})
