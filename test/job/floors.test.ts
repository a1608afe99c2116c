import { describe, expect, it } from 'vitest'
import { bound, HEAD, said } from './bound.ts'

const HOUSE = `${HEAD}product larch
  plank 7" x 48"
  box 9 planks
  joints 8" stagger, 10" shortest end
  gap 1/4"
room hall
  north 20'
    door 30", 2' from left, to bath
    door 30", 8' from left, to den
    door 30", 14' from left, to den, called far door
  east 4', stair down
  south 20'
    closet 4', 2' from left, 2' deep
    door 36", 12' from left, to outside
  west 4'
room den
  north 10'
  east 10'
  south 10'
    opening 4', 2' from left, to study
  west 10'
room study
room bath
`
const HOUSE_LINES = HOUSE.split('\n').length - 1
const floor = (...lines: readonly string[]): string => {
  const given = lines.map((line) => line.split(' ')[0])
  const usual = ['rooms hall, den', 'lay larch, running east-west']
  const all = [
    ...usual.filter((line) => !given.includes(line.split(' ')[0])),
    ...lines.filter((line) => line.includes(' ')),
  ]
  return `${HOUSE}floor one\n${all.map((line) => `  ${line}\n`).join('')}`
}
const one = (...lines: readonly string[]) => bound(floor(...lines)).job.floors[0]!
/** Messages without the line number, for lines that stand last. */
const says = (...lines: readonly string[]) =>
  said(floor(...lines)).map((line) => line.replace(/^\d+ /, ''))

describe('a floor', () => {
  it('with nothing wrong', () => {
    expect(says('start along north of hall', 'shift 2 1/4" south')).toEqual([])
    expect(one('start along north of hall', 'shift 2 1/4" south')).toMatchObject({
      product: { key: 'larch' },
      running: { kind: 'ways', ways: 'east-west' },
      start: { room: { key: 'hall' }, wall: 0 },
      shift: { distance: 57_150_000, way: 'south' },
      broken: false,
    })
    expect(one('lay larch, running along west of den').running).toMatchObject({
      kind: 'along',
      room: { key: 'den' },
      wall: 3,
    })
    expect(one('lay larch').running).toBe(null)
  })

  it('still without rooms or without a product is unfinished', () => {
    expect(says('rooms', 'lay')).toEqual([
      'incomplete floor-unfinished: Floor one does not say yet in which rooms it lies (rooms hall, den) and what is laid (lay, then a product).',
    ])
    expect(says('lay')).toEqual([
      'incomplete floor-unfinished: Floor one does not say yet what is laid (lay, then a product).',
    ])
  })

  it('with a product that nobody knows', () => {
    expect(says('lay larhc, running east-west')).toEqual([
      'error name-unknown: No product is called larhc. Is larch meant? A block "product larhc" tells what it is, here or in an included file.',
    ])
  })

  it('a room lies in one floor only', () => {
    expect(said(`${floor()}floor two\n  rooms den\n  lay larch\n`)).toEqual([
      `${HOUSE_LINES + 5} error room-laid-twice: den is already laid in floor one, on line ${HOUSE_LINES + 2}. A room lies in one floor; take it off one of the lists.`,
    ])
    expect(says('rooms hall, den, hall')).toEqual([
      `error room-laid-twice: hall is already laid in this floor, on line ${HOUSE_LINES + 3}. A room lies in one floor; take it off one of the lists.`,
    ])
    expect(one('rooms hall, den, hall').rooms.map(({ text }) => text)).toEqual(['hall', 'den'])
  })

  it('starts in a room of its own', () => {
    expect(says('start along north of bath')).toEqual([
      'error room-not-in-floor: bath is not among the rooms of floor one. Name one that is, or add it to the list.',
    ])
    expect(one('rooms hall, attic').broken).toBe(true)
  })
})

