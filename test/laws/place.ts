import { inFigures, sameFigures } from './figures.ts'
import { exactJob, soundJob, squareJob } from './jobs.ts'
import type { Law } from './law.ts'
import { mirrored } from './transform/mirror.ts'
import { inEvery } from './transform/texts.ts'
import { turnedRight } from './transform/turn.ts'
import { fromOtherCorners } from './transform/walls.ts'

const sameValues = {
  stays: 'all',
  compared: 'values',
  view: inFigures,
  holds: sameFigures,
} as const

export const PLACE: readonly Law[] = [
  ...[exactJob, squareJob, soundJob].flatMap((jobs): Law[] => [
    {
      name: `turn ${jobs.name}`,
      change: '',
      ...sameValues,
      jobs,
      changed: (job) => inEvery(job, turnedRight),
    },
    {
      name: `half turn ${jobs.name}`,
      change: '',
      ...sameValues,
      jobs,
      changed: (job) => inEvery(job, (text) => turnedRight(turnedRight(text))),
    },
    {
      name: `mirror ${jobs.name}`,
      change: '',
      ...sameValues,
      jobs,
      changed: (job) => inEvery(job, mirrored),
    },
    {
      name: `corner ${jobs.name}`,
      change: '',
      ...sameValues,
      jobs,
      changed: (job, dice) => inEvery(job, (text) => fromOtherCorners(text, dice)),
    },
  ]),
]
