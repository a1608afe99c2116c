import { readdirSync, readFileSync } from 'node:fs'
import { type Compiled, compile } from '../../server/src/compile.ts'

const FOLDER = new URL('../../examples/', import.meta.url)

/** Every bundled file by its name, as a job's includes find them. */
export const EXAMPLE_TEXTS: ReadonlyMap<string, string> = new Map(
  readdirSync(FOLDER)
    .filter((name) => name.endsWith('.floor'))
    .sort()
    .map((name) => [name, readFileSync(new URL(name, FOLDER), 'utf8')]),
)

/** The bundled files that are jobs. */
export const EXAMPLE_JOBS: readonly string[] = [...EXAMPLE_TEXTS]
  .filter(([, text]) => /^job /m.test(text))
  .map(([name]) => name)

/** Compiles one bundled job, or a changed text of it. */
export function compileExample(name: string, text = EXAMPLE_TEXTS.get(name)!): Compiled {
  const texts = new Map(EXAMPLE_TEXTS)
  texts.set(name, text)
  const compiled = compile(texts, name)
  if ('missing' in compiled) throw new Error(`${name} misses ${compiled.missing.join(', ')}`)
  return compiled
}
