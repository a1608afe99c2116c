import { readdirSync, readFileSync } from 'node:fs'
import type { Message } from '../../server/src/facts/message.ts'
import { parse } from '../../server/src/language/parse.ts'
import type { Entry, Tree } from '../../server/src/language/tree.ts'

const SAMPLES = new URL('./samples/', import.meta.url)

/** The five situations, a line of each kind, products and prices. */
export const samples: readonly { readonly name: string; readonly text: string }[] = readdirSync(
  SAMPLES,
)
  .sort()
  .map((name) => ({ name, text: readFileSync(new URL(name, SAMPLES), 'utf8') }))

export function sample(name: string): string {
  return samples.find((found) => found.name === `${name}.floor`)!.text
}

export function read(text: string): Tree {
  return parse('job.floor', text)
}

/** The number of the line that an offset stands in. */
export function lineOf(text: string, offset: number): number {
  return text.slice(0, offset).split(/\r\n|\n|\r/).length
}

/** Each message in short: its line, weight and code. */
export function codes(text: string): readonly string[] {
  return read(text).messages.map(
    (message) => `${lineOf(text, message.span.start)} ${message.weight} ${message.code}`,
  )
}

/** The text after the one fix of a message. */
export function mended(text: string, message: Message): string {
  const edits = [...message.fixes[0]!.edits].sort((a, b) => b.span.start - a.span.start)
  return edits.reduce(
    (whole, { span, text }) => whole.slice(0, span.start) + text + whole.slice(span.end),
    text,
  )
}

/** A tree in short: words, forms and values, deeper lines indented, broken ones marked. */
export function outline(text: string): string {
  return outlineOf(read(text).blocks)
}

export function outlineOf(blocks: readonly Entry[]): string {
  const rows: string[] = []
  const add = (entry: Entry, depth: number): void => {
    const phrases = entry.phrases.map((phrase) =>
      [
        phrase.form,
        ...phrase.measures.map((measure) => measure.figure.text),
        ...phrase.names.map((name) => `<${name.key}>`),
        ...phrase.choices,
      ].join(' '),
    )
    const content = [...phrases, entry.text].filter((part) => part !== '').join(' | ')
    const mark = entry.broken ? '!' : ''
    rows.push(`${'  '.repeat(depth)}${entry.word}${mark}${content === '' ? '' : `: ${content}`}`)
    for (const below of entry.under) add(below, depth + 1)
  }
  for (const block of blocks) add(block, 0)
  return rows.join('\n')
}
