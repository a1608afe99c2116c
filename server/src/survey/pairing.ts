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
  /** The measured room beyond, written from there or not; null for any other, or where that is not clear. */
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
  const unclear = new Set<Side>()
  for (const [key, group] of groups) {
    if (key === null) continue
    const { pairs, left } = matched(group, plans, say)
    for (const side of left) unclear.add(side)
    for (const [a, b] of pairs) {
      if (!faceEachOther(a, b, plans, say)) {
        unclear.add(a).add(b)
        continue
      }
      sayWidths(a, b, plans, { style, say })
      sayThickness(a, b, style, say)
      partners.set(a, b)
      partners.set(b, a)
    }
  }
  return sides.flatMap((side) => {
    const far = partners.get(side) ?? null
    const beyond = unclear.has(side) ? null : beyondOf(side)
    return far !== null && far.room < side.room ? [] : [{ near: side, far, beyond }]
  })
}

interface Matched {
  readonly pairs: readonly (readonly [Side, Side])[]
  /** Sides of which it cannot be told which is which, and was said so. */
  readonly left: readonly Side[]
}

/** The doorways between two rooms whose two sides are known to be one. */
function matched(group: readonly Side[], plans: readonly RoomPlan[], say: Say): Matched {
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
  const [a, b] = [left[0], there[0]]
  if (!a || !b) return { pairs, left: [] }
  if (left.length > 1 || there.length > 1) {
    say(ambiguous(left, there, plans))
    return { pairs, left: [...left, ...there] }
  }
  // Two that have different names are two doors.
  const same = nameOf(a) === null || nameOf(b) === null
  return { pairs: same ? [...pairs, [a, b]] : pairs, left: [] }
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

/**
 * From the rim of the near room to the rim of the far one: the wall's thickness, as either side's own
 * line says, else as the job does (0 while nobody did, which is asked), and a kept base on either side.
 */
export function throughAt({ near, far }: Pair, plans: readonly RoomPlan[]): number {
  const sides = far === null ? [near] : [near, far]
  const openings = sides.map(({ face }) => face.opening)
  const own = openings.map(ownThickness).find((thickness) => thickness !== null)
  const given = own ?? openings.find(({ thickness }) => thickness !== null)?.thickness
  if (near.face.opening.kind === 'open side') return given?.value ?? 0
  const bases = sides.map(({ room }) => plans[room]!.shape.plane.inset)
  return bases.reduce((sum, inset) => sum + inset, given?.value ?? 0)
}
