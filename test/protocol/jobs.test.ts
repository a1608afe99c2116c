import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { afterAll, afterEach, beforeEach, describe, expect, test } from 'vitest'
import type {
  Diagnostic,
  PublishDiagnosticsParams,
  WorkspaceEdit,
} from 'vscode-languageserver-protocol'
import { ABLE, Editor } from './editor.ts'
import { PRODUCT, SOUND } from './house.ts'

const PUBLISHED = 'textDocument/publishDiagnostics'
const PART = SOUND.replace(PRODUCT, 'include shop/larch.floor\n')

let folder: string
let editor: Editor
/** Of folders in which nothing was looked for: it may be used again. */
let empty: Editor | null = null
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'floor jobs '))
})
afterEach(async () => {
  if (editor === empty) await editor.closeAll()
  else editor.server.child.kill('SIGKILL')
  rmSync(folder, { recursive: true, force: true })
})
afterAll(() => void empty?.server.child.kill('SIGKILL'))

function put(files: Readonly<Record<string, string>>): void {
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true })
    writeFileSync(join(folder, name), text)
  }
}

function uri(name: string): string {
  return pathToFileURL(join(folder, name)).href
}

/** An editor with the folder open, in which the files found are those told. */
async function open(found: readonly string[] = [], pauseMs = 0): Promise<void> {
  const start = () =>
    Editor.open({
      introduction: { findsFiles: true, showsStatus: true, pauseMs },
      answers: { 'floorscribe/findFiles': () => ({ uris: found.map(uri) }) },
    })
  if (found.length > 0 || pauseMs > 0) editor = await start()
  else {
    empty ??= await start()
    editor = empty
  }
}

/** What is more than a hint. */
const pressing = (said: readonly Diagnostic[]) =>
  said.filter(({ severity }) => severity !== 4).map(({ code }) => code)

async function codes(name: string): Promise<readonly unknown[]> {
  return pressing(await editor.diagnostics(uri(name)))
}

/** Codes last told of a file, which need not be open. */
function toldOf(name: string): readonly unknown[] {
  const all = editor.told<PublishDiagnosticsParams>(PUBLISHED)
  const last = all.findLast((one) => one.uri === uri(name))
  return pressing(last?.diagnostics ?? [])
}

function watched(...changes: readonly (readonly [name: string, type: 1 | 2 | 3])[]): void {
  editor.tell('workspace/didChangeWatchedFiles', {
    changes: changes.map(([name, type]) => ({ uri: uri(name), type })),
  })
}

describe('files that a job includes', () => {
  test('are read from the disk, and what is wrong in them is said there', async () => {
    put({ 'shop/larch.floor': `${PRODUCT}oops\n` })
    await open()
    editor.openFile(uri('job.floor'), PART)
    expect(await codes('job.floor')).not.toContain('include-not-read')
    expect(toldOf('shop/larch.floor')).toEqual(['word-unknown'])
  })

  test('unsaved text wins over the disk, and the disk comes back with the closing', async () => {
    put({ 'shop/larch.floor': PRODUCT })
    await open()
    editor.openFile(uri('job.floor'), PART)
    expect(await codes('job.floor')).toEqual([])
    editor.openFile(uri('shop/larch.floor'), 'product oak\n')
    expect(await codes('job.floor')).toContain('name-unknown')
    editor.closeFile(uri('shop/larch.floor'))
    expect(await codes('job.floor')).toEqual([])
  })

  test.each([
    ['is missing', () => {}],
    ['is a folder', () => mkdirSync(join(folder, 'shop/larch.floor'), { recursive: true })],
    [
      'is not UTF-8',
      () => {
        put({ 'shop/larch.floor': '' })
        writeFileSync(join(folder, 'shop/larch.floor'), Uint8Array.of(0x66, 0xff, 0x66))
      },
    ],
    [
      'is a link that leads out',
      () => {
        mkdirSync(join(folder, 'shop'))
        symlinkSync('/etc/hostname', join(folder, 'shop/larch.floor'))
      },
    ],
  ])('one that %s is said on its line', async (_, arrange) => {
    arrange()
    await open()
    editor.openFile(uri('job.floor'), PART)
    expect(await codes('job.floor')).toContain('include-not-read')
  })

  test('and that come later are read then', async () => {
    await open()
    editor.openFile(uri('job.floor'), PART)
    expect(await codes('job.floor')).toContain('include-not-read')
    put({ 'shop/larch.floor': PRODUCT })
    watched(['shop/larch.floor', 1])
    await editor.ask('floorscribe/drawing', { uri: uri('job.floor') })
    expect(await codes('job.floor')).toEqual([])
    rmSync(join(folder, 'shop/larch.floor'))
    watched(['shop/larch.floor', 3])
    expect(await codes('job.floor')).toContain('include-not-read')
  })
})

