import { describe, expect, test } from 'vitest'
import { importsOf, readServer, type Source, target } from './sources.ts'

/** From the bottom up: a folder imports only from those before it. */
const ORDER = [
  'facts',
  'units',
  'geometry',
  'language',
  'job',
  'survey',
  'layout',
  'takeoff',
  'quote',
  'report',
  'compile.ts',
  'study',
  'verify',
  'features',
  'host',
  'lsp',
  'cli',
]
/** What the pure part may use from outside: nothing that reaches a file, a clock or a screen. */
const PURE_PACKAGES = ['chevrotain', 'clipper2-ts', 'robust-predicates']
const OUTER = ['host', 'lsp', 'cli']

const sources = readServer()
const isOwn = (name: string) => name.startsWith('.')
const folderOf = (path: string) => path.split('/')[2] ?? ''

function offending(files: readonly Source[], isWrong: (source: Source, name: string) => boolean) {
  return files.flatMap((source) =>
    importsOf(source)
      .filter((name) => isWrong(source, name))
      .map((name) => `${source.path} imports ${name}`),
  )
}

describe('who imports whom', () => {
  test('every folder has its place in the order', () => {
    expect(
      [...new Set(sources.map(({ folder }) => folder))].filter((f) => !ORDER.includes(f)),
    ).toEqual([])
  })

  test('the scan sees imports at all', () => {
    expect(sources.flatMap((source) => importsOf(source)).length).toBeGreaterThan(sources.length)
  })

  test('a folder imports only from folders before it, or from itself', () => {
    const later = (source: Source, name: string) => {
      const to = folderOf(target(source, name))
      return isOwn(name) && ORDER.indexOf(to) > ORDER.indexOf(source.folder)
    }
    expect(offending(sources, later)).toEqual([])
  })

  test('the command line and the language server never meet', () => {
    const meets = (source: Source, name: string) =>
      source.folder === 'cli' && isOwn(name) && folderOf(target(source, name)) === 'lsp'
    expect(offending(sources, meets)).toEqual([])
  })

  test('the proof of a layout shares nothing with what made it', () => {
    const verify = sources.filter(({ folder }) => folder === 'verify')
    const shares = (source: Source, name: string) =>
      !isOwn(name) || folderOf(target(source, name)) !== 'verify'
    expect(offending(verify, shares)).toEqual([])
  })

  test('the pure part knows neither Node nor an editor nor a page', () => {
    const pure = sources.filter(({ folder }) => !OUTER.includes(folder))
    const reaches = (_: Source, name: string) => !isOwn(name) && !PURE_PACKAGES.includes(name)
    expect(offending(pure, reaches)).toEqual([])
  })

  test('imports of our own name the file, ending and all', () => {
    expect(offending(sources, (_, name) => isOwn(name) && !/\.(ts|json)$/.test(name))).toEqual([])
  })

  test('no file leads back to itself', () => {
    expect(circles(sources)).toEqual([])
  })
})

/** Circles among the imports that run; a type may look back at the file that uses it. */
function circles(files: readonly Source[]): string[] {
  const next = new Map(files.map((file) => [file.path, ownTargets(file)]))
  const done = new Set<string>()
  const found: string[] = []
  const visit = (path: string, chain: readonly string[]): void => {
    if (chain.includes(path)) found.push([...chain.slice(chain.indexOf(path)), path].join(' → '))
    else if (!done.has(path)) {
      for (const to of next.get(path) ?? []) visit(to, [...chain, path])
      done.add(path)
    }
  }
  for (const path of next.keys()) visit(path, [])
  return found
}

function ownTargets(source: Source): string[] {
  return importsOf(source, 'without types')
    .filter(isOwn)
    .map((name) => target(source, name))
}
