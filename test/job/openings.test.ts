import { describe, expect, it } from 'vitest'
import type { Room } from '../../server/src/job/job.ts'
import { bound, HEAD, mended, said } from './bound.ts'

const room = (south: string, rest = ''): string => `${HEAD}room den
  north       12' 4"
  east        10' 8 1/4"
  south       12' 4 1/8"
${south}  west        10' 8 1/8"
${rest}`
const den = (south: string, rest = ''): Room => bound(room(south, rest)).job.rooms[0]!

describe('an opening that does not fit its wall', () => {
  it('by a digit typed twice: which one, and a fix', () => {
    const south = '    door      30", 11\' 2" from left, to outside\n'
    expect(said(room(south))).toEqual([
      '9 error opening-does-not-fit: This door would end at 13\' 8", but south ends at 12\' 4 1/8". 1\' 2" fits: a 1 typed twice?',
    ])
    expect(mended(room(south))).toBe(room(south.replace("11' 2", "1' 2")))
  })

  it.each([
    ['30", 12\' 2" from left', 'end at 14\' 8", but', '2\' 2" fits: a 1 too many?'],
    ['130", 2\' 0" from left', 'end at 12\' 10", but', '30" fits: a 1 too many?'],
    ['41", 9\' 0" from left', 'end at 12\' 5", but', '14" fits: two digits exchanged?'],
    [
      '30", 10\' 0" from right',
      'end at 12\' 6", counted from the right, but',
      '1\' 0" fits: a 0 too many?',
    ],
    [
      "30', 1' 2\" from left",
      'end at 31\' 2"',
      `30" fits: inches, not feet? So does 3': a 0 too many?`,
    ],
    [
      '30", 14\' from left',
      'end at 16\' 6"',
      `14" fits: inches, not feet? So does 4': a 1 too many?`,
    ],
    [
      '20\', 0" from left',
      'end at 20\' 0"',
      `20" fits: inches, not feet? So does 2': a 0 too many?`,
    ],
    ['12\' 6", 0" from left', 'end at 12\' 6", but', '2\' 6" fits: a 1 too many?'],
  ])('%s', (line, ends, slip) => {
    const [message] = said(room(`    door      ${line}, to outside\n`))
    expect(message).toContain(ends)
    expect(message).toContain(slip)
  })

  it('by no slip of a digit: nothing is guessed', () => {
    expect(said(room('    door      9\' 0", 8\' 0" from left, to outside\n'))).toEqual([
      '9 error opening-does-not-fit: This door would end at 17\' 0", but south ends at 12\' 4 1/8". Check its place, its width and the wall.',
    ])
  })

  it('ends exactly with the wall, or over it by what the tape may be off', () => {
    const door = (from: string) => `    door      30", ${from} from left, to outside\n`
    expect(said(room(door('9\' 10 1/8"')))).toEqual([])
    // Twice the root of three readings of 1/16 in and a little: just over 1/4 in.
    expect(said(room(door('9\' 10 3/8"')))).toEqual([])
    expect(said(room(door('9\' 10 1/2"')))).toHaveLength(1)
  })

  it('with both jambs off one hook the far one is asked', () => {
    expect(said(room('    opening   1\' 2" and 16\' 2" from left, to outside\n'))).toEqual([
      '9 error opening-does-not-fit: This opening would end at 16\' 2", but south ends at 12\' 4 1/8". 6\' 2" fits: a 1 too many?',
    ])
  })
})

describe('openings that lie over each other', () => {
  it('by how much, and which', () => {
    const south = `    door      30", 2' 0" from left, to outside
    closet    4' 0", 5' 0" from right, 2' 0" deep
`
    expect(said(room(south))).toEqual([
      '10 error openings-overlap: den closet and door to outside on line 9 lie over each other by 1\' 1 7/8" of south. Check where they stand and how wide they are.',
    ])
  })

  it('one inside the other', () => {
    const south = `    opening   6' 0", 2' 0" from left, to outside
    door      30", 3' 0" from left, to outside
    door      24", 9' 0" from left, to outside
`
    expect(said(room(south))).toEqual([
      '10 error openings-overlap: door to outside and opening to outside on line 9 lie over each other by 2\' 6" of south. Check where they stand and how wide they are.',
    ])
  })

  it('side by side is none', () => {
    const south = `    opening   3' 0", 2' 0" from left, to outside
    door      30", 5' 0" from left, to outside
`
    expect(said(room(south))).toEqual([])
  })
})

