import { readdirSync, readFileSync } from 'node:fs'

/** A small job and what it comes to, as it stands in a file of the corpus. */
export interface Case {
  readonly name: string
  /** The job's files by path; the first is the root. */
  readonly files: ReadonlyMap<string, string>
  readonly root: string
  /** What is pinned: figures of a good job, messages of a bad one. */
  readonly expected: string
}

const ROOT = 'job.floor'

/** The corpus files of a folder beside this one ("good"), by name, each with its cases. */
export function casesIn(folder: string): readonly { file: URL; cases: readonly Case[] }[] {
  const here = new URL(`${folder}/`, import.meta.url)
  return readdirSync(here)
    .filter((name) => name.endsWith('.jobs'))
    .sort()
    .map((name) => new URL(name, here))
    .map((file) => ({ file, cases: casesOf(readFileSync(file, 'utf8')) }))
}

/**
 * Reads a corpus file. A case begins with `=== what it is about`; below stands the job, below `---` what
 * it comes to. A line `>>> prices.floor` begins another file of the job.
 */
export function casesOf(text: string): readonly Case[] {
  return text
    .split(/^=== /m)
    .slice(1)
    .map((part) => {
      const [name, body] = headAndRest(part)
      const at = body.lastIndexOf('\n---\n')
      const job = at < 0 ? body : body.slice(0, at + 1)
      const [root = '', ...others] = job.split(/^>>> /m)
      const files = new Map([[ROOT, root], ...others.map(headAndRest)])
      return { name, files, root: ROOT, expected: at < 0 ? '' : body.slice(at + 5).trim() }
    })
}

/** The corpus file again, with what its cases now come to. */
export function printCases(cases: readonly Case[], now: (one: Case) => string): string {
  return cases
    .map((one) => {
      const [root = '', ...others] = one.files
      const parts = others.map(([path, text]) => `>>> ${path}\n${text}`)
      return `=== ${one.name}\n${root[1]}${parts.join('')}---\n${now(one)}\n`
    })
    .join('\n')
}

function headAndRest(part: string): [head: string, rest: string] {
  const end = part.indexOf('\n')
  return [part.slice(0, end), part.slice(end + 1)]
}
