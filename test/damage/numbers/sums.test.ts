import { describe, expect, test } from 'vitest'
import { compile } from '../../../server/src/compile.ts'
import type { Compiled } from '../../../server/src/report/compiled.ts'
import { effort } from '../../effort.ts'
import { compileExample, EXAMPLE_JOBS } from '../../examples/read-example.ts'
import { randomJob } from '../../generate/job.ts'

/** A printed figure in tenths: "41.7 ft" is 417. */
function tenths(printed: string): number {
  const [, units, rest = '0'] = /^(-?[0-9]+)(?:\.([0-9]))? /.exec(printed)!
  return Number(units) * 10 + Number(rest)
}

/** Quantities told room by room and as a whole: where both are printed, the lines sum to the total. */
function wrongSums({ takeoff }: Compiled): readonly string[] {
  return takeoff.floors.flatMap(({ floor, quantities }) => {
    const byKey = Map.groupBy(
      quantities.filter(({ value }) => value !== null),
      ({ key }) => key,
    )
    return [...byKey].flatMap(([key, all]) => {
      const total = all.find(({ room }) => room === null)
      const parts = all.filter(({ room }) => room !== null)
      if (total === undefined || parts.length === 0) return []
      const sum = parts.reduce((so, part) => so + tenths(part.printed), 0)
      return sum === tenths(total.printed)
        ? []
        : [
            `${floor}, ${key}: ${parts.map(({ printed }) => printed).join(' + ')} is not ${total.printed}`,
          ]
    })
  })
}

/** What is bought: planks, spoil and spares, and what is left, are the planks in the boxes. */
function wrongBoxes({ takeoff, job }: Compiled): readonly string[] {
  return takeoff.products.flatMap(({ product, quantities }) => {
    const of = (key: string) => quantities.find((one) => one.key === key)?.value ?? null
    const [planks, spoil, boxes, left] = [of('planks'), of('spoil'), of('boxes'), of('planks left')]
    if (planks === null || spoil === null || boxes === null || left === null) return []
    const { perBox } = job.products.find(({ name }) => name.text === product)!
    // Spares are among what is left.
    const used = planks.n / planks.d + spoil.n / spoil.d + left.n / left.d
    return used === (boxes.n / boxes.d) * BigInt(perBox)
      ? []
      : [`${product}: ${used} in ${boxes.n} boxes`]
  })
}

describe('printed lines sum to the printed total', () => {
  test.each(EXAMPLE_JOBS)('%s', (name) => {
    const job = compileExample(name)
    expect([...wrongSums(job), ...wrongBoxes(job)]).toEqual([])
  })

  test('in jobs made by chance', () => {
    const wrong: string[] = []
    for (let seed = 0; seed < effort(12, 300); seed++) {
      const { files, root } = randomJob(seed)
      const job = compile(files, root)
      if ('missing' in job) continue
      wrong.push(...[...wrongSums(job), ...wrongBoxes(job)].map((one) => `seed ${seed}: ${one}`))
    }
    expect(wrong).toEqual([])
  })
})
