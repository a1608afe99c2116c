import { work } from './clock.ts'
import { median } from './median.ts'
import { SHAPES, type Shape } from './shapes.ts'
import { stagesOf } from './stages.ts'
import { ms, table } from './table.ts'

const WALLS = [625, 1250, 2500, 5000, 10_000]

/** What a doubling of the walls may cost. */
const MOST = 2.6

/** Of times shorter than this, in milliseconds, a ratio says nothing. */
const LEAST_TIME = 4

const ROUNDS = 5

/** How the time of each stage grows as the walls double: a table for each shape. */
export function growthTables(only = ''): string {
  const shapes = SHAPES.filter(({ name }) => name.includes(only))
  return shapes.map(growthTable).join('\n')
}

function growthTable({ name, text }: Shape): string {
  const jobs = WALLS.map((walls) => stagesOf(text(walls)))
  const rows = jobs[0]!.map((stage, i) => {
    const times = timesOf(jobs.map((stages) => stages[i]!.run))
    const middles = times.map(median)
    return [
      stage.name,
      ...middles.map(ms),
      worst(middles),
      worst(times.map((each) => Math.min(...each))),
    ]
  })
  return table([name, ...WALLS.map(String), `ratio, at most ${MOST}`, 'of least times'], rows)
}

/** The sizes in turn, round after round, so that what disturbs one disturbs all; the first is not counted. */
function timesOf(runs: readonly (() => unknown)[]): readonly (readonly number[])[] {
  const rounds = Array.from({ length: ROUNDS + 1 }, () => runs.map(work))
  return runs.map((_, size) => rounds.slice(1).map((round) => round[size]!))
}

/** The largest ratio of a time to that of half the walls. */
function worst(times: readonly number[]): string {
  const ratios = times
    .slice(1)
    .flatMap((time, i) => (times[i]! < LEAST_TIME ? [] : [time / times[i]!]))
  if (ratios.length === 0) return '-'
  const most = Math.max(...ratios)
  return `${most.toFixed(2)}${most > MOST ? ' !' : ''}`
}
