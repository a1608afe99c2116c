import { readdirSync, readFileSync } from 'node:fs'
import { EXAMPLE_JOBS, EXAMPLE_TEXTS } from '../examples/read-example.ts'
import { randomJob } from '../generate/job.ts'
import { fences } from '../language/page.ts'

const ERRORS = new URL('../errors/', import.meta.url)

/** The codes that a small file provokes each. */
export const PROVOKED: readonly string[] = readdirSync(ERRORS)
  .filter((name) => name.endsWith('.floor'))
  .map((name) => name.slice(0, -'.floor'.length))
  .sort()

/** Those files; `=== kitchen.floor` starts another file of the same job. */
const errors = PROVOKED.map((code) => readFileSync(new URL(`${code}.floor`, ERRORS), 'utf8'))

/** The reference page's own, without those that only their length makes wrong. */
const page = fences.map(({ text }) => text).filter((text) => text.length < 6000)

/** Random jobs, most of them of a room or two: what takes longest to lay is tried least. */
const random = Array.from({ length: 90 }, (_, seed) => randomJob(seed).text)
const small = random.filter((text) => text.length < 1900)
const large = random.filter((text) => text.length >= 1900).slice(0, 6)

/** A root's text with all that an example may include, as one text. */
export function withIncludes(root: string): string {
  const parts = [...EXAMPLE_TEXTS].filter(([name]) => !EXAMPLE_JOBS.includes(name))
  return [root, ...parts.map(([name, text]) => `=== ${name}\n${text}`)].join('\n')
}

/** The bundled jobs, each with its includes. */
const examples = EXAMPLE_JOBS.map((job) => withIncludes(EXAMPLE_TEXTS.get(job)!))

/** Texts of one file each, as the parser reads them. */
export const FILES: readonly string[] = [...EXAMPLE_TEXTS.values(), ...errors, ...page, ...large]

/** Whole jobs. The jobs that lay a floor stand in it more often than what provokes a message. */
export const JOBS: readonly string[] = [
  ...errors,
  ...page.filter((text) => /^(?:room|floor|product) /m.test(text)),
  ...[...small, ...examples].flatMap((text) => [text, text, text, text]),
  ...large,
]

/** The files of a job that stands in one text. */
export function filesOf(text: string): ReadonlyMap<string, string> {
  const [root = '', ...others] = text.split(/(?:^|\n)=== /)
  const files = new Map([[ROOT, root]])
  for (const other of others) {
    const end = other.indexOf('\n')
    const name = end < 0 ? other : other.slice(0, end)
    if (name !== ROOT) files.set(name, end < 0 ? '' : other.slice(end + 1))
  }
  return files
}

export const ROOT = 'job.floor'
