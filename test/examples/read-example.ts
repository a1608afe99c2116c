import { readdirSync, readFileSync } from 'node:fs'
import { type Compiled, compile } from '../../server/src/compile.ts'
import { bind } from '../../server/src/job/bind.ts'
import { reach } from '../../server/src/job/includes.ts'
import { parse } from '../../server/src/language/parse.ts'
import type { Survey } from '../../server/src/survey/survey.ts'
import { survey } from '../../server/src/survey/survey-job.ts'

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

/** The survey alone of a changed text of a bundled job: what a damaged line may touch is seen there. */
export function surveyExample(name: string, text: string): Survey {
  const texts = new Map(EXAMPLE_TEXTS)
  texts.set(name, text)
  const trees = [...texts].map(([file, typed]) => parse(file, typed))
  return survey(bind(reach(trees, name).trees, name).job)
}
