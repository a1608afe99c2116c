import { exactJob } from './jobs.ts'
import type { Law } from './law.ts'
import { type NameKind, renamed } from './transform/names.ts'
import { everyByte } from './views.ts'

function names(name: string, change: string, kinds: readonly NameKind[]): Law {
  return {
    name,
    change,
    stays: 'every report, the new names put back',
    compared: 'byte for byte',
    view: everyByte,
    changed: (job, dice) => renamed(job, kinds, dice),
  }
}

/** A name is a handle: it takes part in no number and in no order. */
export const NAMES: readonly Law[] = [
  names('names of rooms and closets', 'each to another of the same length', ['room']),
  { ...names('names of walls', 'each to another of the same length', ['wall']), jobs: exactJob },
  names('names of products and floors', 'each to another of the same length', ['product', 'floor']),
  names('all names', 'each to another of the same length', [
    'room',
    'wall',
    'product',
    'floor',
    'opening',
    'corner',
  ]),
]
