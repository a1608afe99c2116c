import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Editor } from '../protocol/editor.ts'
import { startServer } from '../protocol/process.ts'
import { type Keys, keysIn } from './keys.ts'
import { manyRooms } from './many-rooms.ts'
import { median } from './median.ts'
import { ms, table } from './table.ts'

const HOME = join(import.meta.dirname, '../..')
const ECHO = join(import.meta.dirname, 'echo-server.ts')
const FOLDER = 'file:///bench/'
const RUNS = 5
/** Keys before those that count: an editor's server is warm. */
const UNCOUNTED = 15

/** A job with one file that is typed in; the others are open too, so that none is read from a disk. */
interface Job {
  readonly called: string
  readonly texts: ReadonlyMap<string, string>
  readonly root: string
  readonly keys: number
}

/** How long after a key each thing was there, in milliseconds. */
interface Times {
  readonly diagnostics: number
  readonly hints: number
  readonly counts: number
  readonly all: number
}

/** From a key to each answer, the pause before counts left out; beside a server that only publishes. */
export async function serverTables(only: string): Promise<string> {
  const rows: string[][] = []
  for (const job of jobs()) if (job.called.startsWith(only)) rows.push(await rowOf(job))
  const head = ['a key in', 'messages', 'hints', 'counts', 'all, median', 'p95', 'echo', 'times']
  return `${table(head, rows)}\n${startTable(await startRows())}`
}

function jobs(): Job[] {
  const example = ['upper-floor.floor', 'products.floor', 'shop-prices.floor']
  const read = (name: string) => readFileSync(join(HOME, 'examples', name), 'utf8')
  const street = (lines: number, keys: number): Job => {
    const { files, root } = manyRooms(lines)
    return { called: `${lines} lines`, texts: files, root, keys }
  }
  return [
    {
      called: 'the 900 sq ft example',
      texts: new Map(example.map((name) => [name, read(name)])),
      root: 'upper-floor.floor',
      keys: 40,
    },
    street(500, 40),
    street(5_000, 30),
    street(50_000, 15),
  ]
}

/** Both servers stay warm and take turns, so that what else the machine does weighs on both alike. */
async function rowOf(job: Job): Promise<string[]> {
  const own = await openJob(job)
  const echo = await openJob(job, ECHO)
  await own.editor.diagnostics(own.uri)
  await typed(own, UNCOUNTED, oneKey)
  await typed(echo, UNCOUNTED, echoedKey)
  const runs: Times[][] = []
  const echoes: number[] = []
  for (let run = 0; run < RUNS; run++) {
    runs.push(await typed(own, job.keys, oneKey))
    echoes.push(median(await typed(echo, job.keys, echoedKey)))
  }
  for (const { editor } of [own, echo]) editor.server.child.kill('SIGKILL')
  const of = (what: keyof Times) => median(runs.map((times) => median(times.map((t) => t[what]))))
  const p95 = median(
    runs.map((times) =>
      atShare(
        times.map((t) => t.all),
        0.95,
      ),
    ),
  )
  const times = [of('diagnostics'), of('hints'), of('counts'), of('all'), p95, median(echoes)]
  return [job.called, ...times.map(ms), (of('all') / median(echoes)).toFixed(1)]
}

function atShare(times: readonly number[], share: number): number {
  const sorted = times.toSorted((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))]!
}

/** A file that is typed in, in a server of its own. */
interface Open {
  readonly editor: Editor
  readonly uri: string
  readonly keys: Keys
  /** Keys so far: no two texts in a row are alike. */
  count: number
}

async function openJob(job: Job, script?: string): Promise<Open> {
  const options = script === undefined ? {} : { script }
  const editor = await Editor.open({ ...options, introduction: { showsStatus: true } })
  for (const [name, text] of job.texts) if (name !== job.root) editor.openFile(FOLDER + name, text)
  const text = job.texts.get(job.root)!
  const uri = FOLDER + job.root
  editor.openFile(uri, text)
  return { editor, uri, keys: keysIn(text), count: 0 }
}

async function typed<T>(open: Open, keys: number, one: (open: Open) => Promise<T>): Promise<T[]> {
  const times: T[] = []
  for (let i = 0; i < keys; i++) {
    open.editor.forget()
    times.push(await one(open))
    open.count += 1
  }
  return times
}

async function oneKey({ editor, uri, keys, count }: Open): Promise<Times> {
  const since = performance.now()
  const elapsed = () => performance.now() - since
  const version = editor.change(uri, keys.change(count))
  const counted = editor.until('floorscribe/status', isFinal(uri)).then(elapsed)
  const told = editor.until('textDocument/publishDiagnostics', isOf(uri, version)).then(elapsed)
  const asked = { textDocument: { uri }, range: keys.visible }
  const [diagnostics, hints, counts] = await Promise.all([
    // A key that changes no message is done when all is: nothing is sent again.
    Promise.race([told, counted]),
    editor.ask('textDocument/inlayHint', asked).then(elapsed),
    counted,
  ])
  return { diagnostics, hints, counts, all: Math.max(diagnostics, hints, counts) }
}

async function echoedKey({ editor, uri, keys, count }: Open): Promise<number> {
  const since = performance.now()
  const version = editor.change(uri, keys.change(count))
  await editor.until('textDocument/publishDiagnostics', isOf(uri, version))
  return performance.now() - since
}

function isOf(uri: string, version: number) {
  return (said: { readonly uri: string; readonly version?: number }) =>
    said.uri === uri && said.version === version
}

function isFinal(uri: string) {
  return (said: { readonly uri: string; readonly state: string }) =>
    said.uri === uri && said.state !== 'counting'
}

function startTable(rows: readonly (readonly string[])[]): string {
  return table(['from the start of a process', 'time', 'times'], rows)
}

async function startRows(): Promise<string[][]> {
  const bare: number[] = []
  const answered: number[] = []
  for (let run = 0; run < 2 * RUNS + 1; run++) {
    const since = performance.now()
    spawnSync(process.execPath, ['-e', '0'])
    bare.push(performance.now() - since)
    answered.push(await toInitialize())
  }
  const [node, server] = [median(bare), median(answered)]
  return [
    ['node -e 0', ms(node), ''],
    ['the answer to initialize', ms(server), (server / node).toFixed(1)],
  ]
}

/** The question is sent as soon as there is a process to send it to. */
async function toInitialize(): Promise<number> {
  const since = performance.now()
  const server = startServer()
  const answered = new Promise<void>((resolve) => server.onFrame(() => resolve()))
  server.send({ jsonrpc: '2.0', id: 1, method: 'initialize', params: { capabilities: {} } })
  await answered
  const time = performance.now() - since
  server.child.kill('SIGKILL')
  return time
}
