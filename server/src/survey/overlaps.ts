import { type Message, message } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'
import { type Boxes, boxes } from '../geometry/boxes.ts'
import { intersection } from '../geometry/clip.ts'
import { twiceAreaOf } from '../geometry/exact.ts'
import type { Region, Ring } from '../geometry/point.ts'
import { type Box, boxesMeet, boxOf } from '../geometry/ring.ts'
import { areaFromTwice } from '../units/area.ts'
import { NM_PER_INCH, type UnitStyle } from '../units/length.ts'
import { areaWords } from './area-words.ts'
import { lengthOf, minus } from './vector.ts'

/** A floor that lies somewhere: a room's or a closet's. */
export interface Lying {
  readonly name: string
  readonly ring: Ring
  readonly span: Span
}

/** Less than so wide, an overlap is what readings leave at an open side, and no slip. */
const LEAST_WIDTH = NM_PER_INCH / 2

/**
 * Says which floors lie over each other and by how much. A line sweeps from west to east and holds
 * only floors that share its place against each other.
 */
export function overlapMessages(floors: readonly Lying[], style: UnitStyle): readonly Message[] {
  const boxed = floors.map((floor, order) => ({ floor, order, box: boxOf(floor.ring) }))
  const found: { readonly order: number; readonly message: Message }[] = []
  const swept = boxed.sort((a, b) => a.box.west - b.box.west || a.order - b.order)
  let open: Open = { few: [], many: null }
  let reached = -Infinity
  for (const [at, next] of swept.entries()) {
    // What begins past all before it, as a group of rooms of its own does, meets none of them.
    if (next.box.west > reached) open = { few: [], many: null }
    reached = Math.max(reached, next.box.east)
    for (const other of meeting(open, next.box).map((i) => swept[i]!)) {
      if (!boxesMeet(other.box, next.box)) continue
      const [first, second] = other.order < next.order ? [other, next] : [next, other]
      const shared = intersection([first.floor.ring], [second.floor.ring])
      if (isWide(shared)) {
        found.push({
          order: second.order,
          message: overlap(first.floor, second.floor, shared, style),
        })
      }
    }
    put(open, at, swept)
  }
  return found.sort((a, b) => a.order - b.order).map((entry) => entry.message)
}

/** Floors that others may meet, by their place in the sweep; many are found by their boxes. */
interface Open {
  readonly few: number[]
  many: Boxes<number> | null
}

const FEW = 16

function put(open: Open, at: number, swept: readonly { readonly box: Box }[]): void {
  open.few.push(at)
  if (open.many !== null) open.many.add(at, swept[at]!.box)
  else if (open.few.length > FEW) {
    open.many = boxes()
    for (const i of open.few) open.many.add(i, swept[i]!.box)
  }
}

/** What may meet or touch a box, in the order in which it was put in. */
function meeting({ few, many }: Open, box: Box): readonly number[] {
  if (many === null) return few
  const found = new Set<number>()
  many.some(box, (i) => {
    found.add(i)
    return false
  })
  return [...found].sort((a, b) => a - b)
}

/** Twice the area over half the way round is the width of a long strip. */
function isWide(shared: Region): boolean {
  const area = areaFromTwice(twiceAreaOf(shared))
  const round = shared.reduce((sum, ring) => sum + perimeter(ring), 0)
  const least = BigInt(Math.ceil((round * LEAST_WIDTH) / 2))
  return area.n > least * area.d
}

function perimeter(ring: Ring): number {
  return ring.reduce(
    (sum, point, i) => sum + lengthOf(minus(ring[(i + 1) % ring.length]!, point)),
    0,
  )
}

function overlap(first: Lying, second: Lying, shared: Region, style: UnitStyle): Message {
  const area = areaWords(areaFromTwice(twiceAreaOf(shared)), style)
  const text =
    `${second.name} lies over ${first.name} by ${area}. ` +
    'Look at where the openings between them stand, at the thickness of the walls and at what is read out of the rooms.'
  return message('warning', 'rooms-overlap', second.span, text, {
    related: [{ span: first.span, text: `${first.name}.` }],
  })
}
