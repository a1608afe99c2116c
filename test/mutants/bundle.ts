import { glob, readFile } from 'node:fs/promises'
import { createRequire } from 'node:module'
import { dirname, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { Script } from 'node:vm'
import { build, type Plugin, stop } from 'esbuild'
import fc from 'fast-check'
import type { Collector } from './collector.ts'

/** Suites and source in one script, compiled once. */
export interface Bundle {
  /** Paths of the suites, from the top of the repository. */
  readonly suites: readonly string[]
  /** Evaluates the source and one suite from nothing; the suite tells its tests to the collector. */
  readonly evaluate: (suite: string, collector: Collector) => void
}

type Loader = (require: (name: string) => unknown, module: { exports: Suites }) => void
type Suites = Readonly<Record<string, () => void>>

/** `counting` tells which tests reach which mutant, and is several times slower than `bare`. */
export async function bundled(
  patterns: readonly string[],
  kind: 'counting' | 'bare',
): Promise<Bundle> {
  const suites = await pathsOf(patterns)
  const { outputFiles } = await build({
    stdin: { contents: entryOf(suites), resolveDir: process.cwd() },
    bundle: true,
    write: false,
    format: 'cjs',
    platform: 'node',
    packages: 'external',
    logLevel: 'error',
    plugins: [placesKept(kind)],
  })
  await stop()
  const load = compiled(outputFiles[0]!.text)
  const fromHere = createRequire(import.meta.url)
  const evaluate = (suite: string, collector: Collector) => {
    const module = { exports: {} as Suites }
    const stands: Readonly<Record<string, unknown>> = {
      vitest: collector.vitest,
      'fast-check': BRIEF_CHANCE,
    }
    load((name) => stands[name] ?? fromHere(name), module)
    module.exports[suite]!()
  }
  return { suites, evaluate }
}

/** Tests of chance go round a few times only, and do not look for the smallest case that fails. */
const BRIEF_CHANCE = { ...fc, assert: assertBriefly }
const MOST_RUNS = 20

function assertBriefly<T>(property: fc.IRawProperty<T>, parameters: fc.Parameters<T> = {}) {
  const numRuns = Math.min(parameters.numRuns ?? 100, MOST_RUNS)
  return fc.assert(property, { ...parameters, numRuns, endOnFailure: true })
}

async function pathsOf(patterns: readonly string[]): Promise<readonly string[]> {
  const paths: string[] = []
  for (const pattern of patterns) {
    const found: string[] = []
    for await (const path of glob(pattern)) found.push(path)
    paths.push(...found.sort().filter((path) => !paths.includes(path)))
  }
  return paths
}

/** Each suite is required only when its turn comes. */
function entryOf(suites: readonly string[]): string {
  const entries = suites.map((path) => `${JSON.stringify(path)}: () => require('./${path}')`)
  return `module.exports = { ${entries.join(', ')} }`
}

function compiled(text: string): Loader {
  const wrapped = `(function (require, module) {${text}\n})`
  return new Script(wrapped, { filename: 'mutants.cjs' }).runInThisContext() as Loader
}

/** A bundle has one place; suites that read files beside them need their own. */
function placesKept(kind: 'counting' | 'bare'): Plugin {
  return {
    name: 'places-kept',
    setup({ onLoad }) {
      onLoad({ filter: /\.ts$/ }, async ({ path }) => {
        const text = await readFile(resolve(path), 'utf8')
        const placed = text
          .replaceAll('import.meta.url', JSON.stringify(pathToFileURL(path).href))
          .replaceAll('import.meta.dirname', JSON.stringify(dirname(path)))
        return { contents: kind === 'bare' ? uncounted(placed) : placed, loader: 'ts' }
      })
    },
  }
}

/** Counting is of no use once it is known which tests reach which mutant. */
function uncounted(text: string): string {
  return text.replace('function stryCov_9fa48() {', 'function stryCov_9fa48() { return;')
}
