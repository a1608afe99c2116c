import { describe, expect, test } from 'vitest'
import { importsOf, readClient, readServer, type Source, target } from './sources.ts'

const client = readClient()
const inFolder = (name: string) => client.filter(({ folder }) => folder === name)
const isOwn = (name: string) => name.startsWith('.')

/** What the extension and its page may run of the server's: pure writers and the drawing. */
const RUN = /^server\/src\/(?:features\/|report\/|lsp\/custom\.ts$)/
/** What they may know the types of, besides. */
const KNOWN = /^server\/src\/(?:facts|geometry|units)\//
/** Where Node is: never on the way to a browser. */
const ON_NODE = [
  'client/src/extension-node.ts',
  'client/src/check-tasks.ts',
  'client/src/server/process.ts',
]

function offending(
  files: readonly Source[],
  isWrong: (to: string, source: Source) => boolean,
  types?: 'without types',
) {
  return files.flatMap((source) =>
    importsOf(source, types)
      .filter((name) => isWrong(isOwn(name) ? target(source, name) : name, source))
      .map((name) => `${source.path} imports ${name}`),
  )
}

describe('the extension and its page', () => {
  const shown = [...inFolder('src'), ...inFolder('webview')]

  test('are there to be looked at', () => {
    expect(inFolder('src').length).toBeGreaterThan(30)
    expect(inFolder('webview').length).toBeGreaterThan(3)
  })

  test('run nothing of the server but what is pure and for showing', () => {
    const wrong = (to: string) => to.startsWith('server/') && !RUN.test(to)
    expect(offending(shown, wrong, 'without types')).toEqual([])
    expect(offending(shown, (to) => wrong(to) && !KNOWN.test(to))).toEqual([])
  })

  test('the page knows neither the editor nor the extension', () => {
    const wrong = (to: string) => to === 'vscode' || to.startsWith('client/src/')
    expect(offending(inFolder('webview'), wrong)).toEqual([])
  })

  test('the extension knows of the page what it is made of and what is said', () => {
    const wrong = (to: string) => /^client\/webview\/(?!html\.ts$|messages\.ts$)/.test(to)
    expect(offending(inFolder('src'), wrong)).toEqual([])
  })

  test('Node is needed in three files, and no other needs one of them', () => {
    const others = shown.filter(({ path }) => !ON_NODE.includes(path))
    const wrong = (to: string) => to.startsWith('node:') || ON_NODE.includes(to)
    expect(offending(others, wrong)).toEqual([])
    const used = (path: string) =>
      offending(
        shown.filter((one) => one.path === path),
        wrong,
      )
    expect(used('client/src/server/process.ts').length).toBeGreaterThan(0)
  })

  test('the server knows nothing of them', () => {
    expect(offending(readServer(), (to) => to.startsWith('client/'))).toEqual([])
  })
})
