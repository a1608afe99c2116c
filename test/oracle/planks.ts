import type { Product } from './job.ts'
import type { PublishedFloor, PublishedPiece } from './published.ts'
import type { Used } from './takeoff.ts'

type Span = readonly [number, number]

/** How far two spans lie apart; below nothing where they overlap. */
const apart = (a: Span, b: Span): bigint => BigInt(Math.max(a[0], b[0]) - Math.min(a[1], b[1]))

/** Planks begun, by length. */
export function usedBy({ planks, pieces }: PublishedFloor): Used {
  const used = new Map<bigint, bigint>()
  for (const { plank, length } of planks) {
    if (!pieces.some((piece) => piece.plank === plank)) continue
    used.set(BigInt(length), (used.get(BigInt(length)) ?? 0n) + 1n)
  }
  return used
}

/** What a plank cannot give: two blanks nearer in it than the saw and the spare need. */
export function overcutPlanks(floor: PublishedFloor, product: Product): readonly number[] {
  const onPlank = Map.groupBy(floor.pieces, ({ plank }) => plank)
  return [...onPlank].flatMap(([plank, pieces]) => {
    const clash = pieces.some((one, i) =>
      pieces
        .slice(i + 1)
        .some((other) => one.blank !== other.blank && !areApart(one, other, product)),
    )
    return clash ? [plank] : []
  })
}

function areApart(
  a: PublishedPiece,
  b: PublishedPiece,
  { kerfAcross, kerfAlong, toSpare }: Product,
): boolean {
  return apart(a.along, b.along) >= kerfAcross + toSpare || apart(a.across, b.across) >= kerfAlong
}

/** Rests that are laid no later than what they were cut from. */
export function laidTooEarly({ pieces, courses }: PublishedFloor): readonly number[] {
  const orderOf = ({ course }: PublishedPiece) =>
    courses.find((one) => one.course === course)?.order ?? 0
  return [...Map.groupBy(pieces, ({ plank }) => plank)].flatMap(([plank, all]) => {
    const blanks = [...Map.groupBy(all, ({ blank }) => blank).values()].map(
      ([first]) => first && orderOf(first),
    )
    return new Set(blanks).size < blanks.length ? [plank] : []
  })
}
