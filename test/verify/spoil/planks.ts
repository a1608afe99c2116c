import { lengthOf, onOnePlank, type Piece, type Spoiler, spoiler, to } from './spoiler.ts'

function isFirstAlong(a: Piece, b: Piece): boolean {
  return a.along[1] <= b.along[0] && a.across[0] < b.across[1] && b.across[0] < a.across[1]
}

function isBelow(a: Piece, b: Piece): boolean {
  return a.across[1] <= b.across[0] && a.along[0] < b.along[1] && b.along[0] < a.along[1]
}

/** Falsified planks: what a piece is cut from, and when. */
export const PLANK_SPOILERS: readonly Spoiler[] = [
  spoiler('plank overdrawn by 1 nm', 'plank-overdrawn', (floor) => {
    const piece = floor.pieces[0]!
    piece.along[1] = lengthOf(floor, piece) + 1
    return true
  }),
  spoiler('span before the plank begins', 'plank-overdrawn', (floor) => {
    floor.pieces[0]!.across[0] = -1
    return true
  }),
  spoiler('span 1 nm short of its piece', 'span-too-small', (floor) => {
    const piece = floor.pieces[0]!
    const us = piece.ring.map(([u]) => u)
    piece.along[1] = piece.along[0] + Math.max(...us) - Math.min(...us) - 1
    return true
  }),
  spoiler('plank cut twice', 'plank-cut-twice', (floor) =>
    to(floor.pieces[1], (piece) => {
      const first = floor.pieces[0]!
      Object.assign(piece, {
        plank: first.plank,
        along: [...first.along],
        across: [...first.across],
      })
    }),
  ),
  spoiler('kerf of the cross cut ignored', 'kerf-ignored', (floor) => {
    if (floor.rules.kerfAcross === 0) return false
    return to(onOnePlank(floor, isFirstAlong), ({ a, b }) => {
      a.along[1] = b.along[0] - floor.rules.kerfAcross + 1
    })
  }),
  spoiler('kerf of the rip ignored', 'kerf-ignored', (floor) => {
    if (floor.rules.kerfAlong === 0) return false
    return to(onOnePlank(floor, isBelow), ({ a, b }) => {
      a.across[1] = b.across[0] - floor.rules.kerfAlong + 1
    })
  }),
  spoiler('nothing to spare', 'nothing-to-spare', (floor) => {
    const { kerfAcross, toSpare } = floor.rules
    if (toSpare === 0) return false
    return to(onOnePlank(floor, isFirstAlong), ({ a, b }) => {
      a.along[1] = b.along[0] - kerfAcross - toSpare + 1
    })
  }),
  spoiler('plank of a length that is not sold', 'plank-not-of-product', (floor) => {
    floor.planks[0]!.length += 1
    return true
  }),
  spoiler('plank listed and not used', 'plank-unused', (floor) => {
    const number = 1 + Math.max(...floor.planks.map(({ plank }) => plank))
    floor.planks.push({ plank: number, length: floor.planks[0]!.length })
    return true
  }),
  spoiler('plank not listed', 'plank-not-listed', (floor) => floor.planks.shift() !== undefined),
  spoiler('offcut laid in the course that cuts it', 'offcut-before-cut', (floor) =>
    to(
      floor.pieces.find((b) =>
        floor.pieces.some((a) => a.course === b.course && a.plank !== b.plank),
      ),
      (b) => {
        b.plank = floor.pieces.find((a) => a.course === b.course && a.plank !== b.plank)!.plank
      },
    ),
  ),
  spoiler('pile too large', 'pile-too-large', (floor) => {
    floor.rules.pile.pieces = 0
    return onOnePlank(floor, isFirstAlong) !== undefined
  }),
  spoiler('offcut waits too long', 'offcut-waits-too-long', (floor) => {
    floor.rules.pile.courses = 0
    return onOnePlank(floor, isFirstAlong) !== undefined
  }),
  spoiler('pieces of one blank in two courses', 'blank-torn', (floor) =>
    to(
      floor.pieces.find(({ course }) => course !== floor.pieces[0]!.course),
      (piece) => {
        piece.blank = floor.pieces[0]!.blank
      },
    ),
  ),
  spoiler('pieces of one blank farther apart than it is long', 'blank-torn', (floor) =>
    to(
      floor.pieces.find((piece) => {
        const first = floor.pieces[0]!
        return piece !== first && piece.course === first.course && piece.turned === first.turned
      }),
      (piece) => {
        const { blank, plank, along } = floor.pieces[0]!
        Object.assign(piece, { blank, plank, along: [...along] })
      },
    ),
  ),
  spoiler('bound of planks above what is used', 'bound-above-use', (floor) => {
    floor.bound.planks = floor.planks.length + 1
    return true
  }),
  spoiler('bound of boxes above what is used', 'bound-above-use', (floor) => {
    floor.bound.boxes = floor.planks.length + 1
    return true
  }),
  spoiler('bound below the bare area', 'bound-below-area', (floor) => {
    floor.bound.planks = 0
    return true
  }),
]
