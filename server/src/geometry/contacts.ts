import type { Nm } from '../units/length.ts'
import type { Part } from './outline.ts'
import type { Point } from './point.ts'

/** Where two parts meet along a cut: indices into their lists. */
export interface Contact {
  /** The part below the cut, or to its left. */
  readonly below: number
  /** The part above it, or to its right. */
  readonly above: number
  readonly from: Nm
  readonly to: Nm
}

/** Where parts below a level line meet parts above it, from left to right, each as long as it goes. */
export function contactsAlong(below: readonly Part[], above: readonly Part[], y: Nm): Contact[] {
  return matched(
    sides(below, (a, b) => a.y === y && a.x > b.x, 'x'),
    sides(above, (a, b) => a.y === y && a.x < b.x, 'x'),
  )
}

/** Where parts to the left of an upright line meet parts to its right, from low to high. */
export function contactsUp(left: readonly Part[], right: readonly Part[], x: Nm): Contact[] {
  return matched(
    sides(left, (a, b) => a.x === x && a.y < b.y, 'y'),
    sides(right, (a, b) => a.x === x && a.y > b.y, 'y'),
  )
}

interface Side {
  readonly part: number
  readonly from: Nm
  readonly to: Nm
}

/** Edges along a cut, level or upright: these alone have no whole. Each part lies on the left of its edges. */
function sides(
  parts: readonly Part[],
  isSide: (a: Point, b: Point) => boolean,
  axis: 'x' | 'y',
): Side[] {
  const found: Side[] = []
  parts.forEach(({ rim: { points, wholes } }, part) => {
    points.forEach((a, i) => {
      const b = points[(i + 1) % points.length]!
      if (wholes[i] || !isSide(a, b)) return
      found.push({ part, from: Math.min(a[axis], b[axis]), to: Math.max(a[axis], b[axis]) })
    })
  })
  return found.sort((a, b) => a.from - b.from)
}

/** What two lists of intervals, each without overlaps, have in common; neighbours of one pair are one. */
function matched(below: readonly Side[], above: readonly Side[]): Contact[] {
  const contacts: Contact[] = []
  let b = 0
  let a = 0
  while (b < below.length && a < above.length) {
    const lower = below[b]!
    const upper = above[a]!
    const from = Math.max(lower.from, upper.from)
    const to = Math.min(lower.to, upper.to)
    if (from < to) add(contacts, { below: lower.part, above: upper.part, from, to })
    if (lower.to <= upper.to) b++
    if (upper.to <= lower.to) a++
  }
  return contacts
}

function add(contacts: Contact[], contact: Contact): void {
  const last = contacts.at(-1)
  if (
    last &&
    last.below === contact.below &&
    last.above === contact.above &&
    last.to === contact.from
  ) {
    contacts[contacts.length - 1] = { ...last, to: contact.to }
  } else contacts.push(contact)
}
