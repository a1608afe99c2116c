import { type Host, LARGEST_TEXT } from './host.ts'
import { type TextRead, textOf } from './read-text.ts'

/** A job's own text and the folder that its includes lie in or below. */
export interface Root {
  readonly folder: string
  /** Its name in that folder. */
  readonly name: string
  readonly text: string
}

/**
 * The pure side of a job: from the texts known so far to a result, or to the names of those that are
 * still missing. `absent` holds, for each name that could not be read, the sentence why.
 */
export type Compile<T> = (
  texts: ReadonlyMap<string, string>,
  root: string,
  absent: ReadonlyMap<string, string>,
) => { readonly missing: readonly string[] } | T

/** More files than this are no job but a circle of generated ones. */
const MOST_FILES = 1000

/**
 * Compiles a job, fetching each text that it includes until none is missing. What may be named at all
 * is the job's own rule; that a link leads nowhere else is the host's.
 */
export async function gather<T extends object>(
  host: Host,
  root: Root,
  compile: Compile<T>,
): Promise<T> {
  const texts = new Map([[root.name, root.text]])
  const absent = new Map<string, string>()
  for (;;) {
    const result = compile(texts, root.name, absent)
    if (!('missing' in result)) return result
    for (const name of fresh(result.missing, texts, absent)) {
      const read =
        texts.size < MOST_FILES
          ? textOf(name, await host.readBelow(root.folder, name, LARGEST_TEXT))
          : tooMany(name)
      if (read.kind === 'text') texts.set(name, read.text)
      else absent.set(name, read.reason)
    }
  }
}

/** Those not yet asked for; a compile that asks again for what it was given would never end. */
function fresh(
  missing: readonly string[],
  texts: ReadonlyMap<string, string>,
  absent: ReadonlyMap<string, string>,
): readonly string[] {
  const names = missing.filter((name) => !texts.has(name) && !absent.has(name))
  if (names.length === 0) throw new Error('compile asks for texts that it has')
  return names
}

function tooMany(name: string): TextRead {
  const reason = `"${name}" was not read: this job includes more than ${MOST_FILES} files.`
  return { kind: 'refused', reason, place: null }
}
