import { smallJob } from './jobs.ts'
import type { Law } from './law.ts'
import { saidSorted } from './order.ts'
import {
  withBlocksIncluded,
  withDiamond,
  withFilesReversed,
  withFolder,
  withNeedlessIncludes,
  withPartInlined,
  withStrangers,
} from './transform/includes.ts'
import type { Texts } from './transform/texts.ts'
import { butPlaces, everyByte } from './views.ts'

const butForPlaces = {
  stays: 'every report, but for the places and the order of what is said',
  compared: 'byte for byte',
  view: saidSorted,
} as const

/** Which file a line stands in. */
export const INCLUDES: readonly Law[] = [
  {
    name: 'products included',
    change: 'products moved into a file that the job includes',
    ...butForPlaces,
    changed: (job, dice) => withBlocksIncluded(job, ['product'], dice),
  },
  {
    name: 'rooms and floors included',
    change: 'all rooms, or all floors and products, moved into a file that the job includes',
    ...butForPlaces,
    changed: (job, dice) =>
      withBlocksIncluded(job, dice.pick(MOVED), { ...dice, chance: () => true }),
  },
  {
    name: 'included, and back',
    change: 'a job of two files put into one again',
    ...butForPlaces,
    jobs: partedJob,
    changed: withPartInlined,
  },
  {
    name: 'diamond',
    change: 'products in a list that two included files both include',
    ...butForPlaces,
    changed: withDiamond,
  },
  {
    name: 'needless includes',
    change: 'an empty file included, twice',
    stays: 'every report, but for the places in the text that it leads to',
    compared: 'byte for byte',
    view: butPlaces,
    changed: withNeedlessIncludes,
  },
  {
    name: 'strangers',
    change: 'files beside the job that it does not include, another job among them',
    stays: 'every report',
    compared: 'byte for byte',
    view: everyByte,
    changed: withStrangers,
  },
  {
    name: 'order of files',
    change: 'the files of a job handed over in another order',
    stays: 'every report',
    compared: 'byte for byte',
    view: everyByte,
    jobs: partedJob,
    changed: withFilesReversed,
  },
  {
    name: 'folder',
    change: 'the job and what it includes moved into a folder together',
    stays: 'every report, but for the places in the text that it leads to',
    compared: 'byte for byte',
    view: butPlaces,
    jobs: partedJob,
    changed: withFolder,
  },
]

const MOVED = [['room'], ['floor', 'product'], ['room', 'product']]

/** A job whose products stand in a file of their own. */
function partedJob(seed: number): Texts {
  for (let next = seed; ; next += 1_000_003) {
    const parted = withBlocksIncluded(smallJob(next), ['product'], ALWAYS)
    if (parted !== null) return parted
  }
}

const ALWAYS = {
  below: () => 0,
  between: () => 0,
  pick: <T>([first]: readonly T[]) => first!,
  chance: () => true,
}
