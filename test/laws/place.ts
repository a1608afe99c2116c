import { inFigures, sameFigures, sameMeasures } from './figures.ts'
import { exactJob, roomsInARow, soundJob } from './jobs.ts'
import type { Law } from './law.ts'
import { mirrored } from './transform/mirror.ts'
import { withKindReordered } from './transform/order.ts'
import { type Changed, inAllOrNone, inEvery, inRoot, type Texts } from './transform/texts.ts'
import { turnedRight } from './transform/turn.ts'
import { fromOtherCorners, withRoomBefore, withRoomBehind } from './transform/walls.ts'
import { everyQuantity } from './views.ts'

const sameAll = {
  stays: 'quantities, to their rounding; counts, bounds and breaches exactly',
  compared: 'values',
  view: inFigures,
  holds: sameFigures,
} as const

/**
 * With slants some corner is rounded to the next nanometre once a room is told otherwise, and a plan can
 * turn on that: some three jobs in a hundred take a plank or a breach more or less.
 */
const sameShape = {
  ...sameAll,
  stays: 'areas and lengths, to their rounding',
  holds: sameMeasures,
} as const

const turned = (job: Texts): Changed | null => inEvery(job, turnedRight)
const halfTurned = (job: Texts): Changed | null =>
  inEvery(job, (text) => turnedRight(turnedRight(text)))
const inMirror = (job: Texts): Changed | null => inAllOrNone(job, mirrored)

const TURNED = 'the house turned by a quarter turn: every way is the next one'
const HALF_TURNED = 'the house turned by half a turn'
const MIRRORED = 'the house and the hand of its locks in a mirror'
const CORNERS = 'rooms told from other corners'
const BEFORE = 'a room that nothing ties to the others before them all: the house lies elsewhere'

/** Where a house lies, how it is turned, and where a room is begun. */
export const PLACE: readonly Law[] = [
  { name: 'quarter turn', change: TURNED, ...sameAll, jobs: exactJob, changed: turned },
  { name: 'half turn', change: HALF_TURNED, ...sameAll, jobs: exactJob, changed: halfTurned },
  { name: 'mirror', change: MIRRORED, ...sameAll, jobs: exactJob, changed: inMirror },
  {
    name: 'other corner',
    change: CORNERS,
    ...sameAll,
    jobs: exactJob,
    changed: (job, dice) => inEvery(job, (text) => fromOtherCorners(text, dice)),
  },
  {
    name: 'moved',
    change: BEFORE,
    ...sameAll,
    jobs: exactJob,
    changed: (job) => inRoot(job, withRoomBefore),
  },
  {
    name: 'order of rooms',
    change: 'rooms in any order, where there is but one way through them',
    ...sameAll,
    jobs: roomsInARow,
    changed: (job, dice) => inEvery(job, (text) => withKindReordered(text, 'room', dice)),
  },
  {
    name: 'quarter turn, any angle',
    change: TURNED,
    ...sameAll,
    jobs: soundJob,
    changed: turned,
  },
  {
    name: 'half turn, any angle',
    change: HALF_TURNED,
    ...sameAll,
    jobs: soundJob,
    changed: halfTurned,
  },
  { name: 'mirror, any angle', change: MIRRORED, ...sameShape, jobs: soundJob, changed: inMirror },
  {
    name: 'other corner, any angle',
    change: CORNERS,
    ...sameShape,
    jobs: soundJob,
    changed: (job, dice) => inEvery(job, (text) => fromOtherCorners(text, dice)),
  },
  {
    name: 'moved, any angle',
    change: BEFORE,
    ...sameAll,
    jobs: soundJob,
    changed: (job) => inRoot(job, withRoomBefore),
  },
  {
    name: 'a room that is not laid',
    change: 'a room that nothing ties to the others, and no floor lists, behind them all',
    stays: 'every quantity',
    compared: 'byte for byte',
    view: everyQuantity,
    changed: (job) => inRoot(job, withRoomBehind),
  },
]
