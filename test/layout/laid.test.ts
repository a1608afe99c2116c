import { expect, test } from 'vitest'
import { type Compiled, compile } from '../../server/src/compile.ts'
import type { Point } from '../../server/src/geometry/point.ts'
import type { FloorArea } from '../../server/src/layout/floor-area.ts'
import type { LaidFloor } from '../../server/src/layout/lay.ts'
import type { PublishedPiece } from '../../server/src/layout/published.ts'
import { verify } from '../../server/src/verify/verify.ts'
import { expectGolden } from '../golden.ts'

const GOLDEN = new URL('laid.golden.txt', import.meta.url).pathname

const HEAD = `floorscribe 1
job Laid
units feet-inches, bare inches
tape 1/16"
walls 4 1/2" thick
base 1/2" thick, kept

product larch
  plank       7" x 48", 1/4" thick
  box         10 planks
  joints      8" stagger, 10" shortest end, 2" narrowest rip
  gap         1/4"
  laid        left to right
  cut         saw, 1/8" kerf

product ash
  plank       5" wide, 1/2" thick
  box         2 of 24", 3 of 36", 3 of 48"
  joints      8" stagger, 10" shortest end, 1 1/2" narrowest rip
  gap         1/2"
  run         12' long, 8' wide, breaks at doorways
  laid        right to left
  cut         score and snap, 0" kerf

product oak
  plank       6" x 40", 1/2" thick
  box         8 planks
  joints      6" stagger, 8" shortest end, 1 1/2" narrowest rip
  gap         3/8"
  laid        either way

room den
  north       11' 0"
  east        9' 4"
    closet    4' 0", 2' 0" from left, 2' 0" deep
  south       11' 0"
    door      30", 2' 0" from left, to hall
    opening   4' 0", 6' 0" from left, to porch
  west        9' 4"
    hearth    3' 0", 2' 6" from left, 1' 0" deep
  column      5" round, 4' 0" from west, 3' 0" from south

room hall
  north       5' 9"
    door      30", 1' 3" from right, to den
  east        3' 6", stair down
  south       5' 9"
  west        3' 6"

room porch
  existing    tile, stays

room attic
  north       6' 0"
  east        7' 0"
  south-east  2' 9 15/16"
  south       4' 0"
  west        9' 0"
  vent        4" east-west, 10" north-south, 2' 0" from west, 1' 6" from north
`

/** What is laid, and in which words. */
const FLOORS: readonly (readonly [string, string])[] = [
  [
    'two rooms, a hearth, a column, a closet; one plank length',
    `  rooms       den, den closet, hall
  lay         larch, running east-west
  start       along north of den
  edge        hall to stair, nosing, with stair nosing
  edge        den to porch, with end cap`,
  ],
  [
    'the same parted in the doorway, the other way, in boards of three lengths',
    `  rooms       den, hall
  lay         ash, running north-south
  start       along west of den
  break       den to hall, with t moulding
  edge        hall to stair, nosing, with stair nosing
  edge        den to porch, with end cap
  edge        east of den, base new, 3/4" gap`,
  ],
  [
    'one room with a slanting wall, a symmetric board, the line shifted',
    `  rooms       attic
  lay         oak, running east-west
  start       along south of attic
  shift       1 1/4" north`,
  ],
  [
    'along the slanting wall',
    `  rooms       attic
  lay         oak, running along south-east of attic`,
  ],
  ['neither direction nor start', '  rooms       hall\n  lay         larch'],
]

function laidOf(said: string): Compiled {
  const text = `${HEAD}\nfloor all\n${said}\n`
  const compiled = compile(new Map([['job.floor', text]]), 'job.floor')
  if ('missing' in compiled) throw new Error('nothing is included')
  return compiled
}

/** Inches to the ten-thousandth. */
const inch = (nm: number): string => `${Math.round(nm / 2540) / 10_000 + 0}`
const at = ({ x, y }: Point): string => `(${inch(x)}, ${inch(y)})`

/** Lengths in inches, exact ratios as they are. */
function plain(value: unknown): string {
  return JSON.stringify(value, (key, one) =>
    typeof one === 'bigint'
      ? `${one}`
      : typeof one === 'number'
        ? Math.abs(one) < 1e6
          ? Math.round(one * 1e6) / 1e6
          : inch(one)
        : key === 'span'
          ? undefined
          : one,
  )
}

