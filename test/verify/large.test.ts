import { expect, test } from 'vitest'
import type { PublishedFloor, PublishedPiece } from '../../server/src/layout/published.ts'
import { verify } from '../../server/src/verify/verify.ts'
import { inches, layouts, offcuts } from './hand-made.ts'

const [WIDE, LONG, PLANK, COURSES] = [inches(7), inches(30 * 12), inches(48), 52]

/** 30' x 30' 4": courses that begin with 12", 24" and 36" in turn, each end and start off a new plank. */
function largeFloor(): PublishedFloor {
  const pieces: PublishedPiece[] = []
  const joints: PublishedFloor['joints'][number][] = []
  for (let course = 1; course <= COURSES; course += 1) {
    const [low, high] = [WIDE * (course - 1), WIDE * course]
    for (let from = 0, to = inches(12 * (1 + (course % 3))); from < LONG; from = to, to += PLANK) {
      const [number, east] = [pieces.length + 1, Math.min(to, LONG)]
      const along = [from === 0 ? PLANK - east : 0, from === 0 ? PLANK : east - from] as const
      pieces.push({
        piece: number,
        course,
        plank: number,
        blank: number,
        ring: [
          [from, low],
          [east, low],
          [east, high],
          [from, high],
        ],
        along,
        across: [0, WIDE],
        turned: false,
        factory: { left: along[0] === 0, right: along[1] === PLANK, low: true, high: true },
      })
      if (from > 0) {
        const [leftPiece, rightPiece] = [number - 1, number]
        joints.push({ course, at: from, low, high, leftPiece, rightPiece, parted: false })
      }
    }
  }
  const top = WIDE * COURSES
  const ring = [
    [0, 0],
    [LONG, 0],
    [LONG, top],
    [0, top],
  ] as const
  return {
    ...offcuts,
    floor: 'large',
    area: { rings: [ring], unsplit: [ring] },
    courses: Array.from({ length: COURSES }, (_, i) => ({
      course: i + 1,
      low: WIDE * i,
      high: WIDE * (i + 1),
      order: i + 1,
    })),
    planks: pieces.map(({ plank }) => ({ plank, length: PLANK })),
    pieces,
    joints,
    bound: { planks: 390, boxes: 44 },
  }
}

test('a large floor, 900 sq ft and some 440 pieces, is proven', () => {
  expect(verify(layouts(largeFloor())).faults).toEqual([])
})
