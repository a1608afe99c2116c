import {
  baseLine,
  carried,
  EDGE_KINDS,
  line,
  PLANES,
  plain,
  tapeLine,
  WALL_WORDS,
  type Word,
} from './word.ts'

const READING = { needs: ['LENGTH'] }

/** Its width, or both jambs off one hook. */
const UNDER_WALL = {
  needs: ['LENGTH', 'LENGTH and LENGTH from left|right'],
  under: WALL_WORDS,
}

const PLACE_ON_WALL = [
  'LENGTH and LENGTH from left|right',
  'LENGTH from left|right',
  'LENGTH from WALL',
  'in WALL',
]

const OPENING = [
  'LENGTH',
  ...PLACE_ON_WALL,
  'to ROOM',
  'LENGTH thick',
  'called NAME',
  `touching ${PLANES}`,
  'with TRIM',
]

const WALL = [
  'LENGTH',
  'called NAME',
  'open to ROOM',
  'stair up|down',
  'LENGTH bow in|out',
  'LENGTH bow',
  'ANGLE left|right',
  'LENGTH WAY',
  `touching ${PLANES}`,
  EDGE_KINDS,
  'LENGTH gap',
  'LENGTH thick',
]

function wall(word: string): Word {
  const says =
    word === 'slant'
      ? 'A wall off the eight ways: where it takes you, or its turn from the wall before.'
      : `The wall that you see looking ${word}.`
  return line('room', word, WALL, says, { ...READING, many: ['LENGTH WAY'] })
}

function recess(word: string, forms: readonly string[], says: string): Word {
  const all = ['LENGTH', ...PLACE_ON_WALL, 'LENGTH deep', 'called NAME', ...forms]
  return line('room', word, all, says, UNDER_WALL)
}

function obstacle(word: string, says: string): Word {
  const forms = [
    'SIZE',
    'LENGTH round',
    'LENGTH east-west',
    'LENGTH north-south',
    'LENGTH from WALL',
    'called NAME',
    'LENGTH gap',
  ]
  return line('room', word, forms, says, { many: ['LENGTH from WALL'] })
}

const OPENINGS: readonly Word[] = [
  line(
    'room',
    'door',
    [...OPENING, 'swings in|out', 'sliding', 'pocket', 'bifold', 'cased'],
    'A door. Its width is between the jambs, at the floor.',
    UNDER_WALL,
  ),
  line('room', 'opening', [...OPENING, 'cased'], 'An opening without a door.', UNDER_WALL),
  line(
    'room',
    'pass-through',
    OPENING,
    'An opening without jambs, its sides finished as wall.',
    UNDER_WALL,
  ),
  recess(
    'closet',
    ['LENGTH inside', 'LENGTH left return', 'LENGTH right return', 'LENGTH thick', 'cased'],
    'A small room behind an opening.',
  ),
  recess('alcove', [], 'A recess in the wall, part of the room.'),
  recess('hearth', ['LENGTH gap'], 'A hearth or stub against the wall; the floor stops at it.'),
]

const PARTS = ['door', 'opening', 'pass-through', 'closet', 'alcove', 'hearth'].map(
  (word) => `${word} LENGTH`,
)

/** Lines that stand under a wall or another reading. */
const UNDER: readonly Word[] = [
  line('room', 'again', ['LENGTH', `touching ${PLANES}`], 'The reading above, taken again.', {
    ...READING,
    under: [
      ...WALL_WORDS,
      'diagonal',
      'across',
      'tie',
      'door',
      'opening',
      'pass-through',
      'closet',
    ],
  }),
  line(
    'room',
    'parts',
    ['LENGTH', ...PARTS],
    'The wall read in parts along one hook, left to right; they must make the wall.',
    { needs: ['LENGTH'], under: WALL_WORDS, many: ['LENGTH', ...PARTS] },
  ),
]

const FURTHER_READINGS: readonly Word[] = [
  line(
    'room',
    'diagonal',
    ['LENGTH', 'from CORNER to CORNER', `touching ${PLANES}`],
    'From corner to corner.',
    READING,
  ),
  line(
    'room',
    'across',
    ['from WALL to WALL', 'LENGTH from left|right', 'middle', 'LENGTH', `touching ${PLANES}`],
    'A width, square off the first wall named.',
    READING,
  ),
  line(
    'room',
    'tie',
    ['from WALL to WALL of ROOM', 'LENGTH along WALL', 'LENGTH'],
    'Between marks along two walls from their corner, or through doors to a wall of another room.',
    { ...READING, many: ['LENGTH along WALL'] },
  ),
]

export const ROOM_WORDS: readonly Word[] = [
  ...WALL_WORDS.map(wall),
  ...OPENINGS,
  ...UNDER,
  plain('room', 'corner', 'name', 'Names the corner between the walls above and below it.'),
  ...FURTHER_READINGS,
  plain('room', 'square', 'name', 'A corner tested 3-4-5.'),
  line('room', 'out of square', [], 'Ways give the order only; the readings give the shape.'),
  obstacle('column', 'A column or post; the floor goes round it.'),
  obstacle('island', 'A fixed island or cabinet.'),
  obstacle('stairwell', 'A hole in the floor.'),
  obstacle('vent', 'A floor register.'),
  plain('room', 'subfloor', 'names', 'What the floor lies on.'),
  plain('room', 'existing', 'names', 'What lies there now; "stays" leaves it.'),
  tapeLine('room', 'What a reading in this room is worth, and what the tape touched.'),
  baseLine('room', 'The base board of this room.'),
  ...carried('room'),
]
