import { expect, test } from 'vitest'
import { effort } from '../effort.ts'
import { held, type Law } from './law.ts'

/** How many jobs each law is held on. */
const QUICK = 3
const FULL = 2000

/** Tests each law on its share of jobs: seeds from 0, so that a failure can be had again. */
export function holdLaws(laws: readonly Law[]): void {
  for (const law of laws) {
    test(law.name, () => {
      const wanted = effort(QUICK, FULL)
      const { jobs, broken } = held(law, wanted)
      expect(broken.slice(0, 3).join('\n'), `${broken.length} of ${jobs} jobs`).toBe('')
      expect(jobs).toBe(wanted)
    })
  }
}
