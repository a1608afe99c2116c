import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { parseAst } from 'vitest/node'

export const HOME = join(import.meta.dirname, '../..')
const SERVER = 'server/src'
const CLIENT = 'client'

/** A source file as a tree, so that a rule looks at code and never at comments or texts. */
export interface Source {
  /** From the repository's top, '/'-separated. */
  readonly path: string
  /** 'layout', 'cli'; 'compile.ts' for the page that stands alone. */
  readonly folder: string
  readonly text: string
  readonly nodes: readonly Node[]
}

export interface Node {
  readonly type: string
  readonly start: number
  readonly [key: string]: unknown
}

/** All files below a folder, '/'-separated from the repository's top. */
export function filesBelow(folder: string): string[] {
  const entries = readdirSync(join(HOME, folder), { withFileTypes: true, recursive: true })
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) => relative(HOME, join(entry.parentPath, entry.name)))
    .sort()
}

export function readServer(): Source[] {
  return readBelow(SERVER)
}

/** The extension's own part: its folders are `src`, `webview` and `build`. */
export function readClient(): Source[] {
  return readBelow(CLIENT)
}

function readBelow(top: string): Source[] {
  return filesBelow(top)
    .filter((path) => path.endsWith('.ts'))
    .map((path) => readSource(path, top))
}

function readSource(path: string, top: string): Source {
  const text = readFileSync(join(HOME, path), 'utf8')
  const [folder = ''] = path.slice(top.length + 1).split('/')
  return { path, folder, text, nodes: nodesOf(text) }
}

/** Every node of a file's tree, from the outside in. */
export function nodesOf(text: string): readonly Node[] {
  const found: Node[] = []
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) for (const one of value) visit(one)
    else if (isNode(value)) {
      found.push(value)
      for (const child of Object.values(value)) visit(child)
    }
  }
  visit(parseAst(text, { lang: 'ts' }))
  return found
}

function isNode(value: unknown): value is Node {
  return typeof value === 'object' && value !== null && typeof (value as Node).type === 'string'
}

/** Names of the modules that a file imports; with or without those it takes only types from. */
export function importsOf({ nodes }: Source, types: 'with types' | 'without types' = 'with types') {
  return nodes.flatMap((node) => {
    if (types === 'without types' && (node.importKind ?? node.exportKind) === 'type') return []
    const from = node.source ?? (node.type === 'TSImportType' ? node.argument : undefined)
    return isNode(from) && typeof from.value === 'string' ? [from.value] : []
  })
}

/** The file that a relative import leads to, from the repository's top. */
export function target(source: Source, name: string): string {
  return join(dirname(source.path), name)
}

export function placeOf({ path, text }: Source, { start }: Node): string {
  return `${path}:${text.slice(0, start).split('\n').length}`
}
