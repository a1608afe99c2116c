import { compile } from '../../server/src/compile.ts'
import type { Message } from '../../server/src/facts/message.ts'
import { parse } from '../../server/src/language/parse.ts'
import { LANGUAGE_CODES } from './codes.ts'

/**
 * The messages that a text provokes: those of reading it when the code is one of the language's, else
 * those of the whole job.
 */
export function provoke(code: string, text: string): readonly Message[] {
  if (LANGUAGE_CODES.includes(code)) return parse('job.floor', text).messages
  const compiled = compile(new Map([['job.floor', text]]), 'job.floor')
  return 'missing' in compiled ? [] : compiled.messages
}
