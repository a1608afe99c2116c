/**
 * The vocabulary: every first word, where it may stand and the phrases it takes. This table is the
 * language; the parser, the messages, the formatter and the reference page all read it.
 *
 * A form is a pattern over one phrase. Capitals are figures and names (LENGTH, SIZE, NUMBER, COUNT,
 * PERCENT, ANGLE, DATE, WAY; ROOM, WALL, CORNER, PRODUCT, TRIM, NAME), small words stand as
 * they are, `a|b` is a choice. A phrase matches the first form that fits it.
 */
export interface Word {
  readonly word: string
  /** The block it stands in: 'file' is column one. */
  readonly home: Home
  /** Words that it may stand under, two steps in: an opening under its wall. */
  readonly under?: readonly string[]
  /** 'text': plain text to the end of the line; 'names': a list of names; else phrases. */
  readonly takes: 'text' | 'name' | 'names' | 'phrases'
  readonly forms: readonly string[]
  /** The form of the first phrase, which needs no role: that it must be there. */
  readonly needs?: string
  /** Opens a block. */
  readonly opens?: Home
  /** What it says, for the reference page, hover and completion. */
  readonly says: string
}

export type Home = 'file' | 'job' | 'room' | 'product' | 'floor' | 'prices'

const WALL_WORDS = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
  'slant',
] as const

/** What may be touched by the tape's end. */
const PLANES = 'base|wall|toe-kick|jamb'
/** What the rim of a floor may meet. */
export const EDGE_KINDS =
  'base kept|base off and back|base new|no base|tub|hearth|slider|cabinet|nosing|open edge|carpet'

const FROM_HOOK = ['LENGTH from left|right', 'LENGTH from WALL'] as const
const PLACE_ON_WALL = ['LENGTH and LENGTH from left|right', ...FROM_HOOK, 'in WALL'] as const
const OPENING = [
  'LENGTH',
  ...PLACE_ON_WALL,
  'to ROOM',
  'LENGTH thick',
  'called NAME',
  `touching ${PLANES}`,
  'with TRIM',
] as const
const OBSTACLE = [
  'SIZE',
  'LENGTH round',
  'LENGTH east-west',
  'LENGTH north-south',
  'LENGTH from WALL',
  'called NAME',
  'LENGTH gap',
] as const

const wall = (word: string, says: string): Word => ({
  word,
  home: 'room',
  takes: 'phrases',
  forms: [
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
  ],
  needs: 'LENGTH',
  says,
})

const RECESS = (word: string, forms: readonly string[], says: string): Word => ({
  word,
  home: 'room',
  under: WALL_WORDS,
  takes: 'phrases',
  forms: ['LENGTH', ...PLACE_ON_WALL, 'LENGTH deep', 'called NAME', ...forms],
  needs: 'LENGTH',
  says,
})

const obstacle = (word: string, says: string): Word => ({
  word,
  home: 'room',
  takes: 'phrases',
  forms: OBSTACLE,
  says,
})

/** Plain text lines that any block carries. */
const carried = (home: Home): Word[] => [
  {
    word: 'note',
    home,
    under: NOTABLE,
    takes: 'text',
    forms: [],
    says: 'A remark, kept and printed.',
  },
  {
    word: 'tag',
    home,
    takes: 'text',
    forms: [],
    says: 'A word and text, carried and never computed.',
  },
  {
    word: 'hold',
    home,
    takes: 'phrases',
    forms: ['cleared DATE', 'by NAME', 'on NAME', 'NAME'],
    needs: 'NAME',
    says: 'Something that must be cleared before anything is ordered.',
  },
  {
    word: 'accept',
    home,
    takes: 'phrases',
    forms: ['because NAME', 'NAME'],
    needs: 'NAME',
    says: 'A warning that was looked at: it is settled for this block.',
  },
]

const NOTABLE = [...WALL_WORDS, 'door', 'opening', 'pass-through', 'closet', 'alcove', 'hearth']