describe('a checkout that switches a thousand files', () => {
  test('is counted once', async () => {
    put({ 'shop/larch.floor': PRODUCT })
    await open([], 400)
    editor.openFile(uri('job.floor'), PART)
    await codes('job.floor')
    editor.forget()
    put({ 'shop/larch.floor': PRODUCT.replace('10 planks', '5 planks') })
    for (let part = 0; part < 4; part++)
      watched(
        ['shop/larch.floor', 2],
        ...Array.from({ length: 250 }, (_, i) => [`jobs/${part}-${i}.floor`, 1] as const),
      )
    const hints = await editor.ask('textDocument/inlayHint', {
      textDocument: { uri: uri('job.floor') },
      range: { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } },
    })
    expect(JSON.stringify(hints)).toContain('boxes')
    const counted = editor
      .told<{ state: string }>('floorscribe/status')
      .filter(({ state }) => state === 'counted')
    expect(counted.length).toBe(1)
  })
})

describe('a file without a job line', () => {
  const ROOM = 'room porch\n  north 4\' 0"\n'

  test('that nobody includes is looked at by itself', async () => {
    await open()
    editor.openFile(uri('part.floor'), ROOM)
    expect(await codes('part.floor')).toContain('walls-do-not-come-round')
  })

  test('is checked under the job that includes it, found in the folder', async () => {
    put({ 'shop/larch.floor': 'product oak\n', 'job.floor': PART, 'other.floor': 'job other\n' })
    await open(['shop/larch.floor', 'job.floor', 'other.floor'])
    editor.openFile(uri('shop/larch.floor'), 'product oak\n')
    await codes('shop/larch.floor')
    expect(toldOf('job.floor')).toContain('name-unknown')
  })

  test('is checked under a job of a folder that comes later', async () => {
    put({ 'job.floor': PART })
    const found: string[] = []
    editor = await Editor.open({
      introduction: { findsFiles: true },
      answers: { 'floorscribe/findFiles': () => ({ uris: found.map(uri) }) },
    })
    editor.openFile(uri('shop/larch.floor'), PRODUCT)
    await codes('shop/larch.floor')
    expect(toldOf('job.floor')).toEqual([])
    put({ 'job.floor': `${PART}oops\n` })
    found.push('job.floor')
    editor.tell('workspace/didChangeWorkspaceFolders', { event: { added: [], removed: [] } })
    await editor.until<PublishDiagnosticsParams>(PUBLISHED, (one) => one.uri === uri('job.floor'))
    expect(toldOf('job.floor')).toEqual(['word-unknown'])
  })

  test('is checked under each of several jobs; what they say alike is said once', async () => {
    put({ 'a.floor': PART, 'b.floor': PART })
    await open(['a.floor', 'b.floor', 'shop/larch.floor'])
    editor.openFile(uri('shop/larch.floor'), `${PRODUCT}oops\n`)
    const said = await codes('shop/larch.floor')
    await editor.until<PublishDiagnosticsParams>(PUBLISHED, (one) => one.uri === uri('a.floor'))
    await editor.until<PublishDiagnosticsParams>(PUBLISHED, (one) => one.uri === uri('b.floor'))
    expect(said).toEqual(['word-unknown'])
  })

  test('opened when its job is done shows how that stands', async () => {
    put({ 'shop/larch.floor': PRODUCT })
    await open()
    editor.openFile(uri('job.floor'), PART)
    await codes('job.floor')
    editor.openFile(uri('shop/larch.floor'), PRODUCT)
    const { text } = await editor.until<{ uri: string; text: string }>(
      'floorscribe/status',
      (one) => one.uri === uri('shop/larch.floor') && one.text.includes('boxes'),
    )
    expect(text).toMatch(/^larch \d+ boxes/)
  })

  test('goes over to the job that begins to include it, and back', async () => {
    await open()
    editor.openFile(uri('job.floor'), PART.replace('include shop/larch.floor', ''))
    editor.openFile(uri('shop/larch.floor'), PRODUCT)
    expect(await codes('job.floor')).toContain('name-unknown')
    const line = PART.split('\n').indexOf('include shop/larch.floor')
    const start = { line, character: 0 }
    editor.change(uri('job.floor'), {
      range: { start, end: start },
      text: 'include shop/larch.floor',
    })
    expect(await codes('job.floor')).toEqual([])
    const lenses = await editor.ask('textDocument/codeLens', {
      textDocument: { uri: uri('shop/larch.floor') },
    })
    expect(JSON.stringify(lenses)).toContain('read by 1 job')
    editor.change(uri('job.floor'), { range: { start, end: { line, character: 24 } }, text: '' })
    expect(await codes('job.floor')).toContain('name-unknown')
  })

  test('that a job names and cannot take in is looked at by itself, and answers wait for that', async () => {
    await open()
    editor.openFile(uri('job.floor'), 'job one\ninclude part.floor\ninclude part.floor\noops\n')
    const chain = Array.from({ length: 102 }, (_, i) => `deep${i}.floor`)
    for (const [i, name] of chain.entries())
      editor.openFile(uri(name), i < 101 ? `include ${chain[i + 1]}\n` : 'oops\n')
    editor.openFile(uri('root.floor'), `job two\ninclude ${chain[0]}\n`)
    expect(await codes(chain[101]!)).toEqual(['word-unknown'])
    const last = { textDocument: { uri: uri(chain[101]!) } }
    expect(await editor.ask('textDocument/foldingRange', last)).toEqual([])
    expect(await codes(chain[100]!)).not.toContain('include-circle')
  })

  test('becomes a job with its job line', async () => {
    put({ 'shop/larch.floor': PRODUCT })
    await open()
    editor.openFile(uri('job.floor'), PART)
    editor.openFile(uri('shop/larch.floor'), PRODUCT)
    await codes('job.floor')
    const start = { line: 0, character: 0 }
    editor.change(uri('shop/larch.floor'), { range: { start, end: start }, text: 'job mine\n' })
    expect(await codes('job.floor')).toContain('include-is-a-job')
    expect(await codes('shop/larch.floor')).not.toContain('name-unknown')
  })
})

