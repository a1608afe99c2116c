import { compile } from '../../server/src/compile.ts'
import type { Message } from '../../server/src/facts/message.ts'
import { parse } from '../../server/src/language/parse.ts'
import { LANGUAGE_CODES } from './codes.ts'

const ROOT = 'job.floor'

/**
 * The messages that a text provokes: those of reading it when the code is one of the language's, else
 * those of the whole job. A line `=== kitchen.floor` starts another file of the job; any file that is
 * still missing is not there.
 */
export function provoke(code: string, text: string): readonly Message[] {
  if (LANGUAGE_CODES.includes(code)) return parse(ROOT, text).messages
  const [root = '', ...others] = text.split(/^=== /m)
  const texts = new Map([[ROOT, root], ...others.map(fileFrom)])
  const compiled = compile(texts, ROOT)
  if (!('missing' in compiled)) return compiled.messages
  const absent = new Map(compiled.missing.map((name) => [name, `There is no file "${name}".`]))
  const without = compile(texts, ROOT, absent)
  return 'missing' in without ? [] : without.messages
}

/** A file's name on the first line of a part, and its text below. */
function fileFrom(part: string): [name: string, text: string] {
  const end = part.indexOf('\n')
  return [part.slice(0, end), part.slice(end + 1)]
}
