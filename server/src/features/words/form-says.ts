import { WALL_WORDS } from '../../language/word.ts'

/**
 * What one phrase of a line says, in a sentence: by the line's word where it matters, else for every
 * line that takes the form. Null for a form that the language does not have.
 */
export function formSays(word: string, form: string): string | null {
  const ofWall = WALL_WORDS.includes(word) ? OF_WALLS.get(form) : undefined
  return ofWall ?? BY_WORD.get(`${word}: ${form}`) ?? ANYWHERE.get(form) ?? null
}

const OF_WALLS: ReadonlyMap<string, string> = new Map([
  ['LENGTH', 'How long the wall is, from its left end to its right end as you face it.'],
  ['LENGTH thick', 'How thick this wall is; an opening in it may say otherwise.'],
  ['LENGTH WAY', 'How far the slant takes you that way, walking it from left to right.'],
  ['called NAME', 'A name of its own, for lines that speak of this wall.'],
])

const BY_WORD: ReadonlyMap<string, string> = new Map([
  // Openings and recesses.
  ['door: LENGTH', 'The clear width between the jambs, at the floor.'],
  ['opening: LENGTH', 'The clear width between its sides, at the floor.'],
  ['pass-through: LENGTH', 'The clear width between its sides, at the floor.'],
  ['closet: LENGTH', 'How wide its opening is.'],
  ['alcove: LENGTH', 'How wide it is along the wall.'],
  ['hearth: LENGTH', 'How wide it is along the wall.'],
  ['closet: LENGTH thick', 'How thick the wall is between room and closet.'],
  // Further readings.
  ['diagonal: LENGTH', 'The distance from corner to corner.'],
  ['across: LENGTH', 'The width, square off the first wall named.'],
  ['tie: LENGTH', 'The distance between the two marks, or between the two walls.'],
  ['again: LENGTH', 'The reading above, taken again: both count, by their mean.'],
  ['parts: LENGTH', 'A stretch of plain wall.'],
  ['across: LENGTH from left|right', 'Where along the first wall the width was read.'],
  // Lines for a file or a room.
  [
    'tape: LENGTH + LENGTH per LENGTH',
    'What one reading is worth: one standard deviation, growing with its length.',
  ],
  ['tape: about LENGTH', 'What one reading marked "about" is worth.'],
  ['tape: LENGTH', 'What one reading is worth: one standard deviation.'],
  ['base: LENGTH thick', 'How thick the base board is: by so much it moves the wall.'],
  [
    'base: kept|off and back|new|none',
    'What becomes of the base: where it stays the floor stops at it.',
  ],
  ['walls: LENGTH thick', 'How thick walls are unless an opening says otherwise.'],
  ['floorscribe: COUNT', 'The version of the language that this file is written in.'],
  // Products.
  ['plank: SIZE', "The plank's face: width by length."],
  ['plank: LENGTH thick', 'How thick the plank is.'],
  ['plank: LENGTH wide', "How wide the plank's face is."],
  ['plank: LENGTH long', "How long the plank's face is."],
  ['run: LENGTH wide', 'The most across the planks without a break.'],
  ['run: LENGTH long', 'The most along the planks without a break.'],
  ['box: COUNT planks', 'How many planks a box holds.'],
  ['spoil: COUNT planks', 'Planks that will be spoiled, bought on top; at least 2.'],
  ['spares: COUNT planks', 'Planks that are left with the customer, bought on top.'],
  ['spares: COUNT boxes|box', 'Boxes that are left with the customer, bought on top.'],
  ['box: NUMBER sq ft', 'What a box covers; the number of planks follows from it.'],
  ['box: NUMBER sq m', 'What a box covers; the number of planks follows from it.'],
  ['gap: LENGTH', 'How far the floor stays off a wall, to be free to grow.'],
  ['allowance: PERCENT', 'The percentage for waste that the count is compared with.'],
  ['spoil: PERCENT', 'So much of the planks of all floors will be spoiled, rounded up.'],
  // Floors.
  ['shift: LENGTH WAY', 'By how much, and which way, the line is moved off its balanced place.'],
  ['edge: called NAME', 'Which of several doorways between these rooms is meant.'],
  ['break: called NAME', 'Which of several doorways between these rooms is meant.'],
  ['edge: ROOM to ROOM', 'The doorway where this floor ends, from the room that lies in it.'],
  ['break: ROOM to ROOM', 'The doorway in which the run is parted.'],
  ['expect: COUNT planks', 'How many planks this floor should take.'],
  ['expect: COUNT boxes|box', 'How many boxes of the product should be bought.'],
  ['expect: NUMBER sq ft', 'How large this floor should be.'],
  ['expect: NUMBER sq m', 'How large this floor should be.'],
  // Lines of every block.
  ['hold: NAME', 'What must be cleared before anything is ordered.'],
  ['accept: NAME', 'The warning that is settled, by the name that stands beside it.'],
  ['corner: NAME', 'The name of this corner.'],
  ['square: NAME', 'The corner that was tested 3-4-5.'],
  ['rooms: NAME', 'A room or closet that is laid as part of this floor.'],
  ['subfloor: NAME', 'What the floor lies on.'],
  ['existing: NAME', 'What lies there now; "stays" leaves it.'],
  ['room: NAME', 'The name of the room.'],
  ['product: NAME', 'The name of the product.'],
  ['floor: NAME', 'The name of the floor.'],
  ['prices: NAME', 'The name of the price book.'],
])

