import type { Word } from '../../language/words.ts'
import type { UnitStyle } from '../../units/length.ts'
import { samplesIn } from '../../units/samples.ts'
import { lineStart } from '../writing/line-start.ts'

const ON_WALL = `30", 1' 2" from right`
const IN_ROOM = `4' 0" from west, 3' 2" from north`

/** What follows a word in a line as people write it; lengths in feet and inches. */
const REST: ReadonlyMap<string, string> = new Map([
  ['floorscribe', '1'],
  ['job', 'Heron Cottage, upper floor'],
  ['units', 'feet-inches, bare inches'],
  ['tape', `1/16" + 1/32" per 10', about 1/2", touching base`],
  ['walls', '4 1/2" thick'],
  ['base', '1/2" thick, off and back'],
  ['jambs', '1/2" under'],
  ['allowance', '10%'],
  ['pile', '8 pieces, 6 courses'],
  ['include', 'products.floor'],
  ['room', 'bedroom 2'],
  ['product', 'river larch'],
  ['floor', 'upstairs'],
  ['prices', 'spring list'],
  ['site', '4 Alder Row, flat #2'],
  ['date', '2027-04-12'],
  ['revision', '2, closet added'],
  ['note', 'radiator hides the corner'],
  ['tag', 'client keeps the rug'],
  ['hold', 'slab moisture test, by the mason, on sheet 4'],
  ['accept', 'closing error, because the house leans'],
  ['slant', `4' 3", 3' 0" east, 3' 0" south`],
  ['door', `${ON_WALL}, to hall, swings in`],
  ['opening', `3' 0", 1' 2" from left, to hall, cased`],
  ['pass-through', `3' 0", 1' 2" from left, to kitchen`],
  ['closet', `4' 0", 3' 2" from left, 2' 0" deep, 6' 0" inside`],
  ['alcove', `4' 0", 1' 0" from left, 1' 6" deep`],
  ['hearth', `5' 0", 7' 3" from left, 1' 6" deep`],
  ['again', `12' 4 1/8"`],
  ['parts', `3' 6", door 30", 6' 4"`],
  ['corner', 'throat'],
  ['diagonal', `16' 3 7/8", from north-west to south-east`],
  ['across', `12' 2 1/8", from north to south, middle`],
  ['tie', `6' 1 1/2", 4' 0" along north, 4' 6" along west`],
  ['square', 'north-west'],
  ['out of square', ''],
  ['column', `8" round, ${IN_ROOM}`],
  ['island', `6' 0" east-west, 3' 0" north-south, ${IN_ROOM}`],
  ['stairwell', `9' 0" east-west, 3' 0" north-south, ${IN_ROOM}`],
  ['vent', `4" east-west, 10" north-south, ${IN_ROOM}`],
  ['subfloor', 'slab'],
  ['existing', 'carpet, pad, tack strip'],
  ['plank', '6 3/4" x 47 7/8", 3/16" thick'],
  ['box', '10 planks'],
  ['pad', 'attached'],
  ['joints', '8" stagger, 10" shortest end, 2" narrowest rip'],
  ['gap', '1/4"'],
  ['run', `60' long, 40' wide, through doorways`],
  ['laid', 'left to right'],
  ['cut', 'saw, 1/8" kerf, 1/4" to spare'],
  ['spoil', '3 planks'],
  ['spares', '1 box'],
  ['rooms', 'hall, bedroom 2, bedroom 2 closet'],
  ['lay', 'river larch, running east-west'],
  ['start', 'along north of hall'],
  ['shift', '1" south'],
  ['break', 'hall to kitchen, with t moulding'],
  ['edge', 'hall to bath, with t moulding'],
  ['expect', '21 boxes, within 5%'],
  ['currency', 'USD, 2 decimals'],
  ['price', 'river larch, 4.35 per sq ft, sold by the box'],
  ['labour', 'floating plank, 2.90 per sq ft'],
  ['markup', '25% on materials'],
  ['margin', '30%'],
  ['tax', '8% on materials, by invoice'],
  ['supplier', 'the yard by the river'],
  ['discount', '5% on materials'],
  ['deposit', '40%'],
])

/** A line of a word as it may be written, in the job's units. */
export function wordExample({ word, home }: Pick<Word, 'word' | 'home'>, units: UnitStyle): string {
  const rest = REST.get(word) ?? `12' 4 1/2"`
  const start = home === 'file' ? `${word} ` : lineStart(0, word)
  return `${start}${samplesIn(rest, units)}`.trimEnd()
}
