import { globSync, readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { compile, compiling, type Kept, newKept } from '../../server/src/compile.ts'
import { bind } from '../../server/src/job/bind.ts'
import { reach } from '../../server/src/job/includes.ts'
import { parseAgain } from '../../server/src/language/parse-again.ts'
import { survey } from '../../server/src/survey/survey-job.ts'
import { manyRooms } from './many-rooms.ts'
import { median, timed, WARM } from './median.ts'
import { ms, table } from './table.ts'

const SIZES = [500, 5000, 50_000]

/** Keystrokes that are timed, after `WARM` that are not. */
const KEYS = 40

interface Job {
  readonly name: string
  readonly files: ReadonlyMap<string, string>
  readonly root: string
}

/** A key typed in a line: where it is put in, the next one takes out again. */
interface Typing {
  readonly name: string
  /** The line in whose end part the key goes, by how it begins. */
  readonly line: RegExp
  readonly before: string
  readonly after: string
}

const NOTE: Typing = { name: 'in a note', line: /^ +note /, before: '', after: 'x' }
const READING: Typing = {
  name: 'in a reading',
  line: /^ {2}east .*"/,
  before: '0"',
  after: '0 1/8"',
}

/**
 * What one key costs in a text that is held open: until the rooms are known and until everything is
 * counted, the pause before counts left out, and stage by stage as far as the rooms. Beside it a run from
 * nothing.
 */
export function liveTable(only = ''): string {
  const jobs = [example(), ...SIZES.map(street)].filter(({ name }) => name.startsWith(only))
  const rows = jobs.flatMap((job) => [NOTE, READING].map((typing) => row(job, typing)))
  return table(
    ['key typed', 'read', 'bind', 'survey', 'to rooms', 'to counts', 'p95', 'afresh, once'],
    rows,
  )
}

function example(): Job {
  const paths = globSync('examples/*.floor').sort()
  const files = new Map(paths.map((path) => [basename(path), readFileSync(path, 'utf8')]))
  return { name: 'upper-floor', files, root: 'upper-floor.floor' }
}

function street(lines: number): Job {
  return { name: `${lines} lines`, ...manyRooms(lines) }
}

function row({ name, files, root }: Job, typing: Typing): string[] {
  const versions = versionsOf(files, root, typing)
  const afresh = timed(() => compile(files, root))
  const stages = stageTimes(versions, root)
  const kept = newKept()
  const whole = versions.map((texts) => keystroke(texts, root, kept)).slice(WARM)
  const all = whole.map(({ counted }) => counted)
  return [
    `${name}, ${typing.name}`,
    ...stages.map((times) => ms(median(times))),
    ms(median(whole.map(({ measured }) => measured))),
    ms(median(all)),
    ms(all.toSorted((a, b) => a - b)[Math.floor(all.length * 0.95)]!),
    ms(afresh),
  ]
}

/** The job after each key: they go round ten places of the text, in and out again. */
function versionsOf(
  files: ReadonlyMap<string, string>,
  root: string,
  { line, before, after }: Typing,
): readonly ReadonlyMap<string, string>[] {
  const lines = files.get(root)!.split('\n')
  const fitting = lines.flatMap((text, i) => (line.test(text) && text.includes(before) ? [i] : []))
  return Array.from({ length: WARM + KEYS }, (_, key) => {
    const at = fitting[Math.floor((fitting.length * (key % 10)) / 10)]!
    lines[at] = keyed(lines[at]!, before, after)
    return new Map(files).set(root, lines.join('\n'))
  })
}

function keyed(text: string, before: string, after: string): string {
  if (before === '') return text.endsWith(after) ? text.slice(0, -after.length) : text + after
  return text.includes(after) ? text.replace(after, before) : text.replace(before, after)
}

function keystroke(texts: ReadonlyMap<string, string>, root: string, kept: Kept) {
  const started = performance.now()
  const steps = compiling(texts, root, new Map(), kept)
  let measured = 0
  for (;;) {
    const step = steps.next()
    if (step.done) return { measured, counted: performance.now() - started }
    if (step.value.kind === 'measured') measured = performance.now() - started
  }
}

/** The stages that come before the floors, each on what those before it gave. */
function stageTimes(
  versions: readonly ReadonlyMap<string, string>[],
  root: string,
): readonly (readonly number[])[] {
  const kept = newKept()
  const times: [number[], number[], number[]] = [[], [], []]
  for (const texts of versions) {
    kept.begin()
    const steps: (() => unknown)[] = []
    let trees: Parameters<typeof bind>[0] = []
    let job: Parameters<typeof survey>[0] | null = null
    steps.push(() => {
      const parsed = [...texts].map(([file, text]) => {
        const before = kept.files.get(file) ?? null
        return kept.files.set(file, parseAgain(before, file, text)).tree
      })
      trees = reach(parsed, root).trees
    })
    steps.push(() => {
      job = bind(trees, root, kept.job).job
    })
    steps.push(() => survey(job!, kept.survey))
    for (const [i, step] of steps.entries()) times[i]!.push(timed(step))
    kept.end()
  }
  return times.map((each) => each.slice(WARM))
}
