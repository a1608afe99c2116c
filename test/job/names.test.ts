import { describe, expect, it } from 'vitest'
import { HEAD, mended, said, WALLS } from './bound.ts'

const TWO_SOUTHS = `${HEAD}room living room
  north       20' 0"
  east        14' 0"
  south       7' 11 7/8"
  corner      throat
  east        6' 0"
  south       12' 0 1/8", called long wall
  west        20' 0"
`

describe('walls by their ways', () => {
  it('a way that two walls share is an error offering both', () => {
    expect(said(`${TWO_SOUTHS}  door        30", 1' 2" from left, in south\n`)).toEqual([
      '13 error wall-not-clear: Two walls of living room are south: line 8 (7\' 11 7/8") and line 11, long wall. Put the door under its wall, or write: in long wall.',
    ])
  })

  it('two that have no names are told apart by giving one', () => {
    expect(said(`${TWO_SOUTHS}  across      20' 0", from north to east, middle\n`)).toEqual([
      '13 error wall-not-clear: Two walls of living room are east: line 7 (14\' 0") and line 10 (6\' 0"). Give the one that is meant a name on its line, such as "called long wall", and write that.',
    ])
  })

  it('its own name is a wall, and its way too while the room has just one', () => {
    const lines = `  across 20' 0", from north to long wall, middle\n  door 30", 14" from left, in west\n`
    expect(said(TWO_SOUTHS + lines)).toEqual([])
  })

  it('an unknown wall lists those that are there', () => {
    expect(said(`${TWO_SOUTHS}  across      20' 0", from north to long wal, middle\n`)).toEqual([
      '13 error name-unknown: No wall of "living room" is called "long wal". Is "long wall" meant? Its walls are north, east, south, long wall and west.',
    ])
    expect(mended(`${TWO_SOUTHS}  across      20' 0", from north to long wal, middle\n`)).toContain(
      'from north to long wall, middle',
    )
  })

  it('from west is from left where west meets the wall, however many walls are west', () => {
    const room = `${HEAD}room den
  north       12' 0"
    door      30", 14" from west
    opening   3' 0", 3' 0" from east
  east        10' 0"
  south       6' 0"
    closet    2' 0", 1' 0" from north, 2' 0" deep
  west        4' 0", called nook
  south       6' 0"
    hearth    2' 0", 1' 0" from west, 1' 0" deep
  west        6' 0"
`
    expect(said(room)).toEqual([
      '11 error wall-does-not-meet: north does not meet south, so it is no end of it. Write from left or from right, as you face south.',
      '14 error wall-does-not-meet: west meets south at both ends. Write from left or from right.',
    ])
  })
})

describe('corners', () => {
  it('two ways are a corner while the room has just one', () => {
    expect(said(`${TWO_SOUTHS}  diagonal    24' 5", from north-west to north-east\n`)).toEqual([])
    expect(said(`${TWO_SOUTHS}  diagonal    24' 5", from south-east to north-west\n`)).toEqual([
      '13 error corner-not-clear: Three corners of living room are south-east: between line 7 and line 8, throat (between line 8 and line 10) and between line 10 and line 11. Name the one that is meant by a line between its walls, such as "corner throat", and write that name.',
    ])
  })

  it('a named one is found, an unknown one is not', () => {
    expect(said(`${TWO_SOUTHS}  diagonal    24' 5", from throat to thraot\n`)).toEqual([
      '13 error name-unknown: No corner of "living room" is called thraot. Is throat meant? A corner is called by the ways of its two walls, such as north-west, or by a line "corner NAME" between them.',
    ])
    expect(said(`${TWO_SOUTHS}  square      south\n`)).toEqual([
      '13 error name-unknown: No corner of "living room" is called south. A corner is called by the ways of its two walls, such as north-west, or by a line "corner NAME" between them.',
    ])
  })

  it('a diagonal ends in another corner', () => {
    expect(said(`${TWO_SOUTHS}  diagonal    24' 5", from throat to throat\n`)).toEqual([
      '13 error diagonal-to-itself: This diagonal ends in the corner where it begins. Name two corners.',
    ])
    expect(said(`${TWO_SOUTHS}  across      24' 5", from north to north, middle\n`)).toEqual([
      '13 error across-to-itself: This width ends at the wall where it begins. Name two walls.',
    ])
  })
})