export const WORDS: readonly Word[] = [
  // the file
  {
    word: 'floorscribe',
    home: 'file',
    takes: 'phrases',
    forms: ['COUNT'],
    needs: 'COUNT',
    says: 'The version of the language.',
  },
  {
    word: 'job',
    home: 'file',
    takes: 'text',
    forms: [],
    opens: 'job',
    says: 'The title; a file with this line is a job.',
  },
  {
    word: 'units',
    home: 'file',
    takes: 'phrases',
    forms: ['feet-inches|inches|mm|cm|m', 'bare inches|mm|cm|m'],
    needs: 'feet-inches|inches|mm|cm|m',
    says: 'What lengths are printed in, and what a bare number is.',
  },
  {
    word: 'tape',
    home: 'file',
    takes: 'phrases',
    forms: ['LENGTH + LENGTH per LENGTH', 'about LENGTH', 'LENGTH', `touching ${PLANES}`],
    says: 'What one reading is worth (one standard deviation), and what the tape touched.',
  },
  {
    word: 'walls',
    home: 'file',
    takes: 'phrases',
    forms: ['LENGTH thick'],
    needs: 'LENGTH thick',
    says: 'How thick a wall is unless an opening says otherwise.',
  },
  {
    word: 'base',
    home: 'file',
    takes: 'phrases',
    forms: ['LENGTH thick', 'kept|off and back|new|none'],
    says: 'The base board: how thick, and what becomes of it.',
  },
  {
    word: 'jambs',
    home: 'file',
    takes: 'phrases',
    forms: ['LENGTH under'],
    needs: 'LENGTH under',
    says: 'How far the floor runs under each undercut jamb.',
  },
  {
    word: 'allowance',
    home: 'file',
    takes: 'phrases',
    forms: ['PERCENT'],
    needs: 'PERCENT',
    says: 'The waste percentage that the count is compared with.',
  },
  {
    word: 'pile',
    home: 'file',
    takes: 'phrases',
    forms: ['COUNT pieces', 'COUNT courses'],
    says: 'How many offcuts may wait, and for how many courses.',
  },
  {
    word: 'include',
    home: 'file',
    takes: 'text',
    forms: [],
    says: 'Another file, by a path below the job.',
  },
  {
    word: 'room',
    home: 'file',
    takes: 'name',
    forms: [],
    opens: 'room',
    says: 'A room: stand in it and turn to the right.',
  },
  {
    word: 'product',
    home: 'file',
    takes: 'name',
    forms: [],
    opens: 'product',
    says: 'A plank and its rules.',
  },
  {
    word: 'floor',
    home: 'file',
    takes: 'name',
    forms: [],
    opens: 'floor',
    says: 'Rooms that are laid as one area.',
  },
  {
    word: 'prices',
    home: 'file',
    takes: 'name',
    forms: [],
    opens: 'prices',
    says: 'A price book.',
  },
  // the job
  ...['site', 'date', 'revision'].map(
    (word): Word => ({
      word,
      home: 'job',
      takes: 'text',
      forms: [],
      says: 'Printed as it stands.',
    }),
  ),
  ...carried('job'),
  // a room
  ...WALL_WORDS.map((word) =>
    wall(
      word,
      word === 'slant' ? 'A wall off the eight ways.' : 'The wall that you see looking that way.',
    ),
  ),
  {
    word: 'again',
    home: 'room',
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
    takes: 'phrases',
    forms: ['LENGTH', `touching ${PLANES}`],
    needs: 'LENGTH',
    says: 'The reading above, taken again.',
  },
  {
    word: 'parts',
    home: 'room',
    under: WALL_WORDS,
    takes: 'phrases',
    forms: [
      'LENGTH',
      'door LENGTH',
      'opening LENGTH',
      'pass-through LENGTH',
      'closet LENGTH',
      'alcove LENGTH',
      'hearth LENGTH',
    ],
    says: 'The wall read in parts, left to right; they must make the wall.',
  },
  {
    word: 'corner',
    home: 'room',
    takes: 'name',
    forms: [],
    says: 'Names the corner between the walls around it.',
  },
  {
    word: 'door',
    home: 'room',
    under: WALL_WORDS,
    takes: 'phrases',
    forms: [...OPENING, 'swings in|out', 'sliding', 'pocket', 'bifold', 'cased'],
    says: 'A door, width between its jambs at the floor.',
  },
  {
    word: 'opening',
    home: 'room',
    under: WALL_WORDS,
    takes: 'phrases',
    forms: [...OPENING, 'cased'],
    says: 'An opening without a door.',
  },
  {
    word: 'pass-through',
    home: 'room',
    under: WALL_WORDS,
    takes: 'phrases',
    forms: OPENING,
    says: 'An opening without jambs, its sides finished as wall.',
  },
  RECESS(
    'closet',
    ['LENGTH inside', 'LENGTH left return', 'LENGTH right return', 'LENGTH thick', 'cased'],
    'A small room behind an opening.',
  ),
  RECESS('alcove', [], 'A recess in the wall, part of the room.'),
  RECESS('hearth', ['LENGTH gap'], 'A hearth or stub against the wall; the floor stops at it.'),
  {
    word: 'diagonal',
    home: 'room',
    takes: 'phrases',
    forms: ['LENGTH', 'from CORNER to CORNER', `touching ${PLANES}`],
    needs: 'LENGTH',
    says: 'From corner to corner.',
  },
  {
    word: 'across',
    home: 'room',
    takes: 'phrases',
    forms: [
      'from WALL to WALL',
      'LENGTH from left|right',
      'middle',
      'LENGTH',
      `touching ${PLANES}`,
    ],
    needs: 'LENGTH',
    says: 'A width, square off the first wall named.',
  },
  {
    word: 'tie',
    home: 'room',
    takes: 'phrases',
    forms: ['from WALL to WALL of ROOM', 'LENGTH along WALL', 'LENGTH'],
    needs: 'LENGTH',
    says: 'Between marks along two walls from their corner, or through doors to a wall of another room.',
  },
  { word: 'square', home: 'room', takes: 'name', forms: [], says: 'A corner tested 3-4-5.' },
  {
    word: 'out of square',
    home: 'room',
    takes: 'phrases',
    forms: [],
    says: 'Ways give the order only; the readings give the shape.',
  },
  obstacle('column', 'A column or post; the floor goes round it.'),
  obstacle('island', 'A fixed island or cabinet.'),
  obstacle('stairwell', 'A hole in the floor.'),
  obstacle('vent', 'A floor register.'),
  { word: 'subfloor', home: 'room', takes: 'names', forms: [], says: 'What the floor lies on.' },
  {
    word: 'existing',
    home: 'room',
    takes: 'names',
    forms: [],
    says: 'What lies there now; "stays" leaves it.',
  },
  {
    word: 'tape',
    home: 'room',
    takes: 'phrases',
    forms: ['LENGTH + LENGTH per LENGTH', 'about LENGTH', 'LENGTH', `touching ${PLANES}`],
    says: 'What a reading in this room is worth.',
  },
  {
    word: 'base',
    home: 'room',
    takes: 'phrases',
    forms: ['LENGTH thick', 'kept|off and back|new|none'],
    says: 'The base board of this room.',
  },
  ...carried('room'),
  // a product
  {
    word: 'plank',
    home: 'product',
    takes: 'phrases',
    forms: ['SIZE', 'LENGTH wide', 'LENGTH long', 'LENGTH thick'],
    says: 'The face: width by length, and thickness.',
  },
  {
    word: 'box',
    home: 'product',
    takes: 'phrases',
    forms: ['COUNT planks', 'COUNT of LENGTH', 'NUMBER sq ft', 'NUMBER sq m'],
    says: 'What is in a box.',
  },
  {
    word: 'pad',
    home: 'product',
    takes: 'phrases',
    forms: ['attached|separate|none'],
    says: 'Whether the pad is on the plank.',
  },
  {
    word: 'joints',
    home: 'product',
    takes: 'phrases',
    forms: ['LENGTH stagger', 'LENGTH shortest end', 'LENGTH narrowest rip'],
    says: 'The least distances.',
  },
  {
    word: 'gap',
    home: 'product',
    takes: 'phrases',
    forms: ['LENGTH'],
    needs: 'LENGTH',
    says: 'Expansion gap at a wall.',
  },
  {
    word: 'run',
    home: 'product',
    takes: 'phrases',
    forms: [
      'LENGTH long',
      'LENGTH wide',
      'through doorways',
      'breaks at doorways',
      'breaks at doorways under LENGTH',
    ],
    says: 'The longest floor without a break, along and across the planks.',
  },
  {
    word: 'laid',
    home: 'product',
    takes: 'phrases',
    forms: ['left to right|right to left|either way'],
    says: 'The hand of the lock.',
  },
  {
    word: 'cut',
    home: 'product',
    takes: 'phrases',
    forms: [
      'LENGTH kerf along',
      'LENGTH kerf across',
      'LENGTH kerf',
      'LENGTH to spare',
      'saw|score and snap|guillotine|knife',
    ],
    says: 'How planks are cut, and what a cut takes: along for rips, across for lengths.',
  },
  {
    word: 'spoil',
    home: 'product',
    takes: 'phrases',
    forms: ['COUNT planks', 'PERCENT'],
    says: 'Planks that will be spoiled; at least 2.',
  },
  {
    word: 'spares',
    home: 'product',
    takes: 'phrases',
    forms: ['COUNT planks', 'COUNT boxes|box'],
    says: 'What is left with the customer.',
  },
  ...carried('product'),
  // a floor
  { word: 'rooms', home: 'floor', takes: 'names', forms: [], says: 'One area, one run of planks.' },
  {
    word: 'lay',
    home: 'floor',
    takes: 'phrases',
    forms: [
      'running east-west|north-south|north-east|north-west',
      'running along WALL of ROOM',
      'PRODUCT',
    ],
    needs: 'PRODUCT',
    says: 'The product and its direction.',
  },
  {
    word: 'start',
    home: 'floor',
    takes: 'phrases',
    forms: ['along WALL of ROOM'],
    needs: 'along WALL of ROOM',
    says: 'The wall that the first course lies along.',
  },
  {
    word: 'shift',
    home: 'floor',
    takes: 'phrases',
    forms: ['LENGTH WAY'],
    needs: 'LENGTH WAY',
    says: 'Moves the line off its balanced place.',
  },
  {
    word: 'break',
    home: 'floor',
    takes: 'phrases',
    forms: ['ROOM to ROOM', 'with TRIM', 'called NAME'],
    needs: 'ROOM to ROOM',
    says: 'The run is parted in this doorway.',
  },
  {
    word: 'edge',
    home: 'floor',
    takes: 'phrases',
    forms: ['WALL of ROOM', 'ROOM to ROOM', 'with TRIM', 'called NAME', EDGE_KINDS, 'LENGTH gap'],
    says: 'What the rim meets there, and what covers it.',
  },
  {
    word: 'expect',
    home: 'floor',
    takes: 'phrases',
    forms: ['COUNT boxes|box', 'COUNT planks', 'NUMBER sq ft', 'NUMBER sq m', 'within PERCENT'],
    says: 'What the numbers should be; a difference is an error.',
  },
  ...carried('floor'),
  // prices: read and kept
  ...[
    'currency',
    'price',
    'labour',
    'markup',
    'margin',
    'tax',
    'date',
    'supplier',
    'discount',
    'deposit',
  ].map(
    (word): Word => ({ word, home: 'prices', takes: 'text', forms: [], says: 'Read and kept.' }),
  ),
  ...carried('prices'),
]
