// `npm run bench`: how long each stage of each example takes, and the command from a cold start.
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
import { growthRows } from './growth.ts'
import { medianOfFive, WARM } from './median.ts'
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

const { texts, roots } = readExamples()
console.log(
  `Medians of five, the stages warm after ${WARM} runs. Node ${process.versions.node}; calibration ${ms(calibration())}.\n`,
)
console.log(
  table(
    ['job', 'pieces', 'parse', 'bind', 'survey', 'lay and count', 'whole estimate'],
    roots.map((root) => stageRow(texts, root)),
  ),
)
console.log(
  table(
    ['from a cold start', 'time'],
    [
      ['node -e 0', ms(cold(['-e', '0']))],
      ['floorscribe --version', ms(cold([COMMAND, '--version']))],
      ...roots.map((root) => [
        `floorscribe estimate ${root}`,
        ms(cold([COMMAND, 'estimate', `examples/${root}`])),
      ]),
    ],
  ),
)
console.log(table(['walls doubled', '5 000', '10 000', 'ratio, at most 2.6'], growthRows(5000)))
