import { LARGEST_TEXT } from '../host/host.ts'
import { type TextRead, textOf } from '../host/read-text.ts'
import { visible } from '../report/visible.ts'
import type { Shell } from './shell.ts'

/** What a command line calls standard input. */
export const STANDARD_INPUT = '-'

/** A file that a person named, as text. */
export interface TextFile {
  /** As typed, or as `--name` calls standard input. */
  readonly path: string
  readonly text: string
  /** It began with a byte-order mark. */
  readonly mark: boolean
}

interface ReadOptions {
  /** What standard input is called. */
  readonly name: string | undefined
  /** In bytes. */
  readonly limit?: number
}

/** Reads a named file or standard input; says why not, and gives null, where it cannot. */
export async function readTextFile(
  file: string,
  { name, limit = LARGEST_TEXT }: ReadOptions,
  { host, err }: Shell,
): Promise<TextFile | null> {
  const isInput = file === STANDARD_INPUT
  const path = isInput ? (name ?? STANDARD_INPUT) : file
  const called = isInput && name === undefined ? 'standard input' : path
  const read = textOf(called, await (isInput ? host.readInput(limit) : host.read(file, limit)))
  if (read.kind === 'text') return { path, text: read.text, mark: read.mark }
  err(refusalLine(path, read))
  return null
}

/** Like a message of the language where the place is known, so that an editor can jump to it. */
function refusalLine(
  path: string,
  { place, reason }: Extract<TextRead, { kind: 'refused' }>,
): string {
  if (place === null) return `floorscribe: ${visible(reason)}\n`
  return `${visible(path)}:${place.line}:${place.column}: error not-utf-8: ${visible(reason)}\n`
}
