import {
  lengthOf,
  moveJoint,
  type Piece,
  pieceOf,
  plainJoints,
  type Spoiler,
  spoiler,
  to,
} from './spoiler.ts'

/** Swaps what a span says of the two ends, as if the other end had been cut off. */
function fromOtherEnd(piece: Piece, length: number): void {
  piece.along = [length - piece.along[1], length - piece.along[0]]
  const { left, right } = piece.factory
  piece.factory.left = right
  piece.factory.right = left
}

/** Falsified joints and seams: what locks, and what is said to. */
export const JOINT_SPOILERS: readonly Spoiler[] = [
  spoiler('joints in line', 'joints-align', (floor) => {
    const plain = plainJoints(floor)
    for (const below of plain) {
      const above = plain.find((each) => {
        const [from, to] = [pieceOf(floor, each.leftPiece), pieceOf(floor, each.rightPiece)]
        const [west] = from.ring[0]!
        const east = Math.max(...to.ring.map(([u]) => u))
        const reaches = each.course === below.course + 1 && each.low === below.high
        return reaches && west < below.at && below.at < east && each.at !== below.at
      })
      if (above === undefined) continue
      moveJoint(floor, above, below.at)
      return true
    }
    return false
  }),
  spoiler('joint moved by 1 nm in a run of whole planks', 'cut-between-joints', (floor) =>
    to(
      plainJoints(floor).find(({ leftPiece, rightPiece }) => {
        const left = pieceOf(floor, leftPiece)
        const isEnd = !floor.joints.some((other) => other.leftPiece === rightPiece)
        return isEnd && left.factory.left && floor.joints.some((j) => j.rightPiece === leftPiece)
      }),
      (joint) => moveJoint(floor, joint, joint.at - 1),
    ),
  ),
  spoiler('end piece from the wrong end of its plank', 'joint-without-factory-end', (floor) =>
    to(
      floor.pieces.find(({ piece, factory }) => {
        const ends = floor.joints.filter((joint) => joint.rightPiece === piece && !joint.parted)
        return ends.length > 0 && !factory.right
      }),
      (piece) => fromOtherEnd(piece, lengthOf(floor, piece)),
    ),
  ),
  spoiler('cut end said to be a factory end', 'factory-untrue', (floor) =>
    to(
      floor.pieces.find(({ factory }) => !factory.left),
      ({ factory }) => {
        factory.left = true
      },
    ),
  ),
  spoiler('factory edge said to be ripped', 'factory-untrue', (floor) =>
    to(
      floor.pieces.find(({ factory }) => factory.high),
      ({ factory }) => {
        factory.high = false
      },
    ),
  ),
  spoiler('rip with its factory edge to the wall', 'seam-without-factory-edge', (floor) =>
    to(
      floor.pieces.find(({ across, factory }) => {
        const isRipped = across[1] - across[0] < floor.rules.plankWidth
        return isRipped && factory.low !== factory.high && floor.courses.length > 1
      }),
      (piece) => {
        const width = floor.rules.plankWidth
        piece.across = [width - piece.across[1], width - piece.across[0]]
        const { low, high } = piece.factory
        piece.factory.low = high
        piece.factory.high = low
      },
    ),
  ),
  spoiler('turned although the lock has a hand', 'turned-lock', (floor) => {
    floor.rules.laid = 'left to right'
    const whole = floor.pieces.find(({ factory }) => factory.left && factory.right)
    return to(whole, (piece) => {
      piece.turned = true
    })
  }),
  spoiler('joint left out', 'joint-missing', (floor) => floor.joints.pop() !== undefined),
  spoiler('joint listed twice', 'joint-untrue', (floor) =>
    to(floor.joints[0], (joint) => floor.joints.push({ ...joint })),
  ),
  spoiler('joint listed where there is none', 'joint-untrue', (floor) =>
    to(floor.joints[0], (joint) => {
      joint.at += 1
    }),
  ),
  spoiler('joint with its pieces exchanged', 'joint-untrue', (floor) =>
    to(floor.joints[0], (joint) => {
      Object.assign(joint, { leftPiece: joint.rightPiece, rightPiece: joint.leftPiece })
    }),
  ),
  spoiler('parted without a hole', 'parted-without-hole', (floor) =>
    to(plainJoints(floor)[0], (joint) => {
      joint.parted = true
    }),
  ),
  spoiler('parted joint said to lock', 'joint-without-factory-end', (floor) =>
    to(
      floor.joints.find(({ parted }) => parted),
      (joint) => {
        joint.parted = false
      },
    ),
  ),
]