const FROM_A_SIDE = 'How far its near side is from that end of the wall, as you face it.'
const OFF_ONE_HOOK = 'Both its sides, read off one hook from that end of the wall.'
const PART = 'A stretch of the wall that this stands in, as wide as it is.'
const WIDTH_OF_THING = 'How wide it is that way.'

const ANYWHERE: ReadonlyMap<string, string> = new Map([
  ['LENGTH from left|right', FROM_A_SIDE],
  ['LENGTH and LENGTH from left|right', OFF_ONE_HOOK],
  ['LENGTH from WALL', 'How far its nearest side is from that wall.'],
  ['in WALL', 'The wall that it is in, where it does not stand under it.'],
  ['to ROOM', 'The room beyond; "outside" is one.'],
  ['open to ROOM', 'There is no wall here: the floor goes on into that room.'],
  ['LENGTH thick', 'How thick the wall is here.'],
  ['called NAME', 'A name of its own, for lines that speak of it.'],
  ['with TRIM', 'The trim piece that covers this edge.'],
  ['touching base|wall|toe-kick|jamb', 'What the end of the tape touched.'],
  ['swings in|out', 'Which way the door swings, seen from this room.'],
  ['sliding', 'A sliding door; to outside it has no jambs to undercut.'],
  ['pocket', 'A door that slides into the wall.'],
  ['bifold', 'A folding door.'],
  ['cased', 'Its sides are cased: they are undercut and the floor runs under them.'],
  ['stair up|down', 'A stair begins here.'],
  ['LENGTH bow in|out', 'By how much the wall bows into the room or out of it, at its middle.'],
  ['LENGTH bow', 'By how much the wall bows out of the room, at its middle.'],
  ['ANGLE left|right', 'By how much it turns from the wall before.'],
  ['LENGTH gap', 'How far the floor stays off it.'],
  ['LENGTH deep', 'How deep it is, from the face of the wall.'],
  ['LENGTH inside', 'How wide the closet is inside.'],
  ['LENGTH left return', 'How far the closet goes on to the left of its opening, inside.'],
  ['LENGTH right return', 'How far the closet goes on to the right of its opening, inside.'],
  ['SIZE', 'Its size, east-west by north-south.'],
  ['LENGTH round', 'How thick it is, for a round one.'],
  ['LENGTH east-west', WIDTH_OF_THING],
  ['LENGTH north-south', WIDTH_OF_THING],
  ...['door', 'opening', 'pass-through', 'closet', 'alcove', 'hearth'].map(
    (word) => [`${word} LENGTH`, PART] as const,
  ),
  ['from CORNER to CORNER', 'Its two corners.'],
  ['from WALL to WALL', 'The wall that it is square to, then the wall that it was read to.'],
  ['from WALL to WALL of ROOM', 'A wall of this room, then a wall of the other.'],
  ['LENGTH along WALL', 'How far the mark on that wall is from the corner.'],
  ['middle', 'It was read at the middle of the first wall.'],
  ['feet-inches|inches|mm|cm|m', 'What lengths are printed in.'],
  ['bare inches|mm|cm|m', 'What a number without a unit is, in this file.'],
  ['LENGTH under', 'How far the floor runs under each undercut jamb.'],
  ['COUNT pieces', 'How many offcuts may wait to be used at once.'],
  ['COUNT courses', 'For how many courses an offcut may wait.'],
  ['COUNT of LENGTH', 'How many planks of that length a box holds.'],
  ['attached|separate|none', 'Whether the pad is on the plank.'],
  ['LENGTH stagger', 'The least between end joints of neighbouring courses.'],
  ['LENGTH shortest end', 'The least length of a piece at the end of a course.'],
  ['LENGTH narrowest rip', 'The least width of a ripped piece.'],
  ['through doorways', 'The run goes through doorways.'],
  ['breaks at doorways', 'The run is parted in every doorway.'],
  ['breaks at doorways under LENGTH', 'The run is parted in doorways narrower than this.'],
  ['left to right|right to left|either way', 'Which way a course is laid: the hand of the lock.'],
  ['LENGTH kerf along', 'What a rip takes of the plank.'],
  ['LENGTH kerf across', 'What a cut across takes of the plank.'],
  ['LENGTH kerf', 'What any cut takes of the plank.'],
  ['LENGTH to spare', 'What is kept free on a plank that gives an end piece and a start piece.'],
  ['saw|score and snap|guillotine|knife', 'How planks are cut.'],
  ['running east-west|north-south|north-east|north-west', 'Which way the planks run.'],
  ['running along WALL of ROOM', 'The wall that the planks run along.'],
  ['along WALL of ROOM', 'The wall that the first course lies along.'],
  ['PRODUCT', 'What is laid.'],
  ['WALL of ROOM', 'The wall where this floor ends.'],
  [
    'base kept|base off and back|base new|no base|tub|hearth|slider|cabinet|nosing|open edge|carpet',
    'What the floor meets here: it gives the gap and what covers it.',
  ],
  ['within PERCENT', 'How far off the number may be.'],
  ['cleared DATE', 'The day that it was cleared.'],
  ['by NAME', 'Who clears it.'],
  ['on NAME', 'The paper that it stands on.'],
  ['because NAME', 'Why it is accepted.'],
])
