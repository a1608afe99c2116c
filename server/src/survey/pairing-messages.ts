import { type Message, message } from '../facts/message.ts'
import { NM_PER_INCH, type UnitStyle } from '../units/length.ts'
import { countWords, lengthWords } from './labels.ts'
import type { Side } from './pairing.ts'
import { allowedFor } from './reading.ts'
import type { RoomPlan } from './room-plan.ts'
import { ownThickness } from './through.ts'

const roomName = ({ room }: Side, plans: readonly RoomPlan[]) => plans[room]!.shape.room.name.text

/** Several openings between two rooms, without names that tell which is which. */
export function ambiguous(
  here: readonly Side[],
  there: readonly Side[],
  plans: readonly RoomPlan[],
): Message {
  const [a, b] = [roomName(here[0]!, plans), roomName(there[0]!, plans)]
  const doors = (count: number) => `${countWords(count)} ${count === 1 ? 'opening' : 'openings'}`
  const text =
    `${a} has ${doors(here.length)} to ${b}, and ${b} ${doors(there.length)} to ${a}: which are the same cannot be told. ` +
    'Give each a name that both rooms use: called …'
  return message('error', 'doorways-not-clear', here[0]!.face.opening.span, text, {
    related: [...here.slice(1), ...there].map((side) => ({
      span: side.face.opening.span,
      text: `In ${roomName(side, plans)}.`,
    })),
  })
}

export function toOwnRoom({ room, face }: Side, plans: readonly RoomPlan[]): Message {
  const { name } = plans[room]!.shape.room
  const text = `This ${face.opening.kind} leads from ${name.text} to ${name.text} itself. Name the room beyond it.`
  return message('error', 'doorway-to-own-room', face.opening.span, text)
}

/** The two sides of a door lie in walls that do not face each other. */
export function doNotFace(a: Side, b: Side, plans: readonly RoomPlan[]): Message {
  const wall = ({ room, face }: Side) => plans[room]!.shape.room.walls[face.frame.wall]!.label
  const [here, there] = [roomName(a, plans), roomName(b, plans)]
  const text =
    `This ${b.face.opening.kind} is in ${wall(b)} of ${there}, but in ${wall(a)} of ${here}; these two walls do not face each other. ` +
    'All rooms need one north: is it under the wrong wall, or was a room begun from another way?'
  return message('error', 'doorway-walls-do-not-face', b.face.opening.span, text, {
    related: [{ span: a.face.opening.span, text: `In ${here}.` }],
  })
}

/** What both sides of a doorway say and do not say alike: its width, the thickness of its wall. */
export function sidesDisagree(
  a: Side,
  b: Side,
  plans: readonly RoomPlan[],
  style: UnitStyle,
): readonly Message[] {
  return [...widthsDisagree(a, b, plans, style), ...thicknessDisagrees(a, b, style)]
}

const widthOf = ({ face }: Side) => face.stretch.right - face.stretch.left

function widthsDisagree(
  a: Side,
  b: Side,
  plans: readonly RoomPlan[],
  style: UnitStyle,
): readonly Message[] {
  const widths = [a, b].map(({ face }) => face.opening.place!.width)
  const allowed = allowedFor(widths.map(({ sigma }) => sigma))
  if (Math.abs(widthOf(a) - widthOf(b)) <= allowed) return []
  const [x, y] = [a, b].map((side) => lengthWords(widthOf(side), style))
  const text =
    `This ${a.face.opening.kind} is ${x} wide from ${roomName(a, plans)} and ${y} from ${roomName(b, plans)}. ` +
    'Take it again; if they are two, give each a name: called …'
  const related = [{ span: widths[0]!.span, text: `From ${roomName(a, plans)}.` }]
  return [message('warning', 'door-widths-disagree', widths[1]!.span, text, { related })]
}

/** Thickness is written, not read off two hooks: a quarter of an inch apart is another wall. */
const SAME_THICKNESS = NM_PER_INCH / 4

function thicknessDisagrees(a: Side, b: Side, style: UnitStyle): readonly Message[] {
  const [first, second] = [ownThickness(a.face.opening), ownThickness(b.face.opening)]
  if (first === null || second === null || Math.abs(first.value - second.value) <= SAME_THICKNESS)
    return []
  const text =
    `The wall here is ${lengthWords(second.value, style)} thick, but ${lengthWords(first.value, style)} from the other side. ` +
    'Measure it at the jamb and write it on one side only.'
  const related = [{ span: first.span!, text: 'The other side.' }]
  return [message('warning', 'thickness-disagrees', second.span!, text, { related })]
}
