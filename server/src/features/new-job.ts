import type { UnitStyle } from '../units/length.ts'
import { readingLines } from './room-skeleton.ts'
import { type Insert, joined, stop, text } from './writing/insert.ts'
import { lineStart } from './writing/line-start.ts'

/** What the lines of a new job hold in its units, until they are filled in. */
interface Sizes {
  readonly tape: string
  readonly walls: string
  readonly base: string
  readonly plank: string
  readonly joints: string
  readonly gap: string
}

const IMPERIAL: Sizes = {
  tape: '1/16" + 1/32" per 10\'',
  walls: '4 1/2"',
  base: '1/2"',
  plank: '7" x 48", 1/4" thick',
  joints: '8" stagger, 10" shortest end, 2" narrowest rip',
  gap: '1/4"',
}

const METRIC: Sizes = {
  tape: '1.5 mm + 1 mm per 3000 mm',
  walls: '115 mm',
  base: '12 mm',
  plank: '180 mm x 1220 mm, 6 mm thick',
  joints: '200 mm stagger, 250 mm shortest end, 50 mm narrowest rip',
  gap: '6 mm',
}

/**
 * The text that a new job begins with: job, units, tape, a product, one room to be read, a floor. It
 * reads without an error; what is missing is said as still to come. Names that stand twice are none of
 * the places to be filled in: a rename changes both. Nor is a title that is given: who types next would
 * type over it.
 */
export function newJob(title: string | null = null, units: UnitStyle = 'feet-inches'): Insert {
  const imperial = units === 'feet-inches' || units === 'inches'
  const sizes = imperial ? IMPERIAL : METRIC
  return joined([
    text('floorscribe 1\njob '),
    title === null ? stop('New job') : text(title),
    text(`\nunits ${units}\ntape ${sizes.tape}  # what one reading is worth\n`),
    ...line('walls ', sizes.walls, ' thick\n'),
    ...line('base ', sizes.base, ' thick, kept\n\nproduct plank'),
    ...line(`\n${lineStart(2, 'plank')}`, sizes.plank, ''),
    ...line(`\n${lineStart(2, 'box')}`, '10', ' planks'),
    ...line(`\n${lineStart(2, 'joints')}`, sizes.joints, ''),
    ...line(`\n${lineStart(2, 'gap')}`, sizes.gap, '\n\n'),
    text('room room 1'),
    ...readingLines(4),
    text(`\nfloor all\n${lineStart(2, 'rooms')}room 1\n${lineStart(2, 'lay')}plank\n`),
  ])
}

function line(before: string, value: string, after: string): Insert {
  return [text(before), stop(value), text(after)]
}
