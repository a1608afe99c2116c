import { describe, expect, test } from 'vitest'
import { estimateText } from '../../../server/src/report/text/estimate.ts'
import { bedroomWith, compiled, HEAD, pressing, quantity, said } from '../job.ts'

type Row = readonly [what: string, typed: string, says: string]

/** The walls of the bedroom, parted by semicolons. */
const SHAPES: readonly Row[] = [
  [
    'one wall',
    `north 12'`,
    'incomplete walls-do-not-come-round: bedroom has one wall so far; a room has three at least.',
  ],
  [
    'two corners',
    `north 12'; south 12'`,
    'incomplete walls-face-each-other: In bedroom, south faces north and cannot be the next wall on the right. List the wall between them.',
  ],
  [
    'three walls',
    `north 12'; east 9'; south 12'`,
    'incomplete walls-do-not-come-round: The walls of bedroom do not come round yet: the last is south, the first north. List those that are missing; if none is, one of them has the wrong way.',
  ],
  [
    'no area: walls of nothing',
    `north 12'; east 0"; south 12'; west 0"`,
    'error size-of-nothing: 0" is no size for this wall. Write what the tape shows, or ? while it is still to be taken.',
  ],
  [
    'a spike inwards',
    `north 12', called long wall; south 3'; north 3'; east 9'; south 12'; west 9'`,
    'error walls-face-each-other: In bedroom, south faces long wall and cannot be the next wall on the right. List the wall between them.',
  ],
  [
    'a spike by a slant of 180°',
    `north 12', called long wall; slant 3', 180° right; north 3'; east 9'; south 12'; west 9'`,
    'error turn-too-far: A wall turns by less than 180° from the wall before; this says 180°.',
  ],
  [
    'self-crossing',
    `north 10', called long wall; east 5'; south 4'; west 7'; south 2'; east 7'; south 4'; west 5'`,
    `error walls-cross: east (7') crosses or touches long wall, 4' 0" from the left of long wall. Walls meet at their ends only: look at the ways and readings of these two and of those between.`,
  ],
  [
    'a wall laid back on the one before',
    `north 12', called long wall; east 9'; south 6'; west 9'; south 6'; east 9'; south 0.001 mm; west 9'`,
    `error walls-cross: east (9') crosses or touches long wall, 0" from the left of long wall. Walls meet at their ends only: look at the ways and readings of these two and of those between.`,
  ],
  [
    'walls that touch in a corner',
    `north 8', called long wall; east 4'; south 4'; east 4'; south 4'; west 4'; north 4'; west 4'`,
    `error closing-error: bedroom misses closing by 4' 0" to the east; this tape allows 5/16". No single slip of a usual size explains it: two readings may be off, or a wall may be missing. Take them again.`,
  ],
  [
    'a corner told twice: a wall of 1/64"',
    `north 12'; east 1/64"; north 1/64"; east 9'; south 12' 1/64"; west 9' 1/64"`,
    `error wall-not-clear: Two walls of bedroom are north: line 13 (12') and line 15 (1/64"). Give the one that is meant a name on its line, such as "called long wall", and write that.`,
  ],
  [
    'the same wall told twice',
    `north 12'; east 9'; east 9'; south 12'; west 9'`,
    `error closing-error: bedroom misses closing by 9' 0" to the south; this tape allows 5/16". No single slip of a usual size explains it: two readings may be off, or a wall may be missing. Take them again.`,
  ],
  [
    'a sliver of 1/16"',
    `north 12'; east 1/16"; south 12'; west 1/16"`,
    'error nothing-to-lay: The gaps along the walls leave no floor for the planks. It has to be wider than the gaps at its two sides.',
  ],
  [
    'a sliver of the two gaps',
    `north 12'; east 1/2"; south 12'; west 1/2"`,
    'error nothing-to-lay: The gaps along the walls leave no floor for the planks. It has to be wider than the gaps at its two sides.',
  ],
  [
    'a sliver of 2"',
    `north 12'; east 2"; south 12'; west 2"`,
    'warning narrowest-rip: 3 pieces are narrower than 2", the narrowest 1 1/2" in course 1. No better layout was found.',
  ],
  [
    'five miles long',
    `north 26400'; east 9'; south 26400'; west 9'`,
    'error floor-too-large: This floor would take more than 20000 planks. Look for a reading or a plank size that is out by far.',
  ],
  [
    'five miles square',
    `north 26400'; east 26400'; south 26400'; west 26400'`,
    'error floor-too-large: This floor would take more than 20000 planks. Look for a reading or a plank size that is out by far.',
  ],
  ['misses closing by 1/16"', `north 12' 1/16"; east 9'; south 12'; west 9'`, ''],
  [
    'misses closing by 1/2"',
    `north 12' 1/2"; east 9'; south 12'; west 9'`,
    'warning closing-error: bedroom misses closing by 1/2" to the east; this tape allows 5/16". A slip of half an inch in any one of two walls explains it: north or south. Take them again.',
  ],
  [
    'misses closing by a foot',
    `north 13'; east 9'; south 12'; west 9'`,
    `error closing-error: bedroom misses closing by 1' 0" to the east; this tape allows 5/16". A slip of one foot in any one of two walls explains it: north or south. A diagonal from north-west to south-east would settle it.`,
  ],
  [
    'right to left',
    `north 12'; west 9'; south 12'; east 9'`,
    'error walls-right-to-left: These walls run right to left. List them left to right as you face them; the fix turns the list round and keeps every reading.',
  ],
  [
    'a wall is missing',
    `north 12'; east 9'; west 9'`,
    'incomplete walls-face-each-other: In bedroom, west faces east and cannot be the next wall on the right. List the wall between them.',
  ],
  [
    'leads to itself',
    `north 12', open to bedroom; east 9'; south 12'; west 9'`,
    'error doorway-to-own-room: This open side leads from bedroom to bedroom itself. Name the room beyond it.',
  ],
]

