import { globSync, readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { compile, compiling, type Kept, newKept } from '../../server/src/compile.ts'
import { bind } from '../../server/src/job/bind.ts'
import { reach } from '../../server/src/job/includes.ts'
import { parseAgain } from '../../server/src/language/parse-again.ts'
import { survey } from '../../server/src/survey/survey-job.ts'
import { now } from './clock.ts'
import { manyRooms } from './many-rooms.ts'
import { median, WARM } from './median.ts'
import { ms, table } from './table.ts'

const SIZES = [500, 5000, 50_000]

/** Keystrokes that are timed, after `WARM` that are not. */
const KEYS = 40

interface Job {
  readonly name: string
  readonly files: ReadonlyMap<string, string>
  readonly root: string
}

/** A key typed in a line. */
interface Typing {
  readonly name: string
  readonly line: RegExp
  /** The line after the key; `visit` counts how often the line was typed in before. */
  readonly typed: (line: string, visit: number) => string
}

const NOTE: Typing = { name: 'in a note', line: /^ +note /, typed: (line) => `${line}x` }

/** Another reading each time, so that nothing that was laid before is found again. */
const READING: Typing = {
  name: 'in a reading',
  line: /^ {2}east .*' 0(?: [0-9]+\/[0-9]+)?"/,
  typed: (line, visit) => line.replace(/' 0[^"]*"/, `' 0 ${2 * visit + 1}/64"`),
}

/**
 * What one key costs in a text that is held open: until the rooms are known and until everything is
 * counted, the pause before counts left out, and stage by stage as far as the rooms. Beside it a run from
 * nothing. This thread's own time, so that others on the machine do not count.
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
    ...stages.map((times) => ms(mean(times))),
    ms(median(whole.map(({ measured }) => measured))),
    ms(median(all)),
    ms(all.toSorted((a, b) => a - b)[Math.floor(all.length * 0.95)]!),
    ms(afresh),
  ]
}

/** In so many places of a text keys are typed in turn. */
const PLACES = 10

/** The job after each key. */
function versionsOf(
  files: ReadonlyMap<string, string>,
  root: string,
  { line, typed }: Typing,
): readonly ReadonlyMap<string, string>[] {
  const lines = files.get(root)!.split('\n')
  const fitting = lines.flatMap((text, i) => (line.test(text) ? [i] : []))
  const count = Math.min(PLACES, fitting.length)
  const places = Array.from(
    { length: count },
    (_, i) => fitting[Math.floor((fitting.length * i) / count)]!,
  )
  return Array.from({ length: WARM + KEYS }, (_, key) => {
    const at = places[key % places.length]!
    lines[at] = typed(lines[at]!, Math.floor(key / places.length))
    return new Map(files).set(root, lines.join('\n'))
  })
}

function keystroke(texts: ReadonlyMap<string, string>, root: string, kept: Kept) {
  const started = now()
  const steps = compiling(texts, root, new Map(), kept)
  let measured = 0
  for (;;) {
    const step = steps.next()
    if (step.done) return { measured, counted: now() - started }
    if (step.value.kind === 'measured') measured = now() - started
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

function timed(run: () => unknown): number {
  const started = now()
  run()
  return now() - started
}

/** The clock's steps are longer than a stage of a small job: only many together tell. */
function mean(times: readonly number[]): number {
  return times.reduce((sum, time) => sum + time, 0) / times.length
}
