import type { Compiled } from '../compiled.ts'
import { messagesJson } from './messages.ts'
import { surveyJson } from './survey.ts'
import { writeJson } from './write.ts'

/** What `floorscribe check --format json` writes (schema `check`). */
export function checkJson(compiled: Compiled): string {
  return writeJson({
    format: 'floorscribe check',
    version: 1,
    job: compiled.job.title,
    verdict: compiled.exit,
    messages: messagesJson(compiled),
    survey: surveyJson(compiled),
  })
}