describe('a rename', () => {
  const NEW = { newName: 'river larch' }

  test('of what a shared file tells goes through every job that includes it', async () => {
    put({ 'a.floor': PART, 'b.floor': PART, 'shop/larch.floor': PRODUCT })
    await open(['a.floor', 'b.floor', 'shop/larch.floor'])
    editor.openFile(uri('a.floor'), PART)
    const line = PART.split('\n').findIndex((one) => one.startsWith('  lay'))
    const at = { textDocument: { uri: uri('a.floor') }, position: { line, character: 16 } }
    const edit = await editor.ask<WorkspaceEdit>('textDocument/rename', { ...at, ...NEW })
    const edits = Object.fromEntries(
      Object.entries(edit.changes ?? {}).map(([key, of]) => [key, of.map((one) => one.newText)]),
    )
    expect(edits).toEqual({
      [uri('a.floor')]: ['river larch'],
      [uri('b.floor')]: ['river larch'],
      [uri('shop/larch.floor')]: ['river larch'],
    })
    const listed = await editor.ask<{ places: unknown[] }>('floorscribe/renamePlaces', {
      uri: uri('a.floor'),
      position: at.position,
    })
    expect(listed.places.length).toBe(3)
  })

  test('is refused in whole sentences, and nothing is changed', async () => {
    await open()
    editor.openFile(uri('job.floor'), SOUND)
    const at = { textDocument: { uri: uri('job.floor') }, position: { line: 0, character: 0 } }
    for (const method of ['prepareRename', 'rename'])
      await expect(editor.ask(`textDocument/${method}`, { ...at, ...NEW })).rejects.toThrow(
        'Nothing stands here that has a name to be changed.',
      )
  })
})

