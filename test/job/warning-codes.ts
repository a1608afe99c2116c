import { readdirSync, readFileSync } from 'node:fs'
import { BREACH_CODES } from '../../server/src/layout/breach-messages.ts'

const SOURCE = new URL('../../server/src/', import.meta.url).pathname

/**
 * The codes that the source warns with, found by reading it: a message whose weight is 'warning', or
 * a weight worked out in a file that knows the word; and those of a layout's breaches.
 */
export function warningCodesInSource(): readonly string[] {
  const codes = readdirSync(SOURCE, { recursive: true, encoding: 'utf8' })
    .filter((file) => file.endsWith('.ts'))
    .flatMap((file) => codesIn(readFileSync(SOURCE + file, 'utf8')))
  return [...new Set([...codes, ...Object.values(BREACH_CODES)])].sort()
}

function codesIn(text: string): readonly string[] {
  if (!text.includes("'warning'")) return []
  return [...text.matchAll(/\b(?:message|warn)\(\s*([^,]+),\s*'([a-z-]+)'/g)]
    .filter(([, weight]) => weight!.includes('warning') || /^\w+$/.test(weight!))
    .map(([, , code]) => code!)
}
