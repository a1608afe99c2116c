import { visible } from '../report/visible.ts'
import type { Shell } from './shell.ts'
import { readTextFile, type TextFile } from './text-file.ts'

/** A published layout of a large house may pass what a job's text may be. */
const LARGEST_JSON = 200_000_000

export interface JsonRead {
  readonly path: string
  readonly value: unknown
}

/** Reads a file of JSON; null, and said why, if it cannot be read or is none. */
export async function readJson(
  file: string,
  name: string | undefined,
  shell: Shell,
): Promise<JsonRead | null> {
  const read = await readTextFile(file, { name, limit: LARGEST_JSON }, shell)
  if (read === null) return null
  try {
    return { path: read.path, value: JSON.parse(read.text) }
  } catch (error) {
    shell.err(notJson(read, error))
    return null
  }
}

/** The engine tells the place by an offset in words, or not at all where the text breaks off. */
function notJson({ path, text }: TextFile, error: unknown): string {
  const offset = Number(/at position (\d+)/.exec(String(error))?.[1] ?? text.length)
  const lines = text.slice(0, offset).split(/\r\n|\r|\n/)
  const place = `${lines.length}:${(lines.at(-1) ?? '').length + 1}`
  const told = 'This is no JSON. "floorscribe layout --format json" writes what can be proved.'
  return `${visible(path)}:${place}: error not-json: ${told}\n`
}
