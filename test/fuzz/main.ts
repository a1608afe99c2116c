// `npm run fuzz -- SECONDS [--seed N] [--only parser|job]`: texts by chance until the time is up.
import { parseArgs } from 'node:util'
import { ms, table } from '../bench/table.ts'
import { codesIn } from '../errors/codes.ts'
import { PROVOKED } from './corpus.ts'
import { emptyTally, fuzz, type Tally } from './fuzz.ts'
import { keep } from './kept.ts'
import { JOB, PARSER, type Target } from './targets.ts'

/** Every message: those with a file that provokes them, and those that stand in the source. */
const ALL_CODES = [
  ...new Set([...PROVOKED, ...codesIn('language', 'units', 'job', 'survey', 'layout', 'takeoff')]),
].sort()

/** Texts between two looks at the clock: a second or less. */
const BATCH = { parser: 500, job: 10 }

const USAGE = 'npm run fuzz -- SECONDS [--seed N] [--only parser|job]'

function main(): void {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { seed: { type: 'string' }, only: { type: 'string' } },
  })
  const seconds = Number(positionals[0])
  const seed = values.seed === undefined ? Date.now() % 1_000_000 : Number(values.seed)
  const targets = [PARSER, JOB].filter(({ name }) => (values.only ?? name) === name)
  if (!(seconds > 0) || !Number.isInteger(seed) || targets.length === 0) {
    console.error(USAGE)
    process.exitCode = 2
    return
  }
  console.log(`seed ${seed}, ${seconds} s`)
  const rows = targets.map((target) => campaign(target, seed, seconds / targets.length))
  console.log(closingTable(rows))
  const reached = new Set(rows.flatMap(({ tally }) => [...tally.codes.keys()]))
  const missed = ALL_CODES.filter((code) => !reached.has(code))
  console.log(`codes reached: ${ALL_CODES.length - missed.length} of ${ALL_CODES.length}`)
  if (missed.length > 0) console.log(`not reached: ${missed.join(', ')}`)
  if (rows.some(({ kept }) => kept.length > 0)) process.exitCode = 1
}

interface Row {
  readonly target: Target
  readonly tally: Tally
  readonly seconds: number
  readonly kept: readonly string[]
}

function campaign(target: Target, seed: number, seconds: number): Row {
  const tally = emptyTally()
  const started = performance.now()
  const spent = () => (performance.now() - started) / 1000
  const count = BATCH[target.name]
  while (spent() < seconds) fuzz(target, { seed, from: tally.runs, count, timed: true }, tally)
  const took = spent()
  const kept = [...tally.faults.values()].map(({ text, fault, run }) => {
    const name = keep(target, text, fault)
    console.log(`${target.name}, run ${run}: ${fault.promise}: ${fault.detail}\nkept: ${name}`)
    return name
  })
  return { target, tally, seconds: took, kept }
}

function closingTable(rows: readonly Row[]): string {
  const head = ['', 'runs', 'runs/s', 'kept', 'slowest', 'in run', 'codes', 'laid']
  return table(
    head,
    rows.map(({ target, tally, seconds, kept }) => [
      target.name,
      `${tally.runs}`,
      (tally.runs / seconds).toFixed(0),
      `${kept.length}`,
      ms(tally.slowest.ms),
      `${tally.slowest.run}`,
      `${tally.codes.size}`,
      `${tally.laid}`,
    ]),
  )
}

main()
