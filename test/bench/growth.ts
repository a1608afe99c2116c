import { bind } from '../../server/src/job/bind.ts'
import { parse } from '../../server/src/language/parse.ts'
import { survey } from '../../server/src/survey/survey-job.ts'
import { medianOfFive } from './median.ts'
import { ms } from './table.ts'

/** A room with a tooth for every four walls: as many walls as wished, and it closes. */
function comb(teeth: number): string {
  const tooth = `  north       2' 0"\n  east        5' 0"\n  north       2' 0"\n  west        5' 0"\n`
  const rest = `  north       2' 0"\n  east        20' 0"\n  south       ${4 * teeth + 2}' 0"\n  west        20' 0"\n`
  return `floorscribe 1\njob Comb\nunits feet-inches\ntape 1/16"\n\nroom comb\n${tooth.repeat(teeth)}${rest}`
}

/** How the time grows when the walls double: a row for each stage, t(n), t(2n) and their ratio. */
export function growthRows(walls: number): string[][] {
  const [small, large] = [walls / 4, walls / 2].map((teeth) => comb(teeth))
  const jobOf = (text: string) => bind([parse('comb.floor', text)], 'comb.floor').job
  const [jobSmall, jobLarge] = [jobOf(small!), jobOf(large!)]
  return [
    growth(
      'parse',
      () => parse('comb.floor', small!),
      () => parse('comb.floor', large!),
    ),
    growth(
      'survey',
      () => survey(jobSmall),
      () => survey(jobLarge),
    ),
  ]
}

function growth(stage: string, small: () => unknown, large: () => unknown): string[] {
  const [before, after] = [medianOfFive(small, 3), medianOfFive(large, 3)]
  return [stage, ms(before), ms(after), (after / before).toFixed(2)]
}