describe('where an opening stands', () => {
  it('both jambs off one hook, in either order', () => {
    for (const jambs of ['1\' 2" and 6\' 2"', '6\' 2" and 1\' 2"']) {
      expect(
        den(`    opening   ${jambs} from left, to outside\n`).openings[0]!.place,
      ).toMatchObject({
        from: 'left',
        distance: { text: '1\' 2"' },
        far: { text: '6\' 2"' },
        width: { nm: 1_524_000_000 },
      })
    }
  })

  it('in a wall that is named elsewhere in the block', () => {
    const { openings } = den('', '  door        28", 2\' 0" from left, in south, to outside\n')
    expect(openings[0]!.place).toMatchObject({ wall: 2, from: 'left' })
  })

  it('without a distance it has no place yet', () => {
    expect(said(room('    door      30", to outside\n'))).toEqual([
      '9 incomplete ends-not-said: This door line still needs its place along the wall, such as 14" from left, as you face it.',
    ])
    expect(den('    door      30", to outside\n').openings[0]!.place).toBe(null)
  })

  it('below a line that cannot be read it waits, and slides to no wall', () => {
    const text = room('')
      .replace('  south ', '  soth ')
      .replace('  west', '    door 30", 14" from left, to outside\n  west')
    expect(bound(text).job.rooms[0]!.openings).toMatchObject([{ place: null }])
    expect(said(text)).toEqual([])
  })

  it('asked for is not yet read', () => {
    expect(said(room('    door      ?, 14" from left, to outside\n'))).toEqual([
      '9 incomplete readings-to-take: Still to be read in den: width of the door to outside.',
    ])
  })
})

describe('a wall read in parts', () => {
  const parts = '    parts     3 1/2", door 30", 5\' 0", closet 4\' 0", 6 1/2"\n'

  it('gives the openings below it their places, in order', () => {
    const south = `${parts}    closet    2' 0" deep, 48"\n    door      30", to outside\n`
    const { openings, recesses, walls } = den(south)
    expect(said(room(south))).toEqual([])
    expect(walls[2]!.parts.map(({ of }) => of)).toEqual([null, 'door', null, 'closet', null])
    expect(openings).toMatchObject([
      {
        kind: 'door',
        to: { key: 'outside' },
        place: { wall: 2, from: 'left', distance: { nm: 88_900_000 }, width: { text: '30"' } },
      },
    ])
    expect(recesses[0]!.place!.distance).toMatchObject({
      nm: 2_374_900_000,
      text: '3 1/2" + 30" + 5\' 0"',
    })
  })

  it('is worth the root of the squares of its parts', () => {
    const south = '    parts     3\' 0", 3\' 0", door 30"\n    door      30", to outside\n'
    const [first, second] = den(south).walls[2]!.parts
    const { sigma } = den(south).openings[0]!.place!.distance
    expect(sigma).toBe(
      Math.round(Math.sqrt(first!.reading.sigma ** 2 + second!.reading.sigma ** 2)),
    )
  })

  it('stands for openings that no line tells more of', () => {
    const { openings, recesses } = den(parts)
    expect(openings).toMatchObject([{ kind: 'door', label: 'door', to: null }])
    expect(recesses).toMatchObject([{ kind: 'closet', label: 'den closet', deep: null }])
    expect(said(room(parts))).toEqual([
      '9 incomplete depth-not-said: How deep is the den closet? Write it as in 2\' 0" deep.',
    ])
  })
})

describe('how thick the wall is', () => {
  const thin = (text: string): string => text.replace('walls 4 1/2" thick\n', '')
  const door = '    door      30", 14" from left, to outside\n'
  const thickness = (text: string) => bound(text).job.rooms[0]!.openings[0]!.thickness

  it('its own line, its wall, the job', () => {
    expect(thickness(room(door))).toMatchObject({ value: 114_300_000 })
    expect(thickness(room(door.replace('outside', 'outside, 6" thick')))).toMatchObject({
      value: 152_400_000,
    })
    expect(thickness(room(door).replace('12\' 4 1/8"', '12\' 4 1/8", 8" thick'))).toMatchObject({
      value: 203_200_000,
    })
  })

  it('is asked for, never assumed', () => {
    expect(said(thin(room(door)))).toEqual([
      '8 incomplete thickness-not-said: How thick is the wall at the door to outside? Write it here (4 1/2" thick), or once for the job: walls 4 1/2" thick.',
    ])
    expect(said(thin(room('    closet    4\' 0", 14" from left, 2\' 0" deep\n')))).toEqual([
      '8 incomplete thickness-not-said: How thick is the wall at the den closet? Write it here (4 1/2" thick), or once for the job: walls 4 1/2" thick.',
    ])
  })

  it('an included file speaks for its own rooms, and the root where it is silent', () => {
    const files = (part: string) => ({
      'job.floor': `job x\n${HEAD}include part.floor\n`,
      'part.floor': `${part}${thin(room(door)).replace(HEAD, '')}`,
    })
    const of = (part: string) => bound(files(part)).job.rooms[0]!.openings[0]!.thickness!.value
    expect(of('')).toBe(114_300_000)
    expect(of('walls 6" thick\n')).toBe(152_400_000)
  })
})

it('a size of nothing is no opening', () => {
  expect(said(room('    door      0", 14" from left, to outside\n'))).toEqual([
    '9 error size-of-nothing: 0" is no size for this door. Write what the tape shows, or ? while it is still to be taken.',
  ])
})
