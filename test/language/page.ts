import { readFileSync } from 'node:fs'
import { exampleOf } from '../../server/src/language/examples.ts'
import type { Word } from '../../server/src/language/words.ts'

/** A fence of the reference page: what stands after its three backticks, and where it stands. */
export interface Fence {
  readonly info: string
  readonly text: string
  /** The nearest headings above, of the second and the third order. */
  readonly section: string
  readonly heading: string
  /** What follows the fence up to the next heading or fence. */
  readonly after: string
}

export const PAGE = readFileSync(new URL('../../server/LANGUAGE.md', import.meta.url), 'utf8')

export const fences: readonly Fence[] = readFences(PAGE)

function readFences(page: string): readonly Fence[] {
  const found: Fence[] = []
  for (const match of page.matchAll(/^```(\S.*)\n([\s\S]*?)^```$/gm)) {
    const above = page.slice(0, match.index)
    const after = page.slice(match.index + match[0].length)
    found.push({
      info: match[1]!,
      text: repeated(match[1]!, match[2]!),
      section: lastHeading(above, /^## (.+)$/gm),
      heading: lastHeading(above, /^### (.+)$/gm),
      after: after.slice(0, /^(?:#|```)/m.exec(after)?.index ?? after.length),
    })
  }
  return found
}

/** `repeat=1001`: the example as often as it takes to provoke what only a large file does. */
function repeated(info: string, text: string): string {
  const times = /\brepeat=([0-9]+)/.exec(info)?.[1]
  return times === undefined ? text : text.repeat(Number(times))
}

function lastHeading(above: string, pattern: RegExp): string {
  return [...above.matchAll(pattern)].at(-1)?.[1] ?? ''
}

/** The code that a fence is to provoke, or null when it is to be read without a message. */
export function provokes(fence: Fence): string | null {
  return /\bprovokes=([a-z-]+)/.exec(fence.info)?.[1] ?? null
}

/** The row that the page holds for a word: the table is the vocabulary, in other words. */
export function rowOf(word: Word): string {
  return `| \`${word.word}\` | ${takes(word)} | ${word.says} |`
}

function takes(word: Word): string {
  if (word.takes === 'text') return 'text to the end of the line'
  if (word.takes === 'name') return 'a name'
  if (word.takes === 'names') return 'names, parted by commas'
  if (word.forms.length === 0) return 'nothing'
  return word.forms.map((form) => `\`${exampleOf(form)}\``).join(' · ')
}
