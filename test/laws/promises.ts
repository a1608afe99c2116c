import type { Compiled } from '../../server/src/report/compiled.ts'
import { compiled, type Law } from './law.ts'
import { saidSorted } from './order.ts'
import { withAccepts, withExpectations } from './transform/promises.ts'

/** What is said of a job and must not move its numbers. */
export const PROMISES: readonly Law[] = [
  {
    name: 'accepted warnings',
    change: 'each warning of the job settled by an accept line',
    stays: 'every report, but for the places, the verdict and the marks of what is accepted',
    compared: 'byte for byte',
    view: butAccepted,
    changed: (job) => withAccepts(job, compiled(job)),
  },
  {
    name: 'expectations met',
    change: 'each floor expected to take the planks that it takes',
    stays: 'every report, but for the places and the order of what is said',
    compared: 'byte for byte',
    view: saidSorted,
    changed: (job) => withExpectations(job, compiled(job)),
  },
]

function butAccepted(compiled: Compiled): string {
  return saidSorted(compiled).replace(/^ *"(accepted|verdict)": .*\n/gm, '')
}
