import type { Compiled } from '../../server/src/report/compiled.ts'
import { severalFloorsJob, severalProductsJob } from './jobs.ts'
import type { Law } from './law.ts'
import {
  withBlocksMoved,
  withFreeLinesFirst,
  withKindReordered,
  withLinesReordered,
} from './transform/order.ts'
import { inEvery } from './transform/texts.ts'
import { butPlaces, everyQuantity } from './views.ts'

/** The order in which things are written, where it says nothing. */
export const ORDER: readonly Law[] = [
  {
    name: 'order of blocks',
    change: 'blocks and file lines in any order, rooms and floors among themselves as written',
    stays: 'every report, but for the places and the order of what is said',
    compared: 'byte for byte',
    view: saidSorted,
    changed: (job, dice) =>
      inEvery(job, (text) => withBlocksMoved(text, ['room', 'floor', 'product'], dice)),
  },
  {
    name: 'order of floors',
    change: 'floors in any order',
    jobs: severalFloorsJob,
    stays: 'the quantities of each',
    compared: 'byte for byte',
    view: quantitiesSorted,
    changed: (job, dice) => inEvery(job, (text) => withKindReordered(text, 'floor', dice)),
  },
  {
    name: 'order of products',
    change: 'products in any order',
    jobs: severalProductsJob,
    stays: 'the quantities of each',
    compared: 'byte for byte',
    view: quantitiesSorted,
    changed: (job, dice) => inEvery(job, (text) => withKindReordered(text, 'product', dice)),
  },
  {
    name: 'order of lines',
    change: 'the lines of product, floor and job blocks in any order',
    stays: 'every report, but for the places and the order of what is said',
    compared: 'byte for byte',
    view: saidSorted,
    changed: (job, dice) => inEvery(job, (text) => withLinesReordered(text, dice)),
  },
  {
    name: 'free lines first',
    change: 'columns, islands, vents, diagonals told before the walls of their room',
    stays: 'every report, but for the places and the order of what is said',
    compared: 'byte for byte',
    view: saidSorted,
    changed: (job) => inEvery(job, withFreeLinesFirst),
  },
]

/** What is said stands in the order of its places, which move: line by line in the alphabet's order. */
export function saidSorted(compiled: Compiled): string {
  return butPlaces(compiled).split('\n').sort().join('\n')
}

function quantitiesSorted(compiled: Compiled): string {
  const { complete, floors, products } = JSON.parse(everyQuantity(compiled))
  const sorted = (list: readonly unknown[]) => list.map((one) => JSON.stringify(one)).sort()
  return [complete, ...sorted(floors), ...sorted(products)].join('\n')
}