describe('edges', () => {
  it('at a wall, a doorway, a stair, a closet, the outside', () => {
    const { edges } = one(
      'edge north of hall, tub, 1/8" gap',
      'edge bath to hall, with t moulding',
      'edge hall to stair, nosing, with stair nosing',
      'edge hall to hall closet, with reducer',
      'edge hall to outside, slider',
    )
    expect(edges).toMatchObject([
      { kind: 'tub', gap: 3_175_000, trim: null, where: { kind: 'wall', wall: 0 } },
      {
        trim: 't moulding',
        where: { kind: 'doorway', from: { key: 'hall' }, to: { key: 'bath' } },
      },
      { kind: 'nosing', trim: 'stair nosing', where: { kind: 'wall', wall: 1 } },
      { where: { kind: 'doorway', to: { key: 'hall closet' } } },
      { kind: 'slider', where: { to: { key: 'outside' } } },
    ])
  })

  it.each([
    [
      'edge hall to study',
      'error doorway-unknown: No doorway leads from hall to study. Write it under its wall, such as: door 30", 14" from left, to study.',
    ],
    [
      'edge hall to den',
      `error doorway-not-clear: Two doorways lead from hall to den (line 13, line 14). Give each a name on its line (called …) and add it here.`,
    ],
    [
      'edge hall to den, called far door',
      'error edge-inside-floor: The run goes through from hall to den: both are in this floor. To part it there write: break hall to den.',
    ],
    [
      'edge hall to bath, called back door',
      'error doorway-unknown: No doorway from hall to bath is called "back door". Name it on its line: called back door.',
    ],
    [
      'edge study to bath',
      'error room-not-in-floor: bath is not among the rooms of floor one. Name one that is, or add it to the list.',
    ],
    [
      'edge den to stair',
      'error stair-not-clear: No side of den is a stair. Write on its wall: stair down.',
    ],
    [
      'edge with t moulding',
      'incomplete ends-not-said: This edge line still needs its place, such as hall to bath, or north of hall.',
    ],
    [
      'edge hall to bathh',
      'error name-unknown: No room is called bathh. Is bath meant? If it is not measured yet, a line "room bathh" is enough.',
    ],
    [
      'break hall to bath',
      'error break-at-rim: A break parts the run between two rooms of one floor, and bath is not in this one. For the rim write: edge hall to bath.',
    ],
  ])('%s', (line, text) => {
    expect(says(line)).toEqual([text])
    expect(one(line)).toMatchObject({ edges: [], breaks: [] })
  })

  it('a stair on two sides is named by its side', () => {
    const text = floor('edge hall to stair').replace("west 4'", "west 4', stair up")
    expect(said(text)[0]).toContain(
      'error stair-not-clear: hall has 2 stairs. Name the side instead, such as east of hall.',
    )
  })

  it('breaks inside', () => {
    expect(one('break hall to den, called far door, with t moulding').breaks).toMatchObject([
      {
        from: { key: 'hall' },
        to: { key: 'den' },
        called: { key: 'far door' },
        trim: 't moulding',
      },
    ])
  })

  it('the same doorways told from both rooms are not counted twice', () => {
    const text = floor('rooms hall', 'edge hall to bath, with end cap').replace(
      'room bath\n',
      "room bath\n  north 8'\n  east 8'\n  south 8'\n    door 30\", 2' from left, to hall\n  west 8'\n",
    )
    expect(said(text)).toEqual([])
  })

  it('while a line of the room cannot be read, its doorways are not missed', () => {
    const text = floor('edge hall to bath').replace(
      'door 30", 2\' from left, to bath',
      'dor 30", 2\' from left, to bath',
    )
    expect(said(text)).toEqual([])
  })
})

describe('expectations', () => {
  it('counts are exact, areas within half a hundredth, unless a margin stands beside them', () => {
    expect(
      one('expect 21 boxes, 188 planks, 232.5 sq ft', 'expect 1 box, 20 sq m, within 5%').expects,
    ).toMatchObject([
      { what: 'boxes', value: { n: 21n }, withinPercent: { n: 0n } },
      { what: 'planks', value: { n: 188n }, withinPercent: { n: 0n } },
      { what: 'sq ft', value: { n: 465n, d: 2n }, withinPercent: { n: 1n, d: 2n } },
      { what: 'boxes', value: { n: 1n }, withinPercent: { n: 5n } },
      { what: 'sq m', value: { n: 20n }, withinPercent: { n: 5n } },
    ])
  })
})
