import { distance } from './apart.ts'
import { groupBy } from './exact.ts'
import type { Found } from './found.ts'
import type { Floor, Piece } from './layout.ts'
import type { Finding } from './report.ts'

/** A cross-cut rest: cut when course number `since` was laid, used in number `until`. */
interface Wait {
  readonly blank: Piece
  readonly since: number
  readonly until: number
}

/**
 * An offcut exists once it has been cut, and the pile of those that wait is small. Course by course
 * in the order of laying, each blank but the first of its plank comes out of the pile: it was put
 * there when the latest blank beside it along the plank was cut. What lies beside all earlier ones
 * across the plank was ripped off, is kept for the last course and is not counted.
 */
export function checkPile(floor: Floor, found: Found): readonly Finding[] {
  const orderOf = (piece: Piece) => found.courses.get(piece.course)!.order
  const first = [...groupBy(floor.pieces, ({ blank }) => blank).values()].map((same) => same[0]!)
  const planks = [...groupBy(first, ({ plank }) => plank).values()]
  const waits = planks.flatMap((blanks) => waitsOf(blanks, orderOf))
  return [
    ...planks.flatMap((blanks) => atOnce(blanks, orderOf)),
    ...waits.flatMap((wait) => tooLong(wait, floor)),
    ...tooMany(waits, floor),
  ]
}

function waitsOf(blanks: readonly Piece[], orderOf: (piece: Piece) => number): Wait[] {
  return blanks.flatMap((blank) => {
    const until = orderOf(blank)
    const earlier = blanks.filter((other) => orderOf(other) < until)
    const isRipped = earlier.every((other) => distance(other.across, blank.across) >= 0)
    const since = earlier
      .filter((other) => distance(other.along, blank.along) >= 0)
      .reduce((latest, other) => Math.max(latest, orderOf(other)), 0)
    return isRipped || since === 0 ? [] : [{ blank, since, until }]
  })
}

function atOnce(blanks: readonly Piece[], orderOf: (piece: Piece) => number): Finding[] {
  return [...groupBy(blanks, orderOf).values()]
    .filter((same) => same.length > 1)
    .map(([one, other]) => ({
      code: 'offcut-before-cut',
      text: `Pieces ${one!.piece} and ${other!.piece} come from plank ${one!.plank} and are laid in one course; an offcut is laid in a later one.`,
      course: other!.course,
      piece: other!.piece,
    }))
}

function tooLong({ blank, since, until }: Wait, { rules }: Floor): Finding[] {
  if (until - since <= rules.pile.courses) return []
  const { piece, course, plank } = blank
  const text = `Piece ${piece}, from plank ${plank}, waits ${until - since} courses; at most ${rules.pile.courses} are allowed.`
  return [{ code: 'offcut-waits-too-long', text, course, piece }]
}

function tooMany(waits: readonly Wait[], { rules }: Floor): Finding[] {
  const changes = groupBy(
    waits.flatMap(({ since, until }) => [
      { order: since, by: 1 },
      { order: until, by: -1 },
    ]),
    ({ order }) => order,
  )
  let waiting = 0
  return [...changes]
    .sort(([a], [b]) => a - b)
    .flatMap(([order, same]) => {
      waiting = same.reduce((sum, { by }) => sum + by, waiting)
      if (waiting <= rules.pile.pieces) return []
      const text = `When ${order} courses are laid ${waiting} offcuts wait; at most ${rules.pile.pieces} may.`
      return [{ code: 'pile-too-large', text }]
    })
}
