import { describe, expect, it } from 'vitest'
import type { Room } from '../../server/src/job/job.ts'
import { bound, HEAD, mended, said } from './bound.ts'

const room = (walls: string): string => `${HEAD}room bedroom 1\n${walls}`
const first = (walls: string): Room => bound(room(walls)).job.rooms[0]!

const LEFT_TO_RIGHT = `  north       12' 4"
  east        10' 8 1/4"
    door      30", 14" from left, to outside
  south       12' 4 1/8"
  # the window
  west        10' 8 1/8"
    again     10' 8"
  diagonal    16' 3 7/8", from north-west to south-east
`
const RIGHT_TO_LEFT = `  north       12' 4"
  west        10' 8 1/8"
    again     10' 8"
  south       12' 4 1/8"
  # the window
  east        10' 8 1/4"
    door      30", 14" from left, to outside
  diagonal    16' 3 7/8", from north-west to south-east
`

describe('the order of the walls', () => {
  it('from right to left: the fix turns the list round and keeps every reading', () => {
    expect(said(room(RIGHT_TO_LEFT))).toEqual([
      '6 error walls-right-to-left: These walls run right to left. List them left to right as you face them; the fix turns the list round and keeps every reading.',
    ])
    expect(mended(room(RIGHT_TO_LEFT))).toBe(room(LEFT_TO_RIGHT))
    expect(said(room(LEFT_TO_RIGHT))).toEqual([])
    expect(first(RIGHT_TO_LEFT).broken).toBe(true)
  })

  it('from right to left with a slant: said, and nothing is turned by guess', () => {
    const walls = RIGHT_TO_LEFT.replace(
      '  south',
      "  slant       3', 2' 0\" west, 2' 0\" south\n  south",
    )
    expect(said(room(walls))).toEqual([
      '6 error walls-right-to-left: These walls run right to left. List them left to right as you face them.',
    ])
  })

  it('two walls that face each other do not meet', () => {
    const walls = "  north 12'\n  south 12'\n  east 10'\n  west 10'\n"
    expect(said(room(walls))).toEqual([
      '7 error walls-face-each-other: In "bedroom 1", south faces north and cannot be the next wall on the right. List the wall between them.',
    ])
    expect(said(room("  north 12'\n  south 12'\n"))).toEqual([
      '7 incomplete walls-face-each-other: In "bedroom 1", south faces north and cannot be the next wall on the right. List the wall between them.',
    ])
  })

  it.each([
    ['one wall', "  north 12'\n", '"bedroom 1" has one wall so far; a room has three at least.'],
    [
      'two',
      "  north 12'\n  east 10'\n",
      '"bedroom 1" has two walls so far; a room has three at least.',
    ],
    [
      'three of four',
      "  north 12'\n  east 10'\n  south 12'\n",
      'The walls of "bedroom 1" do not come round yet: the last is south, the first north. List those that are missing; if none is, one of them has the wrong way.',
    ],
    [
      'a way mistaken',
      "  north 12'\n  east 10'\n  south 12'\n  east 10'\n",
      'The walls of "bedroom 1" do not come round yet: the last is east, the first north. List those that are missing; if none is, one of them has the wrong way.',
    ],
  ])('%s: unfinished, not wrong', (_, walls, text) => {
    const line = 5 + walls.split('\n').length - 1
    expect(said(room(walls))).toEqual([`${line} incomplete walls-do-not-come-round: ${text}`])
    expect(first(walls)).toMatchObject({ broken: false, unfinished: true })
  })

  it('the skeleton of a room waits for four walls, in one message', () => {
    const walls = '  north ?\n  east ?\n  south ?\n  west ?\n'
    expect(said(room(walls))).toEqual([
      '6 incomplete readings-to-take: Still to be read in bedroom 1: north, east, south and west.',
    ])
    expect(first(walls)).toMatchObject({ broken: false, unfinished: true })
  })

  it('a line half typed is unfinished as well', () => {
    const walls = "  north 12'\n  east\n  south 12'\n  west 10'\n"
    expect(said(room(walls))).toEqual([])
    expect(first(walls)).toMatchObject({ broken: false, unfinished: true })
  })

  it('alcoves, stubs and a wall in two pieces come round', () => {
    const walls = `  north 6'
  north 6'
  east 4'
  south 2'
  east 2'
  north 2'
  east 4'
  south 12'
  west 10'
`
    expect(said(room(walls))).toEqual([])
  })
})

