import { compile } from '../../server/src/compile.ts'
import type { Message } from '../../server/src/facts/message.ts'
import type { Span } from '../../server/src/facts/span.ts'
import { bind } from '../../server/src/job/bind.ts'
import { reach } from '../../server/src/job/includes.ts'
import { parse } from '../../server/src/language/parse.ts'
import type { Tree } from '../../server/src/language/tree.ts'
import type { SurveyedRoom } from '../../server/src/survey/survey.ts'
import { survey } from '../../server/src/survey/survey-job.ts'

export type Files = ReadonlyMap<string, string>

/** A job and what was said of it. */
export interface Seen {
  readonly files: Files
  readonly messages: readonly Message[]
  readonly rooms: readonly SurveyedRoom[]
}

/** As far as the survey: quick enough to be done for every token of a job. */
export function surveyed(files: Files, root: string): Seen {
  const all = [...files].map(([file, text]) => parse(file, text))
  const { trees, messages: includes } = reach(all, root)
  const { job, messages: bound } = bind(trees, root)
  const { rooms, messages } = survey(job)
  const said = [...trees.flatMap((tree) => tree.messages), ...includes, ...bound, ...messages]
  return { files, messages: inOrder(said, trees), rooms }
}

/** The whole of it, floors and counts too. */
export function whole(files: Files, root: string): Seen {
  const first = compile(files, root)
  const absent = new Map(
    'missing' in first ? first.missing.map((name) => [name, `There is no file "${name}".`]) : [],
  )
  const result = compile(files, root, absent)
  if ('missing' in result) throw new Error(`asked again for ${result.missing.join(', ')}`)
  return { files, messages: result.messages, rooms: result.survey.rooms }
}

function inOrder(messages: readonly Message[], trees: readonly Tree[]): readonly Message[] {
  const rank = new Map(trees.map((tree, index) => [tree.file, index]))
  return [...messages].sort(
    (a, b) => rank.get(a.span.file)! - rank.get(b.span.file)! || a.span.start - b.span.start,
  )
}

/** What presses in a damaged job and did not in the sound one. */
export function fresh(damaged: Seen, sound: Seen): readonly Message[] {
  const before = new Set(sound.messages.map(keyOf))
  return damaged.messages.filter(
    (one) => one.weight !== 'note' && !one.accepted && !before.has(keyOf(one)),
  )
}

const keyOf = ({ code, text }: Message) => `${code} ${text}`

/** A room's own figures: its closing and its shape, wherever the plan puts it. */
export function figuresOf(room: SurveyedRoom): string {
  const corner = room.outline[0]
  const shape = room.outline.map((point) => [point.x - corner!.x, point.y - corner!.y])
  return JSON.stringify([room.status, room.closing, shape])
}

/** One damage of one file. */
export interface Damage {
  readonly file: string
  readonly line: number
  /** "deleted: north". */
  readonly kind: string
  readonly files: Files
}

/** Every token of a file deleted, doubled, exchanged with the next one of its line, and replaced. */
export function* tokenDamages(files: Files, file: string): Generator<Damage> {
  const text = files.get(file)!
  for (const { number, tokens } of parse(file, text).lines) {
    const solid = tokens.filter(({ kind }) => kind !== 'blank' && kind !== 'comment')
    for (const [at, token] of solid.entries()) {
      const { start, end } = token.span
      const put = (kind: string, by: string): Damage => ({
        file,
        line: number,
        kind: `${kind}: ${token.text}`,
        files: new Map(files).set(file, text.slice(0, start) + by + text.slice(end)),
      })
      yield put('deleted', '')
      yield put('doubled', `${token.text} ${token.text}`)
      yield put('glued to itself', token.text + token.text)
      yield put('replaced by a word', 'wibble')
      yield put('replaced by a bare number', '12.4')
      yield put('replaced by a length', `3' 0"`)
      const next = solid[at + 1]
      if (next !== undefined) yield exchanged(files, file, number, [token, next])
    }
  }
}

type Typed = { readonly text: string; readonly span: Span }

function exchanged(
  files: Files,
  file: string,
  line: number,
  [a, b]: readonly [Typed, Typed],
): Damage {
  const text = files.get(file)!
  const between = text.slice(a.span.end, b.span.start)
  const turned = text.slice(0, a.span.start) + b.text + between + a.text + text.slice(b.span.end)
  return {
    file,
    line,
    kind: `exchanged: ${a.text} ${b.text}`,
    files: new Map(files).set(file, turned),
  }
}

/** Every line of a file taken out, and every line cut in the middle. */
export function* lineDamages(files: Files, file: string): Generator<Damage> {
  const lines = files.get(file)!.split('\n')
  for (const [at, line] of lines.entries()) {
    if (line.trim() === '') continue
    const put = (kind: string, by: readonly string[]): Damage => ({
      file,
      line: at + 1,
      kind: `${kind}: ${line.trim()}`,
      files: new Map(files).set(file, lines.toSpliced(at, 1, ...by).join('\n')),
    })
    yield put('taken out', [])
    yield put('cut in the middle', [line.slice(0, Math.ceil(line.length / 2))])
    yield put('a stray mark', [`${line} @@@`])
  }
}

/** The block that a line stands in, by its first line and the one after its last; null for none. */
export function blockAt(text: string, line: number): readonly [from: number, to: number] {
  const lines = text.split('\n')
  const opens = (at: number) => /^\S/.test(lines[at - 1] ?? '')
  let from = line
  while (from > 1 && !opens(from)) from -= 1
  let to = line + 1
  while (to <= lines.length && !opens(to)) to += 1
  return [from, to]
}

/** The lines of one file that a message stands at or points to. */
export function linesOf(
  { span, related }: Message,
  { files }: Seen,
  file: string,
): readonly number[] {
  const text = files.get(file)!
  return [span, ...related.map((one) => one.span)]
    .filter((place) => place.file === file)
    .map((place) => text.slice(0, place.start).split('\n').length)
}

/** A message in one line, for a test that fails. */
export function shown(message: Message, { files }: Seen): string {
  const { file, start } = message.span
  const line = files.get(file)!.slice(0, start).split('\n').length
  return `  ${file}:${line} ${message.weight} ${message.code}: ${message.text}`
}