describe('names of the folders', () => {
  test('are found in jobs that are not open, and follow the disk', async () => {
    put({ 'a.floor': PART, 'shop/larch.floor': PRODUCT })
    await open(['a.floor', 'shop/larch.floor'])
    const names = async (query: string) =>
      (await editor.ask<{ name: string }[]>('workspace/symbol', { query })).map(({ name }) => name)
    expect(await names('de')).toEqual(['den'])
    put({ 'a.floor': PART.replaceAll('den', 'denim room') })
    watched(['a.floor', 2])
    expect(await names('de')).toEqual(['denim room'])
    rmSync(join(folder, 'a.floor'))
    watched(['a.floor', 3])
    expect(await names('de')).toEqual([])
  })
})

describe('where only the client can read', () => {
  const WEB = 'vscode-vfs://shop/jobs/'

  async function openVirtual(answer: (params: { uri: string; limit: number }) => unknown) {
    editor = await Editor.open({
      capabilities: ABLE,
      introduction: { readsFiles: true },
      answers: { 'floorscribe/readFile': answer },
    })
    editor.openFile(`${WEB}job.floor`, PART)
    return pressing(await editor.diagnostics(`${WEB}job.floor`))
  }

  test('includes are asked of it', async () => {
    const said = await openVirtual(({ uri, limit }) => {
      expect(uri).toBe(`${WEB}shop/larch.floor`)
      expect(limit).toBe(5_000_000)
      return { text: Buffer.from(PRODUCT).toString('base64') }
    })
    expect(said).toEqual([])
  })

  test.each([
    ['refuses', { refused: 'There is no\nsuch file.' }],
    ['answers with nonsense', { text: '!!!' }],
    ['answers with nothing', null],
    ['sends what is no text', { text: Buffer.from([0xff, 0xfe, 0x00]).toString('base64') }],
  ])('one that %s: the include is said not to be read', async (_, answer) => {
    expect(await openVirtual(() => answer)).toContain('include-not-read')
  })
})

describe('files at which the server fell twice', () => {
  test('are only read: their own lines are looked at, and no job waits for them', async () => {
    put({ 'shop/larch.floor': PRODUCT })
    editor = await Editor.open({ introduction: { onlyRead: [uri('shop/larch.floor')] } })
    editor.openFile(uri('shop/larch.floor'), 'oops\n')
    await editor.until<PublishDiagnosticsParams>(PUBLISHED, (one) => one.diagnostics.length === 1)
    expect(toldOf('shop/larch.floor')).toEqual(['word-unknown'])
    expect(
      await editor.ask('textDocument/codeLens', {
        textDocument: { uri: uri('shop/larch.floor') },
      }),
    ).toEqual([])
    editor.openFile(uri('job.floor'), PART)
    expect(await codes('job.floor')).toContain('include-not-read')
  })

  test('a job among them leaves the others alone', async () => {
    editor = await Editor.open({ introduction: { onlyRead: [uri('job.floor')] } })
    editor.openFile(uri('job.floor'), SOUND)
    editor.openFile(uri('other.floor'), SOUND)
    expect(await codes('other.floor')).toEqual([])
    expect(toldOf('job.floor')).toEqual([])
  })
})
