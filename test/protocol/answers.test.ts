import { afterAll, describe, expect, test } from 'vitest'
import type {
  CodeAction,
  CodeLens,
  CompletionList,
  DefinitionLink,
  DocumentHighlight,
  FoldingRange,
  Hover,
  InlayHint,
  Location,
  SemanticTokens,
  SignatureHelp,
  TextEdit,
} from 'vscode-languageserver-protocol'
import { TextDocument } from 'vscode-languageserver-textdocument'
import { ABLE } from './editor.ts'
import { endShared, type Opened, opened, PRODUCT, SOUND } from './house.ts'

let house: Opened
afterAll(endShared)

const EVERYTHING = { start: { line: 0, character: 0 }, end: { line: 9_999, character: 0 } }

/** A question about the cursor of marked texts. */
async function ask<T>(
  sources: Parameters<typeof opened>[0],
  method: string,
  more: object = {},
  options: Parameters<typeof opened>[1] = {},
): Promise<T> {
  house = await opened(sources, options)
  await house.editor.diagnostics(house.uri)
  return await house.editor.ask<T>(`textDocument/${method}`, { ...house.at, ...more })
}

function replaced(text: string, edits: readonly TextEdit[]): string {
  return TextDocument.applyEdits(TextDocument.create('', '', 0, text), [...edits])
}

