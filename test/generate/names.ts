import type { Draw } from './draw.ts'

const ROOMS = [
  'den',
  'hall',
  'bunk room',
  'study',
  'kitchen',
  "kids' room",
  'living room',
  'bedroom 1',
  'bedroom 2',
  'upper landing',
]

/** Names that have hurt programs, or that the language has to tell from its own words. */
const NASTY_ROOMS = [
  '__proto__',
  'constructor',
  'toString',
  'غرفة النوم',
  '居間',
  'Kinderzimmer Süd',
  '2nd bath',
  'hall of mirrors',
  'room',
  'floor',
  'door to nowhere',
  'about town',
  'kids’ den',
  'Ω',
  `the ${'very '.repeat(40)}long gallery`,
  'a-b/c.d;e(f)[g]{h}',
  'null',
  '=1+1',
]

const PRODUCTS = ['river larch', 'reed click', 'broad heath', 'strip alder', 'even moss']
const NASTY_PRODUCTS = ['hasOwnProperty', 'ألواح', '5 mm ply', 'oak and ash', 'plank', 'Eiche °']

/** So many names of rooms that no two share. */
export function roomNames(count: number, draw: Draw): readonly string[] {
  return namesFrom(ROOMS, NASTY_ROOMS, count, draw)
}

export function productNames(count: number, draw: Draw): readonly string[] {
  return namesFrom(PRODUCTS, NASTY_PRODUCTS, count, draw)
}

function namesFrom(
  plain: readonly string[],
  nasty: readonly string[],
  count: number,
  draw: Draw,
): readonly string[] {
  const left = [...plain]
  const hurting = [...nasty]
  return Array.from({ length: count }, () => {
    const from = draw.nasty && draw.dice.chance(40) ? hurting : left
    if (from === hurting) draw.has('name: nasty')
    return from.splice(draw.dice.below(from.length), 1)[0]!
  })
}

const NEEDS_QUOTES = /^[0-9=]|(^|[\s-])(to|of|and|about|within)([\s-]|$)/i

/** A name as a line has it: in quotes where it must, at times where it may, or in other capitals. */
export function named(name: string, { dice, nasty, has }: Draw): string {
  if (NEEDS_QUOTES.test(name) || (nasty && dice.chance(10))) {
    has('name: in quotes')
    return `"${name}"`
  }
  if (nasty && dice.chance(5) && /^[a-z ]+$/.test(name)) {
    has('name: in other capitals')
    return name.toUpperCase()
  }
  return name
}