function areaOf({ gross, rim, transitions, rooms, doorways, jambSides, complete }: FloorArea) {
  return [
    ...gross.map((ring) => `gross ${ring.length} corners ${ring.slice(0, 14).map(at).join(' ')}`),
    ...rim
      .filter(({ kind }) => kind !== 'obstacle')
      .map(
        ({ from, to, kind, gap, trim, room, label }) =>
          `rim ${at(from)} ${at(to)} ${label} of ${room}: ${kind}, gap ${inch(gap)}, ${trim}`,
      ),
    ...transitions.map(
      ({ label, breaks, kind, trim, width }) =>
        `transition ${label}: ${breaks ? 'breaks' : 'ends'}, ${kind}, ${trim}, ${inch(width)}`,
    ),
    `rooms ${rooms.map(({ name, outline }) => `${name} ${outline.length}`).join(', ')}`,
    ...doorways.map(({ label, ring }) => `doorway ${label} ${ring.map(at).join(' ')}`),
    `${jambSides} jamb sides, ${complete ? 'complete' : 'incomplete'}`,
  ]
}

function pieceOf({ piece, plank, blank, along, across, turned, factory, ring }: PublishedPiece) {
  const made = Object.entries(factory).flatMap(([side, is]) => (is ? [side] : []))
  const us = ring.map(([u]) => u)
  return `  ${piece}: plank ${plank}/${blank}, ${along.map(inch).join('–')} by ${across.map(inch).join('–')}${turned ? ', turned' : ''}, made ${made.join(' ')}, from ${inch(Math.min(...us))} to ${inch(Math.max(...us))}, ${ring.length} corners`
}

function page({ floors, messages }: Compiled): string {
  const said = messages.map(({ weight, code, text }) => `${weight} ${code}: ${text}`)
  return [...floors.flatMap(floorOf), ...said].join('\n')
}

function floorOf({
  area,
  frame,
  start,
  line,
  published,
  boxes,
  pattern,
  tried,
  ...more
}: LaidFloor) {
  const { courses, planks, pieces, joints, doorways, breaches, bound } = published
  const lengths = Map.groupBy(planks, ({ length }) => inch(length))
  return [
    ...areaOf(area),
    `run ${frame.east} east, ${frame.north} north; start ${start.wall.map(({ label }) => label).join(', ')}; ${plain(line)}`,
    ...courses.flatMap(({ course, low, high, order }) => [
      `course ${course}, laid ${order}: ${inch(low)} to ${inch(high)}`,
      ...pieces.filter((piece) => piece.course === course).map(pieceOf),
    ]),
    ...joints.map(
      ({ course, at: u, low, high, leftPiece, rightPiece, parted }) =>
        `joint in ${course} at ${inch(u)}, ${inch(low)} to ${inch(high)}, ${leftPiece}|${rightPiece}${parted ? ', parted' : ''}`,
    ),
    ...doorways.map(
      ({ doorway, from, to, low, high }) =>
        `zone ${doorway} ${inch(from)} to ${inch(to)}, ${inch(low)} to ${inch(high)}`,
    ),
    ...breaches.map(
      ({ rule, value, limit, at: [u, v], pieces: concerned, direction }) =>
        `breach ${rule} ${inch(value)} of ${inch(limit)} at ${inch(u)}, ${inch(v)}, pieces ${concerned.join(' ')} ${direction}`,
    ),
    `planks ${[...lengths].map(([length, some]) => `${some.length} of ${length}`).join(', ')}; at least ${bound.planks} planks, ${bound.boxes} boxes`,
    `${boxes} boxes, ${pattern}, ${tried} tried`,
    ...more.alternatives.map((other) => `or ${plain(other)}`),
  ]
}

const LAID = FLOORS.map(([title, said]) => ({ title, said, compiled: laidOf(said) }))

test('every layout in figures, in inches', () => {
  const pages = LAID.map(
    ({ title, said, compiled }) => `## ${title}\n\n${said}\n\n${page(compiled)}\n`,
  )
  expectGolden(GOLDEN, pages.join('\n'))
})

test('each is proved again', () => {
  const floors = LAID.flatMap(({ compiled }) => compiled.floors.map(({ published }) => published))
  const report = verify({
    format: 'floorscribe layout',
    version: 1,
    unit: 'nm',
    job: 'Laid',
    floors,
  })
  expect(report.faults).toEqual([])
  expect(floors.length).toBe(FLOORS.length)
})
