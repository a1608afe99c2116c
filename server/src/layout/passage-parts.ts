import { union } from '../geometry/clip.ts'
import { twiceArea } from '../geometry/exact.ts'
import { anyMeeting } from '../geometry/meet.ts'
import type { Region, Ring } from '../geometry/point.ts'
import { type Edge, edgesOf, type Scope } from './area-scope.ts'
import { breakBetween, type EdgeSettled, jambEdge, meetingEdge } from './edge-said.ts'
import type { Transition } from './floor-area.ts'
import { fromBeyond, middleOf, type Passage, widened } from './passage.ts'

/** What one passage adds to the floor. */
export interface PassagePart {
  readonly solids: readonly (readonly Edge[])[]
  readonly transition: Transition | null
  readonly through: { readonly label: string; readonly ring: Ring } | null
  readonly jambSides: number
  readonly joins: readonly [string, string] | null
}

/** What a passage adds to a floor that lists the room on one side of it or on both; else nothing. */
export function passagePart(scope: Scope, passage: Passage): PassagePart[] {
  const near = scope.listed.has(passage.room.key)
  const far = passage.beyond.key !== null && scope.listed.has(passage.beyond.key)
  if (!near && !(far && passage.reaches)) return []
  if (!near || !far) return [endingPart(scope, near ? passage : fromBeyond(passage))]
  if (!passage.reaches) return [endingPart(scope, passage)]
  const joins = [passage.room.key, passage.beyond.key!] as const
  return [
    isBroken(scope, passage)
      ? brokenPart(scope, passage, joins)
      : throughPart(scope, passage, joins),
  ]
}

/** Whether the run is parted here: by the floor's own line, or because the product asks for it. */
function isBroken({ said, doorways }: Scope, passage: Passage): boolean {
  const line = { from: passage.room.key, to: passage.beyond.key, called: passage.called }
  if (breakBetween(said, line)) return true
  if (passage.openSide || doorways === 'through') return false
  return doorways === 'break' || passage.width < doorways.breakUnder
}

function throughPart(
  scope: Scope,
  passage: Passage,
  joins: readonly [string, string],
): PassagePart {
  const { near, far } = underJambs(scope, passage)
  const outline = [near[0], near[1], far[1], far[0]]
  const jamb = jambOf(scope, passage)
  return {
    solids: simple(outline).map((corners) => edgesOf(corners, () => jamb)),
    transition: null,
    through: passage.openSide ? null : { label: passage.label, ring: outline },
    jambSides: passage.undercut ? 2 : 0,
    joins,
  }
}

function brokenPart(scope: Scope, passage: Passage, joins: readonly [string, string]): PassagePart {
  const facts = meeting(scope, passage, true)
  return {
    solids: [
      ...half(scope, passage, facts),
      ...half(scope, fromBeyond(passage), meeting(scope, fromBeyond(passage), true)),
    ],
    transition: transitionOf(passage, facts),
    through: null,
    jambSides: passage.undercut ? 2 : 0,
    joins,
  }
}

/** Where another floor begins, or none, this one ends under the middle of the closed door. */
function endingPart(scope: Scope, passage: Passage): PassagePart {
  const facts = meeting(scope, passage, false)
  // A slider's track is where the floor stops: it never gets into the wall.
  const stops = facts.kind === 'slider'
  return {
    solids: stops ? [] : half(scope, passage, facts),
    transition: passage.openSide ? null : transitionOf(passage, facts),
    through: null,
    jambSides: passage.undercut && !stops ? 2 : 0,
    joins: null,
  }
}

function half(scope: Scope, passage: Passage, facts: EdgeSettled): Edge[][] {
  if (passage.thickness === 0) return []
  const { near, far } = underJambs(scope, passage)
  const middle = middleOf({ ...passage, near, far })
  const jamb = jambOf(scope, passage)
  const corners = [near[0], near[1], middle[1], middle[0]]
  return twiceArea(corners) > 0n ? [edgesOf(corners, (i) => (i === 2 ? facts : jamb))] : []
}

function underJambs({ said }: Scope, passage: Passage): Passage {
  return passage.undercut ? widened(passage, said.jambsUnder) : passage
}

function jambOf({ said }: Scope, passage: Passage): EdgeSettled {
  return jambEdge(said, { ...passage, room: passage.room.text })
}

function meeting({ said }: Scope, passage: Passage, parts: boolean): EdgeSettled {
  return meetingEdge(said, {
    from: passage.room.key,
    to: passage.beyond.key,
    room: passage.room.text,
    label: passage.label,
    called: passage.called,
    trim: passage.trim,
    slider: passage.slider,
    parts,
    span: passage.span,
  })
}

function transitionOf(
  { width }: Passage,
  { label, parts, kind, trim, span }: EdgeSettled,
): Transition {
  return { label, breaks: parts, kind, trim, width, span }
}

/** Between rooms that are not parallel, faces without a wall between them may cross. */
function simple(outline: Ring): Region {
  const edges = outline.map((from, i) => ({ from, to: outline[(i + 1) % outline.length]! }))
  if (anyMeeting(edges, (how) => how === 'end to end')) return union([outline])
  return twiceArea(outline) > 0n ? [outline] : []
}
