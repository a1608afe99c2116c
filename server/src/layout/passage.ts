import type { Span } from '../facts/span.ts'
import type { Point } from '../geometry/point.ts'
import { distanceToLine } from '../geometry/splice.ts'
import { keyOf } from '../language/name.ts'
import type { Doorway, Survey, SurveyedCloset, SurveyedRoom } from '../survey/survey.ts'
import type { Nm } from '../units/length.ts'
import { roundToNm } from '../units/round.ts'
import { beyondOf, calledOf } from './edge-said.ts'

/**
 * An opening that a floor may run through, end in or be broken in: a doorway between rooms or the throat
 * of a closet, seen from the room on its near side.
 */
export interface Passage {
  readonly label: string
  readonly room: { readonly key: string; readonly text: string }
  /** Key and text of what lies beyond; the key is null where nothing is named. */
  readonly beyond: { readonly key: string | null; readonly text: string }
  readonly called: string | null
  /** The faces, left end and right end as seen from the near room. */
  readonly near: readonly [Point, Point]
  readonly far: readonly [Point, Point]
  readonly width: Nm
  readonly thickness: Nm
  /** Its sides are jambs that the floor runs under. */
  readonly undercut: boolean
  /** A sliding door to the outside. */
  readonly slider: boolean
  /** A whole side without a wall: no doorway, whatever its width. */
  readonly openSide: boolean
  /** What lies beyond begins where this ends. */
  readonly reaches: boolean
  readonly trim: string | null
  readonly span: Span
}

/** The passages of a house, and by the key of each room or closet which of them lead to it or from it. */
interface Passages {
  readonly all: readonly Passage[]
  readonly at: ReadonlyMap<string, readonly number[]>
}

const known = new WeakMap<Survey, Passages>()

/**
 * The passages that lead to or from any of the rooms and closets with these keys, doorways first, then
 * closets, in written order. A house is looked through once, however many floors it has.
 */
export function passagesAt(survey: Survey, keys: ReadonlySet<string>): readonly Passage[] {
  const { all, at } = known.get(survey) ?? sorted(survey)
  const wanted = new Set([...keys].flatMap((key) => at.get(key) ?? []))
  return [...wanted].sort((a, b) => a - b).map((i) => all[i]!)
}

function sorted(survey: Survey): Passages {
  const all = passagesOf(survey)
  const at = new Map<string, number[]>()
  for (const [i, { room, beyond }] of all.entries()) {
    for (const key of [room.key, beyond.key]) {
      if (key === null) continue
      const there = at.get(key)
      if (there) there.push(i)
      else at.set(key, [i])
    }
  }
  known.set(survey, { all, at })
  return { all, at }
}

function passagesOf(survey: Survey): Passage[] {
  const texts = new Map(survey.rooms.map(({ room }) => [room.name.key, room.name.text]))
  return [
    ...survey.doorways.map((doorway) => ofDoorway(doorway, texts)),
    ...survey.rooms.flatMap((room) => room.closets.map((closet) => ofCloset(room, closet))),
  ]
}

/** The same doorway between rooms called the same, and the same closet, is the same passage. */
const made = new WeakMap<Doorway | SurveyedCloset, Passage>()

function ofDoorway(doorway: Doorway, texts: ReadonlyMap<string, string>): Passage {
  const beyond = beyondOf(doorway)
  const room = texts.get(doorway.room) ?? doorway.room
  const text = (beyond === null ? undefined : texts.get(beyond)) ?? doorway.toText
  const before = made.get(doorway)
  if (before?.room.text === room && before.beyond.text === text) return before
  const passage: Passage = {
    label: doorway.label,
    room: { key: doorway.room, text: room },
    beyond: { key: beyond, text },
    called: calledOf(doorway),
    near: doorway.near,
    far: doorway.far,
    width: doorway.width,
    thickness: doorway.thickness,
    undercut: doorway.jambs,
    slider: doorway.opening.sliding && doorway.to === null,
    openSide: doorway.kind === 'open side',
    reaches: doorway.reaches,
    trim: doorway.opening.trim ?? doorway.other?.trim ?? null,
    span: doorway.opening.span,
  }
  made.set(doorway, passage)
  return passage
}

function ofCloset(room: SurveyedRoom, closet: SurveyedCloset): Passage {
  const before = made.get(closet)
  if (before !== undefined) return before
  const recess = room.room.recesses[closet.recess]!
  const [nearLeft, nearRight, farRight, farLeft] = fromNearFace(room, closet)
  const text = room.room.name.text
  const passage: Passage = {
    label: `${text} to ${closet.name}`,
    room: { key: room.room.name.key, text },
    beyond: { key: keyOf(closet.name), text: closet.name },
    called: null,
    near: [nearLeft, nearRight],
    far: [farRight, farLeft].toReversed() as [Point, Point],
    width: recess.place!.width.nm ?? 0,
    thickness: recess.thickness!.value,
    // A closet's line says nothing of jambs: its sides are taken as finished wall.
    undercut: false,
    slider: false,
    openSide: false,
    reaches: true,
    trim: null,
    span: recess.span,
  }
  made.set(closet, passage)
  return passage
}

/** The corners of a closet's throat from the left end of the face in the room. */
function fromNearFace(
  room: SurveyedRoom,
  { recess, throat }: SurveyedCloset,
): readonly [Point, Point, Point, Point] {
  const { wall } = room.room.recesses[recess]!.place!
  const line = {
    from: room.corners[wall]!,
    to: room.corners[(wall + 1) % room.corners.length]!,
  }
  const off = throat.map(
    (point, i) => distanceToLine(point, line) + distanceToLine(throat[(i + 1) % 4]!, line),
  )
  const at = off.indexOf(Math.min(...off))
  return [0, 1, 2, 3].map((i) => throat[(at + i) % 4]!) as [Point, Point, Point, Point]
}

/** The same passage seen from beyond, which must be named. */
export function fromBeyond(passage: Passage): Passage {
  const { room, beyond, near, far } = passage
  const named = passage.called !== null
  return {
    ...passage,
    label: named ? passage.label : `${beyond.text} to ${room.text}`,
    room: { key: beyond.key!, text: beyond.text },
    beyond: room,
    near: [far[1], far[0]],
    far: [near[1], near[0]],
  }
}

/** The passage with its sides moved out under the jambs. */
export function widened(passage: Passage, under: Nm): Passage {
  return { ...passage, near: stretched(passage.near, under), far: stretched(passage.far, under) }
}

function stretched([left, right]: readonly [Point, Point], by: Nm): readonly [Point, Point] {
  const east = right.x - left.x
  const north = right.y - left.y
  const length = Math.sqrt(east * east + north * north)
  if (length === 0) return [left, right]
  const dx = roundToNm((east / length) * by)
  const dy = roundToNm((north / length) * by)
  return [
    { x: left.x - dx, y: left.y - dy },
    { x: right.x + dx, y: right.y + dy },
  ]
}

/** Halfway between the faces, where the closed door's middle stands: left end and right end. */
export function middleOf({ near, far }: Passage): readonly [Point, Point] {
  return [halfway(near[0], far[0]), halfway(near[1], far[1])]
}

function halfway(a: Point, b: Point): Point {
  return { x: roundToNm((a.x + b.x) / 2), y: roundToNm((a.y + b.y) / 2) }
}
