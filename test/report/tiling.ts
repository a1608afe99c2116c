import { intersection } from '../../server/src/geometry/clip.ts'
import type { Region } from '../../server/src/geometry/point.ts'
import { boxOf } from '../../server/src/geometry/ring.ts'
import type {
  PublishedFloor,
  PublishedJoint,
  PublishedPiece,
} from '../../server/src/layout/published.ts'
import { NM_PER_INCH } from '../../server/src/units/length.ts'

const inch = (n: number): number => Math.round(n * NM_PER_INCH)

/**
 * A floor cut into planks by a plain third-stagger pattern, every piece from a plank of its own: enough
 * to draw and to print. It is no plan: nothing is planned and nothing proved.
 */
export function tiled(
  area: Region,
  firstSeam: number,
  more: Partial<PublishedFloor> = {},
): PublishedFloor {
  const [width, length] = [inch(6.75), inch(47.875)]
  const box = boxOf(area.flat())
  const pieces: PublishedPiece[] = []
  const joints: PublishedJoint[] = []
  const courses: PublishedFloor['courses'][number][] = []
  let low = firstSeam
  while (low > box.south) low -= width
  for (let course = 1; low < box.north; course += 1, low += width) {
    courses.push({ course, low, high: low + width, order: course })
    const start = box.west - Math.round((length * ((course * 2) % 5)) / 5)
    for (let from = start; from < box.east; from += length) {
      const to = from + length
      const cell = [
        { x: from, y: low },
        { x: to, y: low },
        { x: to, y: low + width },
        { x: from, y: low + width },
      ]
      for (const ring of intersection(area, [cell]))
        pieces.push(pieceOf(ring, { piece: pieces.length + 1, course, from, low, length, width }))
    }
  }
  for (const left of pieces) {
    const edge = Math.max(...left.ring.map(([u]) => u))
    const right = pieces.find(
      (one) =>
        one.course === left.course &&
        one !== left &&
        Math.min(...one.ring.map(([u]) => u)) === edge,
    )
    if (right === undefined) continue
    const ends = left.ring.filter(([u]) => u === edge).map(([, v]) => v)
    joints.push({
      course: left.course,
      at: edge,
      low: Math.min(...ends),
      high: Math.max(...ends),
      leftPiece: left.piece,
      rightPiece: right.piece,
      parted: false,
    })
  }
  return {
    floor: 'upstairs',
    product: 'river larch',
    frame: { east: 1, north: 0 },
    area: { rings: [], unsplit: [] },
    rules: {
      plankWidth: width,
      plankLengths: [{ length, perBox: 10 }],
      stagger: inch(8),
      shortestEnd: inch(10),
      narrowestRip: inch(2),
      kerfAlong: 0,
      kerfAcross: 0,
      toSpare: inch(0.25),
      laid: 'left to right',
      longestRun: { along: null, across: null },
      pile: { pieces: 8, courses: 6 },
    },
    courses,
    planks: pieces.map((piece) => ({ plank: piece.plank, length })),
    pieces,
    joints,
    doorways: [],
    breaches: [],
    bound: { planks: pieces.length - 10, boxes: 20 },
    ...more,
  }
}

function pieceOf(
  ring: readonly { readonly x: number; readonly y: number }[],
  cell: { piece: number; course: number; from: number; low: number; length: number; width: number },
): PublishedPiece {
  const us = ring.map(({ x }) => x - cell.from)
  const vs = ring.map(({ y }) => y - cell.low)
  const along = [Math.min(...us), Math.max(...us)] as const
  const across = [Math.min(...vs), Math.max(...vs)] as const
  return {
    piece: cell.piece,
    course: cell.course,
    plank: cell.piece,
    blank: cell.piece,
    ring: ring.map(({ x, y }) => [x, y] as const),
    along,
    across,
    turned: false,
    factory: {
      left: along[0] === 0,
      right: along[1] === cell.length,
      low: across[0] === 0,
      high: across[1] === cell.width,
    },
  }
}
