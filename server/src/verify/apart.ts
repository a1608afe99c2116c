import { groupBy } from './exact.ts'
import type { Floor, Piece } from './layout.ts'
import type { Finding } from './report.ts'
import { mm } from './say.ts'

type Span = readonly [number, number]

/** How far two spans are apart; below nought where they overlap. */
export function distance(a: Span, b: Span): number {
  return Math.max(a[0] - b[1], b[0] - a[1])
}

/**
 * Pieces of one plank lie apart in it, pair by pair: by a rip's kerf across it, or by a cross cut's
 * kerf along it and then by what is kept to spare, for the end piece is cut to the wall found that
 * day. Pieces of one blank are sawn out of one rectangle and need no saw cut that a span would show.
 */
export function checkApart(floor: Floor): readonly Finding[] {
  const planks = groupBy(floor.pieces, ({ plank }) => plank)
  return [...planks.values()].flatMap((pieces) => onOnePlank(pieces, floor))
}

/** The first faults of a plank are enough: where many pieces claim one plank, every pair is a fault. */
const ENOUGH = 20

function onOnePlank(pieces: readonly Piece[], floor: Floor): Finding[] {
  const faults: Finding[] = []
  for (const [i, a] of pieces.entries()) {
    for (let j = i + 1; j < pieces.length && faults.length < ENOUGH; j += 1) {
      faults.push(...pair(a, pieces[j]!, floor))
    }
  }
  return faults
}

function pair(a: Piece, b: Piece, { rules }: Floor): Finding[] {
  if (a.blank === b.blank) return []
  const along = distance(a.along, b.along)
  const across = distance(a.across, b.across)
  const { kerfAlong, kerfAcross, toSpare } = rules
  if (across >= kerfAlong || along >= kerfAcross + toSpare) return []
  const both = `Pieces ${a.piece} and ${b.piece} of plank ${a.plank}`
  const where = { course: b.course, piece: b.piece }
  if (along < 0 && across < 0) {
    return [
      { code: 'plank-cut-twice', text: `${both} are cut from the same part of it.`, ...where },
    ]
  }
  if (along < kerfAcross) {
    const text = `${both} are nearer than the saw cut: ${mm(kerfAcross)} for a cross cut, ${mm(kerfAlong)} for a rip.`
    return [{ code: 'kerf-ignored', text, ...where }]
  }
  const text = `${both} leave ${mm(along - kerfAcross)} to spare beside the saw cut; ${mm(toSpare)} is promised.`
  return [{ code: 'nothing-to-spare', text, ...where }]
}
