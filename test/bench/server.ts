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

async function rowOf(job: Job): Promise<string[]> {
  const runs: Times[][] = []
  const echoes: number[] = []
  for (let run = 0; run < RUNS; run++) {
    runs.push(await typed(job))
    echoes.push(median(await echoed(job)))
  }
  const of = (what: keyof Times) => median(runs.map((times) => median(times.map((t) => t[what]))))
  const p95 = median(
    runs.map((times) =>
      atShare(
        times.map((t) => t.all),
        0.95,
      ),
    ),
  )
  const echo = median(echoes)
  const own = [of('diagnostics'), of('hints'), of('counts'), of('all'), p95, echo].map(ms)
  return [job.called, ...own, (of('all') / echo).toFixed(1)]
}

function atShare(times: readonly number[], share: number): number {
  const sorted = times.toSorted((a, b) => a - b)
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))]!
}

async function openJob(job: Job, script?: string): Promise<{ editor: Editor; keys: Keys }> {
  const options = script === undefined ? {} : { script }
  const editor = await Editor.open({ ...options, introduction: { showsStatus: true } })
  for (const [name, text] of job.texts) if (name !== job.root) editor.openFile(FOLDER + name, text)
  const text = job.texts.get(job.root)!
  editor.openFile(FOLDER + job.root, text)
  return { editor, keys: keysIn(text) }
}

async function typed(job: Job): Promise<Times[]> {
  const { editor, keys } = await openJob(job)
  const uri = FOLDER + job.root
  await editor.diagnostics(uri)
  const times: Times[] = []
  for (let i = 0; i < UNCOUNTED + job.keys; i++) times.push(await oneKey(editor, uri, keys, i))
  editor.server.child.kill('SIGKILL')
  return times.slice(UNCOUNTED)
}

async function oneKey(editor: Editor, uri: string, keys: Keys, i: number): Promise<Times> {
  editor.forget()
  const since = performance.now()
  const elapsed = () => performance.now() - since
  const version = editor.change(uri, keys.change(i))
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

async function echoed(job: Job): Promise<number[]> {
  const { editor, keys } = await openJob(job, ECHO)
  const uri = FOLDER + job.root
  await editor.until('textDocument/publishDiagnostics', isOf(uri, 1))
  const times: number[] = []
  for (let i = 0; i < UNCOUNTED + job.keys; i++) {
    editor.forget()
    const since = performance.now()
    const version = editor.change(uri, keys.change(i))
    await editor.until('textDocument/publishDiagnostics', isOf(uri, version))
    times.push(performance.now() - since)
  }
  editor.server.child.kill('SIGKILL')
  return times.slice(UNCOUNTED)
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
