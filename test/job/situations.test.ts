import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import type { Room } from '../../server/src/job/job.ts'
import { bound, said } from './bound.ts'

const SAMPLES = new URL('../language/samples/', import.meta.url)
const sample = (name: string): string => readFileSync(new URL(`${name}.floor`, SAMPLES), 'utf8')
const situation = (name: string) => ({
  'job.floor': sample(name),
  'products.floor': sample('products'),
  'prices.floor': sample('prices'),
})

/** Each wall as `label reading`, each opening as `label: wall, place, width`. */
function outline(room: Room): string {
  const walls = room.walls.map((wall) => `${wall.label} ${wall.reading.text}`)
  const openings = room.openings.map(({ label, place }) => {
    const wall = room.walls[place!.wall]!.label
    return `${label}: ${place!.width.text} in ${wall}, ${place!.distance.text} from ${place!.from}`
  })
  return [...walls, ...openings].join('\n')
}

function room(name: string, called: string): Room {
  return bound(situation(name)).job.rooms.find((found) => found.name.text === called)!
}

describe('the five situations', () => {
  it.each(['bedroom', 'living-room', 'upper-hall', 'kitchen'])(
    '%s binds without a word',
    (name) => {
      expect(said(situation(name))).toEqual([])
    },
  )

  it('the old parlour waits for what its text leaves open, and nothing is wrong with it', () => {
    expect(said(situation('old-parlour'))).toEqual([
      '15 incomplete thickness-not-said: How thick is the wall at the door to hall? Write it here (4 1/2" thick), or once for the job: walls 4 1/2" thick.',
      '17 incomplete readings-to-take-again: To be read again in old parlour: a diagonal.',
      '21 incomplete readings-to-take: Still to be read in old parlour: a width across.',
    ])
  })

  it('a bedroom: walls, a door, a closet, two diagonals, and a hall of which only the name is known', () => {
    const { job } = bound(situation('bedroom'))
    expect(job.title).toBe('Plover Lodge, bedroom 1')
    expect(job.site).toBe('4 Alder Row, flat #2')
    expect(job.date).toBe('2027-04-12')
    expect(job.rooms.map(({ name, walls }) => [name.text, walls.length])).toEqual([
      ['bedroom 1', 4],
      ['hall', 0],
    ])
    const bedroom = job.rooms[0]!
    expect(outline(bedroom)).toBe(
      [
        'north 12\' 4"',
        'east 10\' 8 1/4"',
        'south 12\' 4 1/8"',
        'west 10\' 8 1/8"',
        'door to hall: 30" in south, 1\' 2" from right',
      ].join('\n'),
    )
    expect(bedroom.recesses).toMatchObject([
      {
        kind: 'closet',
        label: 'bedroom 1 closet',
        place: { wall: 3, from: 'left', distance: { nm: 965_200_000 } },
        deep: { nm: 615_950_000 },
        inside: { nm: 1_828_800_000 },
        leftReturn: { nm: 304_800_000 },
        rightReturn: null,
        thickness: { value: 114_300_000 },
      },
    ])
    expect(bedroom.checks).toMatchObject([
      { kind: 'diagonal', from: 0, to: 2 },
      { kind: 'diagonal', from: 1, to: 3 },
    ])
    expect(job.rooms[1]!.existing).toEqual(['carpet', 'stays'])
    expect(job.floors[0]!.rooms.map(({ text }) => text)).toEqual(['bedroom 1', 'bedroom 1 closet'])
    expect(job.floors[0]!.start).toMatchObject({ room: { key: 'bedroom 1' }, wall: 0 })
    expect(job.floors[0]!.running).toMatchObject({ kind: 'ways', ways: 'east-west' })
  })

  it('a living room: walls with names, a named corner, a bay that no way could tell apart', () => {
    const living = room('living-room', 'living room')
    expect(living.walls.map(({ label }) => label)).toEqual([
      ...['north', 'north-west', 'bay', 'north-east', 'north', 'window wall'],
      ...['south', 'east', 'long wall', 'west'],
    ])
    expect(living.corners).toMatchObject([{ name: { key: 'throat' }, corner: 7 }])
    expect(living.checks).toMatchObject([
      { kind: 'diagonal', from: 0, to: 7 },
      { kind: 'diagonal', from: 5, to: 9 },
      { kind: 'across', from: 2, to: 8, at: { kind: 'middle' } },
    ])
    expect(living.recesses).toMatchObject([{ kind: 'hearth', place: { wall: 9 } }])
    const [floor] = bound(situation('living-room')).job.floors
    expect(floor!.start).toMatchObject({ wall: 5 })
    expect(floor!.edges).toMatchObject([
      { trim: 'end cap', where: { kind: 'doorway', to: { key: 'outside' } } },
      { trim: 't moulding', where: { kind: 'doorway', to: { key: 'hall' } } },
    ])
  })

  it('a hall with four doorways: each room keeps its own side of a door', () => {
    expect(outline(room('upper-hall', 'hall'))).toBe(
      [
        'north 20\' 0"',
        'east 4\' 0 1/8"',
        'south 20\' 0 1/8"',
        'west 4\' 0"',
        'door to bath: 30" in north, 2\' 6" from left',
        'door to kids\' room: 32" in north, 4\' 10 1/8" from right',
        'opening to study: 4\' 0" in south, 2\' 8" from left',
        'door to den: 32" in south, 3\' 4 1/8" from right',
      ].join('\n'),
    )
    expect(outline(room('upper-hall', "kids' room"))).toContain('door to hall: 32" in south')
  })

  it('an old parlour: rough, doubtful, repeated and asked readings', () => {
    const parlour = room('old-parlour', 'old parlour')
    expect(parlour.outOfSquare).toBe(true)
    const [, east, south] = parlour.walls
    expect(east!.reading.again.map(({ text }) => text)).toEqual(['12\' 4"'])
    expect(south!.reading).toMatchObject({ about: true, sigma: 12_700_000, doubtful: false })
    expect(parlour.checks.map((check) => check.kind === 'across' && check.at)).toEqual([
      false,
      false,
      { kind: 'left', distance: 152_400_000 },
      { kind: 'middle' },
      { kind: 'right', distance: 152_400_000 },
      { kind: 'middle' },
    ])
    expect(parlour.notes).toEqual(['radiator: the last 4" guessed'])
    expect(parlour.unfinished).toBe(false)
  })

  it('a kitchen: an open side seen from both rooms, a sliding door, an island, a stair', () => {
    const kitchen = room('kitchen', 'kitchen')
    expect(kitchen.openings).toMatchObject([
      { kind: 'door', to: { key: 'outside' }, sliding: true, jambs: false },
      { kind: 'opening', to: { key: 'landing' }, jambs: true },
      { kind: 'open side', to: { key: 'dining room' }, thickness: { value: 0 } },
    ])
    expect(kitchen.openings[2]!.place).toMatchObject({
      wall: 3,
      from: 'left',
      distance: { nm: 0 },
      width: { nm: 3_657_600_000 },
    })
    expect(kitchen.obstacles).toMatchObject([
      {
        kind: 'island',
        eastWest: { nm: 1_828_800_000 },
        northSouth: { nm: 914_400_000 },
        from: [{ wall: 1 }, { wall: 0 }],
      },
    ])
    expect(kitchen.subfloor).toEqual(['slab'])
    const [floor] = bound(situation('kitchen')).job.floors
    expect(floor!.edges[1]).toMatchObject({
      trim: 'stair nosing',
      where: { kind: 'wall', room: { key: 'landing' }, wall: 2 },
    })
  })

  it('two products and a price book', () => {
    const { job } = bound(situation('bedroom'))
    expect(job.products).toMatchObject([
      {
        name: { key: 'larch plank' },
        width: 177_800_000,
        lengths: [{ length: 1_225_550_000, perBox: 9 }],
        thickness: 4_762_500,
        perBox: 9,
        pad: 'attached',
        rules: {
          stagger: { value: 203_200_000 },
          shortestEnd: { value: 254_000_000 },
          narrowestRip: { value: 50_800_000 },
          gap: { value: 6_350_000 },
          longestRun: { along: 18_288_000_000, across: 12_192_000_000 },
          kerfAlong: { value: 0 },
        },
      },
      {
        name: { key: 'oak board' },
        lengths: [
          { length: 609_600_000, perBox: 2 },
          { length: 914_400_000, perBox: 4 },
          { length: 1_219_200_000, perBox: 5 },
        ],
        perBox: 11,
        pad: 'separate',
      },
    ])
    expect(job.prices).toMatchObject([{ name: { key: 'spring list' } }])
    expect(job.prices[0]!.lines[2]).toMatchObject({
      word: 'price',
      text: 'larch plank, 4.19 per sq ft, sold by the box',
    })
  })
})
