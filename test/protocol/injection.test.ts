import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type {
  CodeLens,
  CompletionList,
  Diagnostic,
  Hover,
  InlayHint,
} from 'vscode-languageserver-protocol'
import { Editor } from './editor.ts'
import { JOB, SOUND } from './house.ts'

let editor: Editor
beforeAll(async () => {
  editor = await Editor.open()
})
afterAll(() => void editor.server.child.kill('SIGKILL'))

/** What a name or a note may hold, and what an editor that reads Markdown might make of it. */
const HOSTILE: readonly (readonly [what: string, text: string])[] = [
  ['markup', '<b>bold</b>'],
  ['a script', '<script>alert(1)</script>'],
  ['an image', '<img src=x onerror=alert(1)>'],
  ['an entity', '&lt;b&gt; &#60;i&#62;'],
  ['a script address', '[x](javascript:alert(1))'],
  ['a command link', '[press](command:workbench.action.quit)'],
  ['a picture from elsewhere', '![x](https://elsewhere.example/x.png)'],
  ['a bare address', 'https://elsewhere.example and www.elsewhere.example'],
  ['an address in brackets', '<https://elsewhere.example>'],
  ['a reference', '[x][y] [y]: https://elsewhere.example'],
  ['an icon', '$(trash) $(x)'],
  ['a stop of a snippet', `$\{1:x} $0 $\{2|a,b|} }`],
  ['code', '`code` ``` ~~~'],
  ['marks', '**bold** __bold__ _it_ ~~gone~~ ***'],
  ['a heading', '# heading'],
  ['a rule', '--- === +++'],
  ['a list', '- one * two + three 1. four 2) five'],
  ['a quote', '> quoted'],
  ['a table', '| a | b |'],
  ['backslashes', '\\ \\\\ \\[x\\](y) \\'],
  ['a formula', '=1+1 ＝1+1 @SUM(1)'],
  ['right to left', 'שינה'],
  ['__proto__', '__proto__'],
  ['toString', 'toString'],
  ['then', 'then'],
]

/** Every place where a person puts words of their own. */
function jobWith(text: string): string {
  const name = `"${text}"`
  return SOUND.replace('room den', `room ${name}`)
    .replace('rooms       den', `rooms       ${name}`)
    .replace('product larch', `product ${name} `)
    .replace('lay         larch', `lay         ${name} `)
    .replace('floor all', `floor ${name}`)
    .replace('Heron Cottage', text)
    .replace(
      '  north       12\' 0"\n',
      `  north       12' 0", called ${name}\n    door      32", 2' 0" from left, to ${name}\n    note      ${text}\n`,
    )
}

function linesOf(text: string): string[] {
  return text.split('\n')
}

/** What is left of Markdown when all that is escaped is taken out: our own notation, and no more. */
function bare(markdown: string): string {
  return markdown.replace(/\\[!-/:-@[-`{-~]/g, '')
}

/** A paragraph of ours: a title, a source, a text, or steps with links to readings. */
const OURS =
  /^(?:\*\*[^*_`<>![\]&~#|]*\*\*|\*[^*_`<>![\]&~#|]*\*|[^*_`<>![\]&~#|]*|(?: *- (?:\[[^*_`<>![\]&~|]*\]\(file:\/\/\/[^)\s]*#L\d+,\d+\)|[^*_`<>![\]&~#|]*)\n?)+)$/

async function hovers(text: string): Promise<readonly string[]> {
  const found: string[] = []
  for (const [line, content] of linesOf(text).entries())
    for (let character = 0; character <= content.length; character += 3) {
      const hover = await editor.ask<Hover | null>('textDocument/hover', {
        textDocument: { uri: JOB },
        position: { line, character },
      })
      if (hover !== null) found.push((hover.contents as { value: string }).value)
    }
  return [...new Set(found)]
}

describe.each(HOSTILE)('%s', (_, hostile) => {
  const text = jobWith(hostile)

  test('is only text in hovers', async () => {
    editor.openFile(JOB, text)
    await editor.diagnostics(JOB)
    const all = await hovers(text)
    expect(all.length).toBeGreaterThan(8)
    const foreign = all
      .flatMap((one) => one.split('\n\n'))
      .filter((paragraph) => !OURS.test(bare(paragraph)))
    expect(foreign).toEqual([])
    // A sign that opens an address or an element is never left bare.
    for (const one of all) expect(bare(one)).not.toMatch(/https?:|www\.|command:|javascript:|[<`]/)
  })

  test('stands in messages, hints, lenses and symbols as it is, without icons', async () => {
    editor.openFile(JOB, text.replace('lay   ', 'lay         nowhere, running \n  lay   '))
    const diagnostics = await editor.diagnostics(JOB)
    for (const one of diagnostics as Diagnostic[]) expect(typeof one.message).toBe('string')
    const range = { start: { line: 0, character: 0 }, end: { line: 999, character: 0 } }
    const ask = <T>(method: string) =>
      editor.ask<T>(`textDocument/${method}`, { textDocument: { uri: JOB }, range })
    for (const { label } of await ask<InlayHint[]>('inlayHint')) expect(typeof label).toBe('string')
    for (const { command } of await ask<CodeLens[]>('codeLens'))
      expect(command!.title).not.toContain('$(')
  })

  test('is put in as it is written by a completion', async () => {
    const line = linesOf(text).findIndex((one) => one.startsWith('  rooms'))
    const without = linesOf(text)
    without[line] = '  rooms       '
    editor.openFile(JOB, without.join('\n'))
    const { items } = await editor.ask<CompletionList>('textDocument/completion', {
      textDocument: { uri: JOB },
      position: { line, character: without[line]!.length },
    })
    const rooms = items.map((one) => ({
      text: (one.textEdit as { newText: string }).newText,
      isSnippet: one.insertTextFormat === 2,
    }))
    const written = rooms.map((one) =>
      one.isSnippet ? one.text.replace(/\\([\\$}])/g, '$1') : one.text,
    )
    expect(written.map((one) => one.replace(/^"|"$/g, ''))).toContain(hostile)
    // In a snippet a sign of its notation is never left bare.
    for (const one of rooms.filter(({ isSnippet }) => isSnippet))
      expect(one.text.replace(/\\[\\$}]/g, '').replace(/\$\{\d+:[^$}]*\}/g, '')).not.toContain('$')
  })
})
