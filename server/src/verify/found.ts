import type { Course, Floor, Piece, PublishedJoint } from './layout.ts'
import { type Contact, contacts, findMeetings, type Meetings } from './meetings.ts'

/** What the rings alone say of a floor; every check reads this and the published facts beside it. */
export interface Found {
  readonly meetings: Meetings
  /** Where pieces of neighbouring courses meet, by rising v, then u. */
  readonly seams: readonly Contact[]
  readonly joints: readonly Joint[]
  readonly courses: ReadonlyMap<number, Course>
  readonly lengths: ReadonlyMap<number, number>
}

/** Two pieces end to end, from `low` to `high` across the planks. */
export interface Joint {
  readonly course: number
  readonly at: number
  readonly low: number
  readonly high: number
  readonly left: Piece
  readonly right: Piece
  /** As published; false where it is not published at all. */
  readonly parted: boolean
}

export function findOut(floor: Floor): Found {
  const meetings = findMeetings(floor)
  const parted = new Set(floor.joints.filter((joint) => joint.parted).map(publishedKey))
  return {
    meetings,
    seams: contacts(meetings.level),
    joints: contacts(meetings.upright).map((contact) => asJoint(contact, parted)),
    courses: new Map(floor.courses.map((course) => [course.course, course])),
    lengths: new Map(floor.planks.map(({ plank, length }) => [plank, length])),
  }
}

function asJoint(contact: Contact, parted: ReadonlySet<string>): Joint {
  const { before: left, after: right, from, to } = contact
  const joint = { course: left.course, at: from[0], low: from[1], high: to[1], left, right }
  return { ...joint, parted: parted.has(jointKey({ ...joint, parted: false })) }
}

/** One text for one joint: its place and its pieces. */
export function jointKey({ course, at, low, high, left, right }: Joint): string {
  return [course, at, low, high, left.piece, right.piece].join(' ')
}

export function publishedKey(joint: PublishedJoint): string {
  const { course, at, low, high, leftPiece, rightPiece } = joint
  return [course, at, low, high, leftPiece, rightPiece].join(' ')
}