describe('slants', () => {
  it('by where they take you, and by their turn', () => {
    const walls = `  north       9' 0"
  slant       4' 3", 3' 0" east, 3' 0" south
  east        7' 0"
  slant       4' 3", 45° right
  south       6' 0"
  slant       4' 3", 45° right
  west        4' 0"
  slant       4' 3", 45° right
`
    expect(said(room(walls))).toEqual([])
    expect(first(walls).walls.map(({ heading }) => heading)).toMatchObject([
      { kind: 'way', way: 'north' },
      { kind: 'offset', east: 914_400_000, north: -914_400_000 },
      { kind: 'way', way: 'east' },
      { kind: 'turn', degreesRight: { n: 45n, d: 1n } },
      { kind: 'way' },
      { kind: 'turn' },
      { kind: 'way' },
      { kind: 'turn' },
    ])
  })

  it('a turn to the left is negative, as at a reflex corner', () => {
    const walls = `  north       9' 0"
  east        7' 0"
  slant       4' 3", 30° left
  south       6' 0"
  west        4' 0"
`
    expect(first(walls).walls[2]!.heading).toEqual({
      kind: 'turn',
      degreesRight: { n: -30n, d: 1n },
    })
  })

  it.each([
    [
      '',
      'incomplete slant-without-way: Which way does this slant go? Write where it takes you (3\' 0" east, 3\' 0" south) or its turn from the wall before (30° right).',
    ],
    [
      ', 0" east',
      'incomplete slant-without-way: Which way does this slant go? Write where it takes you (3\' 0" east, 3\' 0" south) or its turn from the wall before (30° right).',
    ],
    [
      ', ? east',
      'incomplete slant-without-way: Which way does this slant go? Write where it takes you (3\' 0" east, 3\' 0" south) or its turn from the wall before (30° right).',
    ],
    [
      ', 0° right',
      'incomplete slant-without-way: Which way does this slant go? Write where it takes you (3\' 0" east, 3\' 0" south) or its turn from the wall before (30° right).',
    ],
    [
      ', 180° right',
      'error turn-too-far: A wall turns by less than 180° from the wall before; this says 180°.',
    ],
    [
      ', 3\' 0" north-east',
      'error slant-way-not-straight: Where a slant takes you is said in two parts, such as 3\' 0" east, 3\' 0" south; north-east is none.',
    ],
  ])('a slant with "%s"', (phrases, text) => {
    const walls = `  north 9'\n  slant 4' 3"${phrases}\n  east 7'\n  south 12'\n  west 10'\n`
    expect(said(room(walls))).toEqual([`7 ${text}`])
    expect(first(walls).walls[1]!.reading.nm).toBe(null)
  })

  it('a wall with a way of its own takes no second one', () => {
    expect(said(room("  north 9', 30° right\n  east 7'\n  south 9'\n  west 7'\n"))).toEqual([
      '6 error way-said-twice: The wall is north, so its direction is known. For a wall off the eight ways write "slant" instead and keep this.',
    ])
  })

  it('a room of slants alone has no north', () => {
    const walls = "  slant 9', 120° right\n".repeat(3)
    expect(said(room(walls))).toEqual([
      '6 error room-without-north: No wall of "bedroom 1" says which way it faces. Name one by the way you look at it, such as north; slants turn from there.',
    ])
  })
})

describe('what else a wall says', () => {
  it('bow, stair, edge, gap', () => {
    const walls = `  north       9' 0", 8" bow
  east        7' 0", 6" bow in
  south       9' 0", stair down, nosing
  west        7' 0", tub, 1/8" gap
`
    const [north, east, south, west] = first(walls).walls
    expect(north!.bow).toMatchObject({ rise: 203_200_000 })
    expect(east!.bow).toMatchObject({ rise: -152_400_000 })
    expect(south).toMatchObject({ stair: 'down', edge: { kind: 'nosing', gap: null } })
    expect(west!.edge).toMatchObject({ kind: 'tub', gap: 3_175_000, trim: null })
  })

  it('a wall of nothing is none', () => {
    expect(said(room("  north 0\"\n  east 7'\n  south 9'\n  west 7'\n"))).toEqual([
      '6 error size-of-nothing: 0" is no size for this wall. Write what the tape shows, or ? while it is still to be taken.',
    ])
  })
})
