import { type Message, message } from '../facts/message.ts'
import type { OnWall, Opening, Recess, Wall } from '../job/job.ts'
import type { UnitStyle } from '../units/length.ts'
import { leadAt } from './base-plane.ts'
import { lengthWords, wallWords } from './labels.ts'
import { allowedFor, lengthFrom } from './reading.ts'
import { isDisputed, type Shape } from './shape.ts'
import { type Stretch, stretchOn, wholeWall } from './stretch.ts'
import { type WallFrame, wallFrame } from './wall-frame.ts'

/** A thing with its place on the adjusted wall. */
export interface Placed<T> {
  readonly thing: T
  /** Its index among the room's openings or recesses. */
  readonly index: number
  readonly frame: WallFrame
  readonly stretch: Stretch
}

export interface Places {
  readonly openings: readonly Placed<Opening>[]
  readonly recesses: readonly Placed<Recess>[]
}

type Say = (message: Message) => void

/** Puts a room's openings and recesses on its adjusted walls; what has no place yet is left out. */
export function placesOf(shape: Shape, style: UnitStyle, say: Say): Places {
  const frames = new Map<number, WallFrame>()
  const frameOf = (wall: number) => {
    const frame = frames.get(wall) ?? wallFrame(shape.corners, wall)
    frames.set(wall, frame)
    return frame
  }
  const put = <T extends Opening | Recess>(thing: T, index: number): readonly Placed<T>[] => {
    if (thing.place === null) return []
    const wall = shape.room.walls[thing.place.wall]!
    const frame = frameOf(wall.index)
    if (thing.kind === 'open side')
      return [{ thing, index, frame, stretch: wholeWall(wall, frame) }]
    if (wall.bow !== null) {
      say(onCurvedWall(shape, thing, wall))
      return []
    }
    const jambs = jambsDisagree(thing.place, thing, style)
    if (jambs !== null) say(jambs)
    const corner =
      thing.place.from === 'left' ? wall.index : (wall.index + 1) % shape.corners.length
    const stretch = stretchOn(thing.place, wall, frame, leadOf(shape, corner))
    if (stretch === 'past' && !readPast(thing.place, wall) && !isDisputed(shape))
      say(pastWall(shape, thing, frame, style))
    return stretch === null || stretch === 'past' ? [] : [{ thing, index, frame, stretch }]
  }
  return {
    openings: shape.room.openings.flatMap(put),
    recesses: shape.room.recesses.flatMap(put),
  }
}

/** How far a corner of the rim lies, along its walls, beyond the corner that the tape touched. */
function leadOf({ plane, corners }: Shape, corner: number): number {
  if (plane.grown === 0) return 0
  const before = wallFrame(corners, (corner + corners.length - 1) % corners.length)
  return plane.grown * leadAt(before.along, wallFrame(corners, corner).along)
}

/** Already past the wall as it was read, which is said where the readings are typed. */
function readPast(place: OnWall, wall: Wall): boolean {
  const whole = wall.reading.nm
  const end = place.far?.nm ?? (place.distance.nm ?? 0) + (place.width.nm ?? 0)
  const slack = allowedFor([
    wall.reading.sigma,
    place.distance.sigma,
    (place.far ?? place.width).sigma,
  ])
  return whole !== null && (end > whole + slack || end <= (place.distance.nm ?? 0))
}

function pastWall(
  shape: Shape,
  thing: Opening | Recess,
  frame: WallFrame,
  style: UnitStyle,
): Message {
  const text =
    `This ${thing.kind} ends past ${wallWords(shape.room, frame.wall)}, which is ${lengthWords(frame.length, style)} once the room is closed. ` +
    'Take its place and its width again.'
  return message('error', 'opening-past-wall', thing.place!.distance.span, text)
}

function onCurvedWall(shape: Shape, thing: Opening | Recess, wall: Wall): Message {
  const text =
    `This ${thing.kind} stands on ${wallWords(shape.room, wall.index)}, which is curved, and cannot be drawn there. ` +
    'Write the curve as two walls with a straight one between them for it.'
  return message('error', 'opening-on-curved-wall', thing.span, text)
}

/** Both jambs off one hook and the width between them: one of the three is a check. */
function jambsDisagree(place: OnWall, thing: Opening | Recess, style: UnitStyle): Message | null {
  const [near, far, width] = [place.distance, place.far, place.width].map(lengthFrom)
  if (!near || !far || !width) return null
  const difference = Math.abs(far.nm - near.nm - width.nm)
  const allowed = allowedFor([near.sigma, far.sigma, width.sigma])
  if (difference <= allowed) return null
  const text =
    `The jambs of this ${thing.kind} lie ${lengthWords(far.nm - near.nm, style)} apart, but its width was read as ` +
    `${lengthWords(width.nm, style)}; the readings allow ${lengthWords(allowed, style)}. Take all three again.`
  return message('warning', 'jambs-disagree', place.width.span, text)
}
