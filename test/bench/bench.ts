// `npm run bench`: how long each stage of each example takes, the command from a cold start, how the
// time grows with the walls, the worst that long and short texts ask for, what a key and an answer at the
// cursor cost in a text held open, and the page's redraw. With an argument only the tables whose name begins so, and of those only the shapes whose name has the second: `growth comb`.
import { spawnSync } from 'node:child_process'
import { globSync, readFileSync } from 'node:fs'
import { basename } from 'node:path'
import { type Compiled, compile } from '../../server/src/compile.ts'
import { bind } from '../../server/src/job/bind.ts'
import { isRoot } from '../../server/src/job/includes.ts'
import { parse } from '../../server/src/language/parse.ts'
import { estimateText } from '../../server/src/report/text/estimate.ts'
import { survey } from '../../server/src/survey/survey-job.ts'
import { calibration } from './calibrate.ts'
import { featureTable } from './features.ts'
import { growthTables } from './growth.ts'
import { largeTable } from './large.ts'
import { liveTable } from './live.ts'
import { medianOfFive, WARM } from './median.ts'
import { pageTable } from './page/page-table.ts'
import { serverTables } from './server.ts'
import { smallTable } from './small.ts'
import { ms, table } from './table.ts'

const COMMAND = 'dist/floorscribe.mjs'

/** The examples' folder as `compile` takes it, and which of its files are jobs. */
function readExamples() {
  const paths = globSync('examples/*.floor').sort()
  const texts = new Map(paths.map((path) => [basename(path), readFileSync(path, 'utf8')]))
  const roots = [...texts].filter(([file, text]) => isRoot(parse(file, text))).map(([file]) => file)
  return { texts, roots }
}

function compiledFrom(texts: ReadonlyMap<string, string>, root: string): Compiled {
  const result = compile(texts, root)
  if ('missing' in result) throw new Error(`${root} misses ${result.missing.join(', ')}`)
  return result
}

function stageRow(texts: ReadonlyMap<string, string>, root: string): string[] {
  const { trees, job, floors } = compiledFrom(texts, root)
  const parsing = medianOfFive(() => trees.map((tree) => parse(tree.file, tree.text)), WARM)
  const binding = medianOfFive(() => bind(trees, root), WARM)
  const surveying = medianOfFive(() => survey(job), WARM)
  const whole = medianOfFive(() => estimateText(compiledFrom(texts, root)), WARM)
  const laying = Math.max(0, whole - parsing - binding - surveying)
  const pieces = floors.reduce((sum, floor) => sum + floor.published.pieces.length, 0)
  return [root, String(pieces), ...[parsing, binding, surveying, laying, whole].map(ms)]
}

/** One process from start to end, its output thrown away. */
function cold(args: readonly string[]): number {
  return medianOfFive(() => spawnSync(process.execPath, args, { stdio: 'ignore' }))
}

function examplesTable(): string {
  const { texts, roots } = readExamples()
  return table(
    ['job', 'pieces', 'parse', 'bind', 'survey', 'lay and count', 'whole estimate'],
    roots.map((root) => stageRow(texts, root)),
  )
}

function coldTable(): string {
  const estimates = readExamples().roots.map((root) => [
    `floorscribe estimate ${root}`,
    ms(cold([COMMAND, 'estimate', `examples/${root}`])),
  ])
  return table(
    ['from a cold start', 'time'],
    [
      ['node -e 0', ms(cold(['-e', '0']))],
      ['floorscribe --version', ms(cold([COMMAND, '--version']))],
      ...estimates,
    ],
  )
}

type Table = (only: string) => string | Promise<string>

const TABLES: ReadonlyMap<string, Table> = new Map<string, Table>([
  ['examples', examplesTable],
  ['cold', coldTable],
  ['small', smallTable],
  ['growth', growthTables],
  ['large', largeTable],
  ['live', liveTable],
  ['features', featureTable],
  ['page', pageTable],
  ['server', serverTables],
])

const [wanted = '', only = ''] = process.argv.slice(2)
console.log(
  `Medians of five, the stages of examples warm after ${WARM} runs; growth, short and large texts in ` +
    `this thread's own time. Node ${process.versions.node}; calibration ${ms(calibration())}.\n`,
)
for (const [name, print] of TABLES) if (name.startsWith(wanted)) console.log(await print(only))
