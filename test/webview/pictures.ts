import { readdirSync, readFileSync } from 'node:fs'
import { compiling } from '../../server/src/compile.ts'
import { type Preview, previewOf } from '../../server/src/features/preview.ts'
import type { View } from '../../server/src/features/view.ts'

const FOLDER = new URL('../../examples/', import.meta.url).pathname

const EXAMPLES: ReadonlyMap<string, string> = new Map(
  readdirSync(FOLDER)
    .filter((name) => name.endsWith('.floor'))
    .map((name) => [name, readFileSync(`${FOLDER}${name}`, 'utf8')]),
)

export function example(name: string): string {
  return EXAMPLES.get(name)!
}

/** A job's text as an editor feature sees it: counted, or only as far as its rooms are measured. */
export function viewOf(text: string, until: 'measured' | 'counted' = 'counted'): View {
  const file = 'job.floor'
  const steps = compiling(new Map([...EXAMPLES, [file, text]]), file)
  for (;;) {
    const { done, value } = steps.next()
    if (!done) {
      if (value.kind !== 'measured' || until === 'counted') continue
      const { measured } = value
      return { file, tree: measured.trees[0]!, measured, counted: null }
    }
    if ('missing' in value) throw new Error(`Not there: ${value.missing.join(', ')}`)
    return { file, tree: value.trees[0]!, measured: value, counted: value }
  }
}

export function previewOfText(text: string, before: Preview | null = null): Preview {
  return previewOf(viewOf(text), before)
}