describe('rooms', () => {
  const BATH = `${HEAD}room bath\n${WALLS}  door        30", 1' 2" from right, in south, `

  it('one that nobody wrote: the near name, and what is enough', () => {
    expect(said(`${BATH}to hal\nroom hall\n`)).toEqual([
      '10 error name-unknown: No room is called hal. Is hall meant? If it is not measured yet, a line "room hal" is enough.',
    ])
    expect(mended(`${BATH}to hal\nroom hall\n`)).toBe(`${BATH}to hall\nroom hall\n`)
  })

  it('case and runs of blanks make no difference, and outside is everywhere', () => {
    expect(said(`${BATH}to Upper  HALL\nroom upper hall\n`)).toEqual([])
    expect(said(`${BATH}to outside\n`)).toEqual([])
  })

  it('one unknown name gives one message, however often it is used', () => {
    const floor = 'floor one\n  rooms bath, hal\n  lay x, running east-west\nproduct x\n'
    const messages = said(`${BATH}to hal\n  door 30", 2' 0" from left, in north, to hal\n${floor}`)
    expect(messages.filter((line) => line.includes('name-unknown'))).toEqual([
      '10 error name-unknown: No room is called hal. If it is not measured yet, a line "room hal" is enough.',
    ])
  })

  it('the room that no line names is offered, unless it holds the line itself', () => {
    const unknown = (text: string) => said(text).filter((line) => line.includes('name-unknown'))
    const alone =
      '10 error name-unknown: No room is called attic. If it is not measured yet, a line "room attic" is enough.'
    expect(unknown(`${BATH}to attic\n`)).toEqual([alone])
    expect(unknown(`${BATH}to attic\nroom hall\n`)).toEqual([
      `${alone} Or is it hall on line 11, which no line names?`,
    ])
  })

  it('a list with its comma lost', () => {
    const floor = (rooms: string) =>
      `${HEAD}room bedroom 1\nroom hall\nfloor one\n  rooms       ${rooms}\n  lay         larch, running east-west\nproduct larch\n`
    const unknown = (text: string) => said(text).filter((line) => line.includes('name-unknown'))
    expect(unknown(floor('bedroom 1 hall'))).toEqual([
      '8 error name-unknown: No room is called "bedroom 1 hall". A comma? bedroom 1, hall.',
    ])
    expect(mended(floor('bedroom 1 hall'))).toBe(floor('bedroom 1, hall'))
    expect(unknown(floor('bedroom 1, attic'))).toEqual([
      '8 error name-unknown: No room is called attic. A floor lists rooms and closets of the job. Or is it hall on line 6, which no line names?',
    ])
  })

  it('the same name twice names both places', () => {
    expect(said(`${HEAD}room hall\nroom Hall\n`)).toEqual([
      '6 error name-twice: Hall is already the name of a room, on line 5. Give this one another name.',
    ])
    const part = 'room hall\n'
    expect(said({ 'job.floor': `include part.floor\nroom hall\n`, 'part.floor': part })).toEqual([
      'part.floor 1 error name-twice: hall is already the name of a room, on line 2 of job.floor. Give this one another name.',
    ])
  })

  it('names that differ by accents only are warned of', () => {
    expect(said(`${HEAD}room café\nroom cafe\n`)).toEqual([
      '6 warning names-alike: cafe and café on line 5 differ by accents only. If they are one room, write it one way.',
    ])
    expect(said(`${HEAD}room café\nroom cafe\u0301 2\n`)).toEqual([])
  })

  it('names that programs trip over are names', () => {
    const names = ['__proto__', 'constructor', 'then', 'toString', '10', '2'].map((name) =>
      /^\d/.test(name) ? `"${name}"` : name,
    )
    const rooms = names.map((name) => `room ${name}\n`).join('')
    const door = names.map((name, i) => `    door 24", ${i * 26}" from left, to ${name}\n`).join('')
    expect(
      said(`${HEAD}${rooms}room hall\n  north 20' 0"\n${door}  east 4'\n  south 20'\n  west 4'\n`),
    ).toEqual([])
  })
})

describe('walls and corners with names of their own', () => {
  it('two of one name', () => {
    const room = WALLS.replace('12\' 4"\n', '12\' 4", called long\n').replace(
      '10\' 8 1/8"',
      '10\' 8 1/8", called long',
    )
    expect(said(`${HEAD}room den\n${room}`)).toEqual([
      '9 error name-twice: long is already the name of a wall, on line 6. Give this one another name.',
    ])
  })
})

it('two doorways of one room have two names', () => {
  const doors =
    '    door 30", 1\' from left, to a, called slider\n    door 30", 6\' from left, to a, called Slider\n'
  expect(said(`${HEAD}room a\nroom den\n${WALLS}${doors}`)).toEqual([
    '12 error name-twice: Slider is already the name of a doorway, on line 11. Give this one another name.',
  ])
})

describe('closets', () => {
  const closet = '    closet    2\' 0", 1\' 0" from left, 2\' 0" deep\n'

  it('are rooms of their own, and want their own names', () => {
    const twice = closet + closet.replace('1\' 0" from', '6\' 0" from')
    expect(said(`${HEAD}room den\n${WALLS}${twice}`)).toEqual([
      '11 error name-twice: "den closet" is already the name of a room, on line 10. Give this one another name. For a closet write: called NAME.',
    ])
    expect(said(`${HEAD}room den\n${WALLS}${closet}room den closet\n`)).toEqual([
      '10 error name-twice: "den closet" is already the name of a room, on line 11. Give this one another name. For a closet write: called NAME.',
    ])
  })
})