/** What stands in the north wall of a bedroom of 12 by 9 ft. */
const OPENINGS: readonly Row[] = [
  [
    'outside the wall',
    `door 32", 13' from left, to outside`,
    `error opening-does-not-fit: This door would end at 15' 8", but north ends at 12' 0". 13" fits: inches, not feet? So does 3': a 1 too many?`,
  ],
  [
    'past the end by an inch',
    `door 32", 9' 5" from left, to outside`,
    `error opening-does-not-fit: This door would end at 12' 1", but north ends at 12' 0". 23" fits: two digits exchanged?`,
  ],
  [
    'past the end, from the right',
    `door 32", 10' from right, to outside`,
    `error opening-does-not-fit: This door would end at 12' 8", counted from the right, but north ends at 12' 0". 10" fits: inches, not feet? So does 1': a 0 too many?`,
  ],
  ['at the left corner', 'door 32", 0" from left, to outside', ''],
  ['at the right corner', `door 32", 9' 4" from left, to outside`, ''],
  [
    'wider than the wall',
    `door 13', 0" from left, to outside`,
    `error opening-does-not-fit: This door would end at 13' 0", but north ends at 12' 0". 13" fits: inches, not feet? So does 3': a 1 too many?`,
  ],
  [
    'as wide as the wall',
    `opening 12', 0" from left, to outside`,
    'warning start-across-planks: The first course cannot lie along this wall: the planks run across it, or the floor has no edge there. Laying starts along south of bedroom instead.',
  ],
  [
    'no width',
    `door 0", 1' from left, to outside`,
    'error size-of-nothing: 0" is no size for this door. Write what the tape shows, or ? while it is still to be taken.',
  ],
  [
    'no place',
    'door 32", to outside',
    'incomplete ends-not-said: This door line still needs its place along the wall, such as 14" from left, as you face it.',
  ],
  [
    'overlapping',
    `door 32", 1' from left, to outside; door 32", 2' from left, to outside`,
    `error openings-overlap: door to outside and door to outside on line 14 lie over each other by 1' 8" of north. Check where they stand and how wide they are.`,
  ],
  [
    'the same twice',
    `door 32", 1' from left, to outside; door 32", 1' from left, to outside`,
    `error openings-overlap: door to outside and door to outside on line 14 lie over each other by 2' 8" of north. Check where they stand and how wide they are.`,
  ],
  ['side by side', `door 32", 1' from left, to outside; door 32", 3' 8" from left, to outside`, ''],
  [
    'from a wall that is not at its end',
    `door 32", 1' from south, to outside`,
    'error wall-does-not-meet: south does not meet north, so it is no end of it. Write from left or from right, as you face north.',
  ],
  [
    'from its own wall',
    `door 32", 1' from north, to outside`,
    'error wall-does-not-meet: north does not meet north, so it is no end of it. Write from left or from right, as you face north.',
  ],
  [
    'to its own room',
    `door 32", 1' from left, to bedroom`,
    'error doorway-to-own-room: This door leads from bedroom to bedroom itself. Name the room beyond it.',
  ],
  [
    'two of them, past a wall read too short',
    `door 32", 12' from left, to outside; opening 4', 14' from left, to outside`,
    `error opening-does-not-fit: north was read 12', and two things on it end past that: the door to outside at 14' 8" and the opening to outside at 18' 0". Take the wall again, and then where they stand.`,
  ],
  ['an alcove deeper than the room', `alcove 4', 4' from left, 10' deep`, ''],
  [
    'a hearth deeper than the room',
    `hearth 4', 4' from left, 10' deep`,
    'error obstacle-outside-room: This hearth reaches out of bedroom. Look at how deep it is and where it stands.',
  ],
  [
    'a closet without depth',
    `closet 4', 4' from left`,
    `incomplete depth-not-said: How deep is the bedroom closet? Write it as in 2' 0" deep.`,
  ],
  [
    'a closet over a door',
    `door 32", 1' from left, to outside; closet 4', 2' from left, 2' deep`,
    `error openings-overlap: bedroom closet and door to outside on line 14 lie over each other by 1' 8" of north. Check where they stand and how wide they are.`,
  ],
]

