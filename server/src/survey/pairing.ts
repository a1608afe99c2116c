import { type Message, message } from '../facts/message.ts'
import type { Opening } from '../job/job.ts'
import type { UnitStyle } from '../units/length.ts'
import type { Face } from './faces.ts'
import { countWords, lengthWords } from './labels.ts'
import { allowedFor } from './reading.ts'
import type { RoomPlan } from './room-plan.ts'
import { dot } from './vector.ts'

/** A face and the room (index in written order) that it belongs to. */
export interface Side {
  readonly room: number
  readonly face: Face
}

/** A doorway as far as it is written: from one room, or from both. */
export interface Pair {
  /** As the room written first has it. */
  readonly near: Side
  /** As the room beyond has it; null where that room does not write it. */
  readonly far: Side | null
  /** The measured room beyond, written from there or not; null for any other. */
  readonly beyond: number | null
}

type Say = (message: Message) => void

/**
 * Brings the two sides of each doorway together: by their names where they have the same one, else
 * where just one door on either side is left between two rooms. Pairs come in written order.
 */
export function pairDoorways(
  plans: readonly RoomPlan[],
  style: UnitStyle,
  say: Say,
): readonly Pair[] {
  const rooms = new Map(plans.map((plan, i) => [plan.shape.room.name.key, i]))
  const beyondOf = ({ room, face }: Side): number | null => {
    const index = face.opening.to === null ? undefined : rooms.get(face.opening.to.key)
    return index === undefined || plans[index]!.shape.walls.length === 0 || index === room
      ? null
      : index
  }
  const sides = plans.flatMap(({ faces }, room) => faces.map((face): Side => ({ room, face })))
  for (const side of sides) sayOwnRoom(side, plans, say)
  const groups = Map.groupBy(sides, (side) => {
    const beyond = beyondOf(side)
    if (beyond === null) return null
    return `${Math.min(side.room, beyond)} ${Math.max(side.room, beyond)}`
  })
  const partners = new Map<Side, Side>()
  for (const [key, group] of groups) {
    if (key === null) continue
    for (const [a, b] of matched(group, plans, say)) {
      if (!faceEachOther(a, b, plans, say)) continue
      sayWidths(a, b, plans, { style, say })
      sayThickness(a, b, style, say)
      partners.set(a, b)
      partners.set(b, a)
    }
  }
  return sides.flatMap((side) => {
    const far = partners.get(side) ?? null
    return far !== null && far.room < side.room ? [] : [{ near: side, far, beyond: beyondOf(side) }]
  })
}

/** The doorways between two rooms whose two sides are known to be one. */
function matched(
  group: readonly Side[],
  plans: readonly RoomPlan[],
  say: Say,
): readonly (readonly [Side, Side])[] {
  const first = Math.min(...group.map((side) => side.room))
  const here = group.filter((side) => side.room === first)
  const there = group.filter((side) => side.room !== first)
  const pairs: (readonly [Side, Side])[] = []
  const left = here.filter((side) => {
    const name = nameOf(side)
    const same = there.findIndex((other) => name !== null && nameOf(other) === name)
    if (same < 0) return true
    pairs.push([side, there.splice(same, 1)[0]!])
    return false
  })
  if (left.length === 0 || there.length === 0) return pairs
  const [a, b] = [left[0]!, there[0]!]
  const lone = left.length === 1 && there.length === 1
  if (lone && (nameOf(a) === null || nameOf(b) === null)) return [...pairs, [a, b]]
  if (!lone) say(ambiguous(left, there, plans))
  return pairs
}

const nameOf = ({ face }: Side): string | null => face.opening.name?.key ?? null
const roomName = ({ room }: Side, plans: readonly RoomPlan[]) => plans[room]!.shape.room.name.text

function ambiguous(
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

function sayOwnRoom({ room, face }: Side, plans: readonly RoomPlan[], say: Say): void {
  const { name } = plans[room]!.shape.room
  if (face.opening.to?.key !== name.key) return
  const text = `This ${face.opening.kind} leads from ${name.text} to ${name.text} itself. Name the room beyond it.`
  say(message('error', 'doorway-to-own-room', face.opening.span, text))
}

/** Within 45 degrees: out-of-square rooms meet at an angle, a door in the wrong wall by a right one. */
const FACING = -0.7

function faceEachOther(a: Side, b: Side, plans: readonly RoomPlan[], say: Say): boolean {
  if (dot(a.face.frame.out, b.face.frame.out) <= FACING) return true
  const [walls, rooms] = [
    [a, b].map(({ room, face }) => plans[room]!.shape.room.walls[face.frame.wall]!.label),
    [a, b].map((side) => roomName(side, plans)),
  ]
  const text =
    `This ${b.face.opening.kind} is in ${walls[1]} of ${rooms[1]}, but in ${walls[0]} of ${rooms[0]}; these two walls do not face each other. ` +
    'All rooms need one north: is it under the wrong wall, or was a room begun from another way?'
  say(
    message('error', 'doorway-walls-do-not-face', b.face.opening.span, text, {
      related: [{ span: a.face.opening.span, text: `In ${rooms[0]}.` }],
    }),
  )
  return false
}

const widthOf = ({ face }: Side) => face.stretch.right - face.stretch.left

function sayWidths(
  a: Side,
  b: Side,
  plans: readonly RoomPlan[],
  { style, say }: { readonly style: UnitStyle; readonly say: Say },
): void {
  const widths = [a, b].map(({ face }) => face.opening.place!.width)
  const allowed = allowedFor(widths.map(({ sigma }) => sigma))
  if (Math.abs(widthOf(a) - widthOf(b)) <= allowed) return
  const [x, y] = [a, b].map((side) => lengthWords(widthOf(side), style))
  const text =
    `This ${a.face.opening.kind} is ${x} wide from ${roomName(a, plans)} and ${y} from ${roomName(b, plans)}. ` +
    'Take it again; if they are two, give each a name: called …'
  say(
    message('warning', 'door-widths-disagree', b.face.opening.place!.width.span, text, {
      related: [{ span: widths[0]!.span, text: `From ${roomName(a, plans)}.` }],
    }),
  )
}

/** Thickness is written, not read off two hooks: a quarter of an inch apart is another wall. */
const SAME_THICKNESS = 6_350_000

function sayThickness(a: Side, b: Side, style: UnitStyle, say: Say): void {
  const [first, second] = [ownThickness(a.face.opening), ownThickness(b.face.opening)]
  if (first === null || second === null || Math.abs(first.value - second.value) <= SAME_THICKNESS)
    return
  const text =
    `The wall here is ${lengthWords(second.value, style)} thick, but ${lengthWords(first.value, style)} from the other side. ` +
    'Measure it at the jamb and write it on one side only.'
  say(
    message('warning', 'thickness-disagrees', second.span!, text, {
      related: [{ span: first.span!, text: 'The other side.' }],
    }),
  )
}

/** A thickness that the opening's own line gives, not the job's. */
function ownThickness({ thickness, span }: Opening) {
  const own = thickness?.span ?? null
  const inside =
    own !== null && own.file === span.file && own.start >= span.start && own.end <= span.end
  return inside ? thickness : null
}

/** The wall's thickness at a doorway: as either side's own line says, else as the job does; null: nobody did. */
export function thicknessAt({ near, far }: Pair): number | null {
  const sides = far === null ? [near] : [near, far]
  const openings = sides.map(({ face }) => face.opening)
  const own = openings.map(ownThickness).find((thickness) => thickness !== null)
  return (
    (own ?? openings.map(({ thickness }) => thickness).find((thickness) => thickness !== null))
      ?.value ?? null
  )
}
