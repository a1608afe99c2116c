import { difference, union } from '../../server/src/geometry/clip.ts'
import type { Subject } from '../../server/src/report/scene-of.ts'
import { at, box, closetSaid, doorway, room, SPAN } from './rooms.ts'
import { tiled } from './tiling.ts'

/** A small upper floor: an L-shaped den, a hall with a stairwell, a bunk room with a closet, a bath. */
export function house(): Subject {
  const rooms = [
    room(
      'hall',
      [
        [0, 52],
        [240, 52],
        [240, 0],
        [0, 0],
      ],
      {
        obstacles: [
          {
            kind: 'stairwell',
            label: 'stairwell',
            ring: box(186, 0, 240, 30),
            gap: null,
            span: SPAN,
          },
        ],
      },
    ),
    room(
      'bunk room',
      [
        [0, 204.5],
        [148, 204.5],
        [148, 56.5],
        [0, 56.5],
      ],
      {
        of: { recesses: [closetSaid('closet')] },
        closets: [
          {
            recess: 0,
            name: 'bunk room closet',
            outline: box(-28.5, 100, -4.5, 172),
            throat: box(-4.5, 112, 0, 160),
          },
        ],
      },
    ),
    room('bath', [
      [152.5, 204.5],
      [240, 204.5],
      [240, 56.5],
      [152.5, 56.5],
    ]),
    room(
      'den',
      [
        [0, -4.5],
        [240, -4.5],
        [240, -120],
        [132, -120],
        [132, -172],
        [0, -172],
      ],
      {
        obstacles: [
          { kind: 'hearth', label: 'hearth', ring: box(200, -92, 240, -40), gap: null, span: SPAN },
          { kind: 'column', label: 'column', ring: box(60, -100, 68, -92), gap: null, span: SPAN },
        ],
      },
    ),
  ]
  const doorways = [
    doorway('hall', 'bunk room', {
      near: [at(96, 52), at(128, 52)],
      far: [at(96, 56.5), at(128, 56.5)],
    }),
    doorway('hall', 'bath', {
      near: [at(160, 52), at(190, 52)],
      far: [at(160, 56.5), at(190, 56.5)],
    }),
    doorway(
      'hall',
      'den',
      { near: [at(96, 0), at(48, 0)], far: [at(96, -4.5), at(48, -4.5)] },
      { kind: 'opening' },
    ),
    doorway(
      'den',
      null,
      { near: [at(110, -172), at(38, -172)], far: [at(110, -176.5), at(38, -176.5)] },
      { sliding: true },
    ),
  ]
  const gap = 0.25
  const area = difference(
    union([
      box(gap, gap, 240 - gap, 52 - gap),
      box(gap, 56.5 + gap, 148 - gap, 204.5 - gap),
      box(gap - 28.5, 100 + gap, -4.5 - gap, 172 - gap),
      box(-5, 112 + gap, 1, 160 - gap),
      box(96 + gap, 51, 128 - gap, 57.5),
      box(48 + gap, -5.5, 96 - gap, 1),
      box(gap, -172 + gap, 132 - gap, -4.5 - gap),
      box(130, -120 + gap, 240 - gap, -4.5 - gap),
    ]),
    [
      box(186 - gap, 0, 240, 30 + gap),
      box(200 - gap, -92 - gap, 240, -40 + gap),
      box(60 - gap, -100 - gap, 68 + gap, -92 + gap),
    ],
  )
  const floor = tiled(area, at(0, 52 - gap).y)
  return {
    title: 'Heron Cottage, upper floor',
    subtitles: ['14 Weir Lane', '2027-04-12'],
    units: 'feet-inches',
    rooms,
    doorways,
    floors: [
      {
        published: {
          ...floor,
          breaches: [
            {
              rule: 'shortest end',
              value: 6 * 25_400_000,
              limit: 10 * 25_400_000,
              at: [at(120, -30).x, at(120, -30).y],
              pieces: [1],
              direction: '',
            },
          ],
        },
        area: null,
        span: null,
        rooms: ['hall', 'bunk room', 'den'],
      },
    ],
    incompleteBecause: [],
  }
}