/** What stands in the bedroom, and the floor that is left of 108 sq ft. */
const HOLES: readonly (readonly [what: string, typed: string, says: string, left: string])[] = [
  [
    'outside',
    `stairwell 3' east-west, 3' north-south, 13' from west, 3' from north`,
    'error obstacle-outside-room: This stairwell does not lie in bedroom. Look at its size, and at its distances: each is from a wall to its nearest face.',
    '108.0 sq ft',
  ],
  [
    'across a wall',
    `stairwell 3' east-west, 3' north-south, 10' from west, 3' from north`,
    'error obstacle-outside-room: This stairwell does not lie in bedroom. Look at its size, and at its distances: each is from a wall to its nearest face.',
    '108.0 sq ft',
  ],
  [
    'touching an edge',
    `stairwell 3' east-west, 3' north-south, 9' from west, 3' from north`,
    '',
    '99.0 sq ft',
  ],
  [
    'touching two edges, in a corner',
    `stairwell 3' east-west, 3' north-south, 0" from west, 0" from north`,
    '',
    '99.0 sq ft',
  ],
  ['touching at a point', `column 8" round, 11' 4" from west, 3' from north`, '', '107.7 sq ft'],
  [
    'from edge to edge',
    `stairwell 12' east-west, 3' north-south, 0" from west, 3' from north`,
    '',
    '72.0 sq ft',
  ],
  [
    'equal to the room',
    `stairwell 12' east-west, 9' north-south, 0" from west, 0" from north`,
    'error floor-without-area: Floor upstairs has no area left: what stands in its rooms takes all of them. Look at the sizes of the stairwells, islands and hearths.',
    '',
  ],
  [
    'larger than the room',
    `stairwell 13' east-west, 10' north-south, 0" from west, 0" from north`,
    'error obstacle-outside-room: This stairwell does not lie in bedroom. Look at its size, and at its distances: each is from a wall to its nearest face.',
    '108.0 sq ft',
  ],
  [
    'nothing',
    `column 0" round, 3' from west, 3' from north`,
    'error size-of-nothing: 0" is no size for this column. Write what the tape shows, or ? while it is still to be taken.',
    '108.0 sq ft',
  ],
  [
    'nested',
    `island 4' east-west, 4' north-south, 3' from west, 3' from north; vent 4" east-west, 10" north-south, 4' from west, 4' from north`,
    'warning obstacles-overlap: This vent and the island before it lie over each other. Look at where they stand.',
    '92.0 sq ft',
  ],
  [
    'crossing',
    `island 4' east-west, 4' north-south, 3' from west, 3' from north; island 4' east-west, 4' north-south, 5' from west, 4' from north`,
    'warning obstacles-overlap: This island and the island before it lie over each other. Look at where they stand.',
    '82.0 sq ft',
  ],
  [
    'the same twice',
    `column 8" round, 3' from west, 3' from north; column 8" round, 3' from west, 3' from north`,
    'warning obstacles-overlap: This column and the column before it lie over each other. Look at where they stand.',
    '107.7 sq ft',
  ],
  [
    'touching each other at an edge',
    `island 4' east-west, 4' north-south, 1' from west, 3' from north; island 4' east-west, 4' north-south, 5' from west, 3' from north`,
    '',
    '76.0 sq ft',
  ],
  [
    'touching each other at a point',
    `island 2' east-west, 2' north-south, 1' from west, 3' from north; island 2' east-west, 2' north-south, 3' from west, 5' from north`,
    '',
    '100.0 sq ft',
  ],
  [
    'placed by facing walls',
    `column 8" round, 3' from west, 3' from east`,
    'error place-not-clear: west and east do not place this column: two distances are needed, from walls that are not in line and do not face each other.',
    '108.0 sq ft',
  ],
  [
    'placed by one wall',
    `column 8" round, 3' from west`,
    `incomplete place-not-said: Where is this column? Write how far its nearest faces are from two walls that meet, such as 4' 0" from west, 3' 2" from north.`,
    '108.0 sq ft',
  ],
  [
    'by three walls',
    `column 8" round, 3' from west, 3' from north, 3' from south`,
    'error place-not-clear: west, north and south do not place this column: two distances are needed, from walls that are not in line and do not face each other.',
    '107.7 sq ft',
  ],
]