describe('hover', () => {
  const ROOM = SOUND.replace('den\n', '‹d|en›\n').replace('d|en', '‹|›den')

  test('explains a number with links to the readings', async () => {
    const hover = await ask<Hover>(ROOM, 'hover')
    expect(hover.range).toEqual(house.ranges[0])
    expect(hover.contents).toMatchObject({ kind: 'markdown' })
    const { value } = hover.contents as { value: string }
    expect(value).toContain('**floor area of den: 120.0 sq ft**'.replace(/[:.]/g, '\\$&'))
    expect(value).toContain(`](${house.uri}#L`)
  })

  test('is plain text for a client without Markdown', async () => {
    const hover = await ask<Hover>(ROOM, 'hover', {}, { capabilities: {} })
    expect(hover.contents).toMatchObject({ kind: 'plaintext' })
    const { value } = hover.contents as { value: string }
    expect(value).toContain('floor area of den: 120.0 sq ft')
    expect(value).not.toMatch(/[\\*[\]]\(/)
  })

  test('has nothing to say between the blocks', async () => {
    expect(await ask(SOUND.replace('\n\nfloor', '\n‹|›\nfloor'), 'hover')).toBeNull()
  })
})

describe('completion', () => {
  const NEXT = SOUND.replace('  west        10\' 0"\n', '  ‹we|›')

  test('offers the likely wall first, as a snippet with the reading to come', async () => {
    const list = await ask<CompletionList>(NEXT.replace('‹we|›', 'we‹|›'), 'completion')
    const [first] = list.items.toSorted((a, b) => (a.sortText! < b.sortText! ? -1 : 1))
    expect(first).toMatchObject({ label: 'west', preselect: true })
  })

  test('gives a client without snippets no snippets', async () => {
    const source = SOUND.replace('room den', 'ro‹|›\nroom den')
    const able = await ask<CompletionList>(source, 'completion')
    const poor = await ask<CompletionList>(source, 'completion', {}, { capabilities: {} })
    expect(able.items.some(({ insertTextFormat }) => insertTextFormat === 2)).toBe(true)
    expect(poor.items.some(({ insertTextFormat }) => insertTextFormat === 2)).toBe(false)
    expect(poor.items.map(({ label }) => label)).toEqual(able.items.map(({ label }) => label))
    expect(JSON.stringify(poor)).not.toContain('${')
  })

  test('offers the parts that an include may name, and no jobs', async () => {
    const list = await ask<CompletionList>(
      {
        'job.floor': SOUND.replace(PRODUCT, 'include ‹|›\n'),
        'shop/larch.floor': PRODUCT,
        'other.floor': 'job other\n',
      },
      'completion',
    )
    expect(list.items.map(({ label }) => label)).toEqual(['shop/larch.floor'])
  })
})

test('help for a line marks the part that the cursor is in', async () => {
  const source = SOUND.replace(
    '  east        10\' 0"\n',
    '  east        10\' 0"\n    door      32", to ‹|›\n',
  )
  const help = await ask<SignatureHelp>(source, 'signatureHelp')
  const [signature] = help.signatures
  const [start, end] = signature!.parameters![help.activeParameter!]!.label as [number, number]
  expect(signature!.label.slice(start, end)).toBe('to ROOM')
})

describe('names', () => {
  const FILES = {
    'job.floor': SOUND.replace(PRODUCT, 'include ‹larch.floor›\n')
      .replace('room den', 'room ‹den›')
      .replace('rooms       den', 'rooms       ‹d‹|›en›'),
    'larch.floor': PRODUCT,
  }

  test('definition leads to where a thing is told', async () => {
    const links = await ask<DefinitionLink[]>(FILES, 'definition')
    expect(links).toEqual([
      {
        originSelectionRange: house.ranges[2],
        targetUri: house.uri,
        targetRange: house.ranges[1],
        targetSelectionRange: house.ranges[1],
      },
    ])
  })

  test('definition is a place for a client without links, across files too', async () => {
    const files = {
      'job.floor': FILES['job.floor']
        .replace('‹|›', '')
        .replace('lay         larch', 'lay         la‹|›rch'),
      'larch.floor': PRODUCT.replace('larch', '‹larch›'),
    }
    const places = await ask<Location[]>(files, 'definition', {}, { capabilities: {} })
    expect(places).toEqual([
      { uri: house.uriOf('larch.floor'), range: house.rangesIn('larch.floor')[0] },
    ])
  })

  test('references and highlights are every place of the name', async () => {
    const context = { includeDeclaration: true }
    const found = await ask<Location[]>(FILES, 'references', { context })
    expect(found.map(({ range }) => range)).toEqual([house.ranges[1], house.ranges[2]])
    const used = await house.editor.ask<Location[]>('textDocument/references', {
      ...house.at,
      context: { includeDeclaration: false },
    })
    expect(used.map(({ range }) => range)).toEqual([house.ranges[2]])
    const marks = await house.editor.ask<DocumentHighlight[]>(
      'textDocument/documentHighlight',
      house.at,
    )
    expect(marks.map(({ range, kind }) => [range, kind])).toEqual([
      [house.ranges[1], 3],
      [house.ranges[2], 2],
    ])
  })

  test('a rename gives its versions to a client that takes them', async () => {
    const capabilities = { ...ABLE, workspace: { workspaceEdit: { documentChanges: true } } }
    const edit = await ask(FILES, 'rename', { newName: 'snug' }, { capabilities })
    expect(edit).toEqual({
      documentChanges: [
        {
          textDocument: { uri: house.uri, version: 1 },
          edits: [house.ranges[1], house.ranges[2]].map((range) => ({ range, newText: 'snug' })),
        },
      ],
    })
    const { range } = await house.editor.ask<{ range: unknown }>(
      'textDocument/prepareRename',
      house.at,
    )
    expect(range).toEqual(house.ranges[2])
  })
})

describe('what may be done about a message', () => {
  test('a sure repair is preferred, and belongs to its message', async () => {
    const source = SOUND.replace('lay         larch', 'lay         ‹lar‹|›h›')
    house = await opened(source)
    const diagnostics = await house.editor.diagnostics(house.uri)
    const [range] = house.ranges
    const unknown = diagnostics.filter(({ code }) => code === 'name-unknown')
    expect(unknown.map((one) => one.range)).toEqual([range])
    const actions = await house.editor.ask<CodeAction[]>('textDocument/codeAction', {
      textDocument: { uri: house.uri },
      range,
      context: { diagnostics },
    })
    const [first] = actions
    expect(first).toMatchObject({ kind: 'quickfix', isPreferred: true, diagnostics: unknown })
    expect(replaced(house.textOf('job.floor'), first!.edit!.changes![house.uri]!)).toBe(SOUND)
    expect(
      await house.editor.ask('textDocument/codeAction', {
        textDocument: { uri: house.uri },
        range,
        context: { diagnostics, only: ['refactor'] },
      }),
    ).toEqual([])
  })
})

describe('formatting', () => {
  const UNTIDY = SOUND.replace('  north       12', '\tNorth 12').replace('  east       ', '  east')

  test('of a file changes only what is not in form', async () => {
    const edits = await ask<TextEdit[]>(UNTIDY, 'formatting', { options: {} })
    expect(replaced(UNTIDY, edits)).toBe(SOUND)
    expect(edits.length).toBe(2)
  })

  test('of a stretch leaves the other lines', async () => {
    const line = UNTIDY.split('\n').findIndex((one) => one.includes('North'))
    const range = { start: { line, character: 0 }, end: { line: line + 1, character: 0 } }
    const edits = await ask<TextEdit[]>(UNTIDY, 'rangeFormatting', { range, options: {} })
    expect(edits.every((edit) => edit.range.start.line === line)).toBe(true)
    expect(edits.length).toBe(1)
  })

  test('at a line end never touches the line that is being typed', async () => {
    const source = SOUND.replace('  north       12\' 0"\n', '\tNorth 12\' 0"\n\tEast‹|› 10\n')
    const edits = await ask<TextEdit[]>(source, 'onTypeFormatting', { ch: '\n', options: {} })
    const { line } = house.at.position
    expect(edits.map((edit) => edit.range.start.line)).toEqual([line - 1])
  })
})

describe('reading', () => {
  test('hints stand at line ends', async () => {
    const hints = await ask<InlayHint[]>(
      SOUND.replace('room den\n', 'room den‹›\n').replace('floor all\n', 'floor all‹›\n'),
      'inlayHint',
      { range: EVERYTHING },
    )
    const ends = house.ranges.map(({ start }) => start)
    expect(hints.map(({ position }) => position)).toEqual(expect.arrayContaining(ends))
    expect(hints.map(({ label }) => label)).toEqual(
      expect.arrayContaining([expect.stringContaining('120.0 sq ft')]),
    )
  })

  test('lenses run commands where the editor has ours, else they are only read', async () => {
    const commands = async (introduction: object) => {
      const lenses = await ask<CodeLens[]>(
        SOUND.replace('floor all', 'floor ‹all›'),
        'codeLens',
        {},
        { introduction },
      )
      return lenses.map(({ command }) => command)
    }
    const [room, floor] = await commands({ runsCommands: true })
    expect(room).toMatchObject({ title: 'in floor all', command: 'floorscribe.goTo' })
    expect(room!.arguments).toEqual([{ uri: house.uri, range: house.ranges[0] }])
    expect(floor).toMatchObject({ command: 'floorscribe.showPlan', arguments: [house.uri] })
    expect((await commands({})).map((one) => one!.command)).toEqual(['', ''])
  })

  test('folds, colours, symbols and growing selections cover the text', async () => {
    const folds = await ask<FoldingRange[]>(SOUND.replace('‹|›', ''), 'foldingRange')
    const lines = SOUND.split('\n')
    const room = lines.indexOf('room den')
    expect(folds).toContainEqual({ startLine: room, endLine: room + 4 })
    const { editor, uri } = house
    const textDocument = { uri }
    const [job] = await editor.ask<{ name: string }[]>('textDocument/documentSymbol', {
      textDocument,
    })
    expect(job).toMatchObject({
      name: 'Heron Cottage',
      range: { start: { line: 0, character: 0 } },
    })
    const tokens = await editor.ask<SemanticTokens>('textDocument/semanticTokens/full', {
      textDocument,
    })
    expect(tokens.data.slice(0, 5)).toEqual([0, 0, 11, 0, 0])
    const part = await editor.ask<SemanticTokens>('textDocument/semanticTokens/range', {
      textDocument,
      range: EVERYTHING,
    })
    expect(part.data).toEqual(tokens.data)
    const position = { line: room + 1, character: 15 }
    const [grown] = await editor.ask<{ range: unknown; parent: unknown }[]>(
      'textDocument/selectionRange',
      { textDocument, positions: [position] },
    )
    expect(grown).toMatchObject({
      range: { start: { line: room + 1, character: 14 }, end: { line: room + 1, character: 20 } },
    })
  })

  test('colours follow an edit by their difference', async () => {
    house = await opened(SOUND)
    const { editor, uri } = house
    const textDocument = { uri }
    const before = await editor.ask<SemanticTokens>('textDocument/semanticTokens/full', {
      textDocument,
    })
    const start = { line: 1, character: 0 }
    editor.change(uri, { range: { start, end: start }, text: '# a remark\nunits inches\n' })
    const { edits } = await editor.ask<{
      edits: { start: number; deleteCount: number; data?: number[] }[]
    }>('textDocument/semanticTokens/full/delta', {
      textDocument,
      previousResultId: before.resultId,
    })
    const data = [...before.data]
    for (const one of edits) data.splice(one.start, one.deleteCount, ...(one.data ?? []))
    const after = await editor.ask<SemanticTokens>('textDocument/semanticTokens/full', {
      textDocument,
    })
    expect(data).toEqual(after.data)
    expect(edits.length).toBe(1)
    expect(
      await editor.ask('textDocument/semanticTokens/full/delta', {
        textDocument,
        previousResultId: 'long gone',
      }),
    ).toMatchObject({ data: after.data })
  })

  test('an include is a link to its file', async () => {
    const links = await ask(
      { 'job.floor': SOUND.replace(PRODUCT, 'include ‹la%rch (2).floor›\n') },
      'documentLink',
    )
    expect(links).toEqual([
      {
        range: house.ranges[0],
        target: house.uri.replace('job.floor', 'la%25rch%20%282%29.floor'),
      },
    ])
  })
})

describe('the drawing beside the text', () => {
  test('is sent whole, then in what differs; text and shapes lead to each other', async () => {
    house = await opened(SOUND.replace('  north  ', '  no‹|›rth  '))
    const { editor, uri, at } = house
    await editor.diagnostics(uri)
    await editor.ask('floorscribe/followPreview', { uri })
    const { change } = await editor.until<{ uri: string; change: { kind: string } }>(
      'floorscribe/preview',
      (sent) => sent.uri === uri,
    )
    expect(change).toMatchObject({ kind: 'whole', picture: { state: 'counted' } })
    const { ids } = await editor.ask<{ ids: string[] }>('floorscribe/shapesAt', {
      uri,
      position: at.position,
    })
    expect(ids.length).toBeGreaterThan(0)
    const place = await editor.ask<Location>('floorscribe/placeOf', { uri, id: ids[0] })
    expect(place).toMatchObject({ uri, range: { start: { line: at.position.line } } })
    editor.forget()
    const end = { line: at.position.line, character: 999 }
    editor.change(uri, { range: { start: end, end }, text: ' # read twice' })
    await editor.diagnostics(uri)
    expect(
      editor.told<{ change: { kind: string } }>('floorscribe/preview').at(-1)?.change.kind,
    ).toBe('part')
    expect(await editor.ask('floorscribe/placeOf', { uri, id: 'no such shape' })).toBeNull()
    await editor.ask('floorscribe/followPreview', { uri: null })
    editor.forget()
    editor.change(uri, { range: { start: end, end }, text: '!' })
    await editor.diagnostics(uri)
    expect(editor.told('floorscribe/preview')).toEqual([])
  })

  test('goes on paper as the command line draws it', async () => {
    house = await opened(SOUND)
    const { svg } = await house.editor.ask<{ svg: string }>('floorscribe/drawing', {
      uri: house.uri,
    })
    expect(svg).toMatch(/^<svg /)
  })
})

test("a meter's list goes into the blanks of the room at the cursor", async () => {
  const source = SOUND.replace(/(north|east|south|west) +\d+' 0"/g, '$1        ‹?›').replace(
    'room den',
    'room d‹|›en',
  )
  house = await opened(source)
  const { position } = house.at
  const paste = (text: string) =>
    house.editor.ask<{ edits: TextEdit[] }>('floorscribe/readings', {
      uri: house.uri,
      position,
      text,
    })
  const { edits } = await paste(`12' 0"\n10' 0"\n12' 0"\n10' 0"\n`)
  expect(edits.map(({ range }) => range)).toEqual(house.ranges)
  expect(await paste('no readings at all')).toBeNull()
  expect(await paste(`1' 0"\n`.repeat(9))).toHaveProperty('refused')
})

test('names of the folders, here of what is open', async () => {
  house = await opened(SOUND)
  const found = await house.editor.ask<{ name: string }[]>('workspace/symbol', { query: 'de' })
  expect(found).toMatchObject([{ name: 'den', containerName: 'Heron Cottage' }])
})
