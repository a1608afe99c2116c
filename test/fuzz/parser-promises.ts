import type { Message } from '../../server/src/facts/message.ts'
import type { Span } from '../../server/src/facts/span.ts'
import { format } from '../../server/src/language/format.ts'
import { MOST_MESSAGES, parse } from '../../server/src/language/parse.ts'
import { print } from '../../server/src/language/print.ts'
import type { Entry, Tree } from '../../server/src/language/tree.ts'
import { hold, unthrown } from './fault.ts'
import { holdSoundText } from './sound-values.ts'

const FILE = 'job.floor'

export interface ParserRun {
  readonly tree: Tree
  readonly formatted: string
}

/** What a parser run times: reading a text and writing it in the canonical form. */
export function runParser(text: string): ParserRun {
  const tree = unthrown('parse', () => parse(FILE, text))
  return { tree, formatted: unthrown('format', () => format(tree)) }
}

/** Holds all that reading one file promises, whatever the text is. */
export function holdParserPromises(text: string, { tree, formatted }: ParserRun): void {
  hold(print(tree) === text, 'print loses text', () => JSON.stringify(print(tree)).slice(0, 300))
  hold(
    tree.messages.length <= MOST_MESSAGES + 1,
    'too many messages',
    () => `${tree.messages.length}`,
  )
  for (const message of tree.messages) holdMessage(message, new Map([[FILE, text]]))
  holdEntries(tree)
  holdFormat(tree, formatted)
}

function holdFormat(tree: Tree, formatted: string): void {
  const again = unthrown('parse', () => parse(FILE, formatted))
  const twice = unthrown('format', () => format(again))
  hold(twice === formatted, 'format is not idempotent', () => firstDifference(formatted, twice))
  const [before, after] = [meaningOf(tree), meaningOf(again)]
  hold(before === after, 'format moves the meaning', () => firstDifference(before, after))
}

/** Warnings that a line stands too deep or not deep enough: the formatter puts it right. */
const MENDED = ['indent-extra', 'indent-lost']

/** Message codes, then every entry with its figures, names and choices: what a job is bound from. */
function meaningOf({ blocks, messages }: Tree): string {
  const rows = messages.map(({ code }) => code).filter((code) => !MENDED.includes(code))
  const waiting: (Entry | number)[] = [...blocks].reverse()
  let depth = 0
  for (let one = waiting.pop(); one !== undefined; one = waiting.pop()) {
    if (typeof one === 'number') {
      depth = one
      continue
    }
    rows.push(`${'  '.repeat(depth)}${one.word}${one.broken ? '!' : ''} ${one.text}`)
    for (const phrase of one.phrases) {
      const figures = phrase.measures.map(({ figure, about, within, doubtful }) =>
        [figureValue(figure), about, within, doubtful].join(' '),
      )
      rows.push(
        [phrase.form, ...figures, ...phrase.names.map(({ key }) => key), ...phrase.choices].join(
          ',',
        ),
      )
    }
    waiting.push(depth, ...[...one.under].reverse(), depth + 1)
  }
  return rows.join('\n')
}

function figureValue(figure: Entry['phrases'][number]['measures'][number]['figure']): string {
  switch (figure.kind) {
    case 'length':
      return `${figure.nm}`
    case 'size':
      return figure.nm.join('x')
    case 'number':
    case 'percent':
      return `${figure.value.n}/${figure.value.d}`
    case 'angle':
      return `${figure.degrees.n}/${figure.degrees.d}`
    default:
      return figure.text
  }
}

function firstDifference(a: string, b: string): string {
  let at = 0
  while (at < a.length && a[at] === b[at]) at++
  const near = (text: string) => JSON.stringify(text.slice(Math.max(0, at - 40), at + 60))
  return `${near(a)} and then ${near(b)}`
}

/** A message's places lie in its files, and its words are for people. */
export function holdMessage(message: Message, texts: ReadonlyMap<string, string>): void {
  const { code, text, related, fixes } = message
  const places = [message, ...related, ...fixes.flatMap(({ edits }) => edits)]
  for (const { span } of places) {
    hold(isInside(span, texts), 'a span leaves the text', () => `${code} ${JSON.stringify(span)}`)
  }
  hold(!/[\r\n]/.test(text), 'a message breaks its line', () => JSON.stringify(text))
  const typed = [...texts.values()].join('\n')
  for (const said of [text, ...related.map((one) => one.text), ...fixes.map((fix) => fix.title)]) {
    holdSoundText(said, typed, 'a message')
  }
}

function isInside({ file, start, end }: Span, texts: ReadonlyMap<string, string>): boolean {
  const text = texts.get(file)
  if (text === undefined) return false
  const whole = Number.isInteger(start) && Number.isInteger(end)
  return whole && 0 <= start && start <= end && end <= text.length
}

function holdEntries({ lines, text, file }: Tree): void {
  const texts = new Map([[file, text]])
  for (const line of lines) {
    for (const { span } of [line, ...line.tokens]) {
      hold(isInside(span, texts), 'a span leaves the text', () => JSON.stringify(span))
    }
  }
}
