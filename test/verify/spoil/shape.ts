import { type Floor, type Spoiler, spoiler } from './spoiler.ts'

/** What JSON may hold in place of a number, a list or a text. */
const JUNK: readonly (readonly [string, unknown])[] = [
  ['half a nanometre', 0.5],
  ['not a number', Number.NaN],
  ['infinite', Number.POSITIVE_INFINITY],
  ['past the safe whole numbers', 2 ** 53],
  ['farther than a thousand kilometres', 10 ** 15 + 1],
  ['digits in quotes', '48'],
  ['null', null],
  ['nothing', undefined],
  ['a list', []],
  ['an object', {}],
]

function put(name: string, deed: (floor: Floor, junk: never) => void): Spoiler[] {
  return JUNK.map(([what, junk]) =>
    spoiler(`${name}: ${what}`, 'not-readable', (floor) => {
      deed(floor, junk as never)
      return true
    }),
  )
}

/** Layouts that are no layouts. */
export const SHAPE_SPOILERS: readonly Spoiler[] = [
  ...put('a coordinate', (floor, junk) => {
    floor.pieces[0]!.ring[0]![0] = junk
  }),
  ...put('the end of a span', (floor, junk) => {
    floor.pieces[0]!.along[1] = junk
  }),
  ...put('the kerf', (floor, junk) => {
    floor.rules.kerfAcross = junk
  }),
  spoiler('a vertex of three numbers', 'not-readable', (floor) => {
    ;(floor.pieces[0]!.ring[0] as number[]).push(0)
    return true
  }),
  spoiler('a ring of two vertices', 'not-readable', (floor) => {
    floor.pieces[0]!.ring.length = 2
    return true
  }),
  spoiler('a lock that no product has', 'not-readable', (floor) => {
    floor.rules.laid = 'upside down' as 'either way'
    return true
  }),
  spoiler('a rule that is none', 'not-readable', (floor) => {
    const breach = { value: 1, limit: 0, at: [0, 0] as [number, number], pieces: [] }
    floor.breaches.push({ ...breach, rule: 'colour' as 'stagger', direction: '' })
    return true
  }),
  spoiler('two pieces of one number', 'number-repeated', (floor) => {
    floor.pieces[1]!.piece = floor.pieces[0]!.piece
    return true
  }),
  spoiler('a course that is not listed', 'course-not-listed', (floor) => {
    floor.pieces[0]!.course = floor.courses.length + 1
    return true
  }),
]
