import { inFigures, sameFigures, sameMeasures } from './figures.ts'
import { exactJob } from './jobs.ts'
import type { Law } from './law.ts'
import {
  asBothJambs,
  fromTheOtherEnd,
  inNamedWalls,
  inParts,
  readAgain,
  withWallSplit,
} from './transform/openings.ts'
import { inEvery } from './transform/texts.ts'

const sameValues = {
  stays: 'quantities, to their rounding; counts, bounds and breaches exactly',
  compared: 'values',
  view: inFigures,
  holds: sameFigures,
  jobs: exactJob,
} as const

/** What stands on walls, told in the ways that the language has for it. Readings here are exact. */
export const OPENINGS: readonly Law[] = [
  {
    name: 'from the other end',
    change: 'distances of openings from the right for the left, and the other way round',
    ...sameValues,
    changed: (job, dice) => inEvery(job, (text) => fromTheOtherEnd(text, dice)),
  },
  {
    name: 'both jambs',
    change: 'a distance and a width told as both jambs off one hook',
    ...sameValues,
    changed: (job, dice) => inEvery(job, (text) => asBothJambs(text, dice)),
  },
  {
    name: 'in a named wall',
    change: 'openings at the end of their room with their wall named, for under it',
    ...sameValues,
    changed: (job) => inEvery(job, inNamedWalls),
  },
  {
    name: 'in parts',
    change: 'the parts of a wall for the distances of what stands on it',
    ...sameValues,
    changed: (job) => inEvery(job, inParts),
  },
  {
    name: 'read again',
    change: 'walls read a second time, to the same mark',
    ...sameValues,
    changed: (job, dice) => inEvery(job, (text) => readAgain(text, dice)),
  },
  {
    name: 'wall in two',
    change: 'a straight wall told as two in line',
    ...sameValues,
    // Laying starts along the longest wall as it is told, so the planks may begin elsewhere.
    stays: 'areas and lengths, to their rounding',
    holds: sameMeasures,
    changed: (job, dice) => inEvery(job, (text) => withWallSplit(text, dice)),
  },
]