const walls = (typed: string): readonly string[] => typed.split('; ')
const withOpenings = (typed: string): string =>
  bedroomWith([
    "north       12'",
    ...walls(typed).map((line) => `-${line}`),
    "east 9'",
    "south 12'",
    "west 9'",
  ])
const withHoles = (typed: string): string =>
  bedroomWith(["north 12'", "east 9'", "south 12'", "west 9'", ...walls(typed)])

describe('shapes that are none, or hardly one', () => {
  test.each(SHAPES)('%s: %s', (_, typed, says) => {
    expect(said(bedroomWith(walls(typed)))).toBe(says)
  })

  test('a gap of 1/16 in is never closed in silence: the survey check tells it', () => {
    const text = estimateText(
      compiled(bedroomWith([`north 12' 1/16"`, "east 9'", "south 12'", "west 9'"])),
    )
    expect(text).toContain(`bedroom      4  1/16", 0"                5/16", 1/4"`)
  })

  test('a room that misses closing shows no total', () => {
    const job = compiled(bedroomWith(["north 13'", "east 9'", "south 12'", "west 9'"]))
    expect(job.takeoff.complete).toBe(false)
    expect(estimateText(job)).toContain('incomplete')
  })
})

describe('openings', () => {
  test.each(OPENINGS)('%s: %s', (_, typed, says) => {
    expect(said(withOpenings(typed))).toBe(says)
  })
})

describe('holes', () => {
  test.each(HOLES)('%s: %s', (_, typed, says, left) => {
    const text = withHoles(typed)
    expect(said(text)).toBe(says)
    expect(quantity(compiled(text), 'floor area') ?? '').toBe(left)
  })
})

describe('rooms that lie over each other', () => {
  const square = (name: string, doors: Readonly<Record<string, string>>) =>
    `room ${name}\n${['north', 'east', 'south', 'west'].map((way) => `  ${way} 10'\n${doors[way] === undefined ? '' : `    door 30", ${doors[way]}\n`}`).join('')}`
  const house = (place: string, end: string) =>
    HEAD +
    square('hall', { east: `${place} from left, to den`, south: "1' from left, to bath" }) +
    square('den', { west: "1' from right, to hall" }) +
    square('bath', { north: `1' from ${end}, to hall` })

  test('beside each other: nothing is said', () => {
    expect(pressing(compiled(house("1'", 'right'))).map(({ code }) => code)).toEqual([
      'job-unfinished',
    ])
  })

  test('the area is said, and where to look', () => {
    expect(said(house("6'", 'left'))).toBe(OVERLAP)
  })
})

// By hand: 5 ft 1/2 in by 4 ft 6 1/2 in, the rooms 5 1/2 in apart (wall and both bases).
const OVERLAP =
  'warning rooms-overlap: bath lies over den by 22.9 sq ft. Look at where the openings between them stand, at the thickness of the walls and at what is read out of the rooms.'
