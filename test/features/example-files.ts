import { readdirSync, readFileSync } from 'node:fs'

const EXAMPLES = new URL('../../examples/', import.meta.url)

/** The texts of all example jobs and of what they include, by file name. */
export function exampleFiles(): Readonly<Record<string, string>> {
  const files = readdirSync(EXAMPLES).filter((file) => file.endsWith('.floor'))
  return Object.fromEntries(
    files.map((file) => [file, readFileSync(new URL(file, EXAMPLES), 'utf8')]),
  )
}
