import type { Reading, Room } from '../../job/job.ts'
import { tapeOptionsIn } from '../../language/units-line.ts'
import { traverseSlips } from '../../survey/slip.ts'
import { readWalls } from '../../survey/walls.ts'
import type { Nm, UnitStyle } from '../../units/length.ts'
import { printLength } from '../../units/print.ts'
import { readLength } from '../../units/tape.ts'
import { figureSpan } from './figure-span.ts'
import { type Asked, type Repair, repair } from './repair.ts'

/**
 * For a room that does not close and has one likely slip: the reading that would close it. Asked as a
 * question, for only the tape can answer it.
 */
export function closingRepairs(asked: Asked): readonly Repair[] {
  const { view, message } = asked
  const { job } = view.measured
  const room = job.rooms.find(({ walls }) =>
    walls.some(({ reading }) => isAt(reading, message.span)),
  )
  const wall = room === undefined ? undefined : likelyWall(room, job.units)
  if (wall === undefined || !isAt(wall.reading, message.span)) return []
  const text = asTyped(wall.reading, wall.likely, asked)
  if (text === null) return []
  const title = `Does ${wall.label} read ${text}? Take it again, then write that`
  return [
    repair(asked, 'to be measured', title, [{ span: figureSpan(view.tree, wall.reading), text }]),
  ]
}

function isAt({ span }: Reading, place: Reading['span']): boolean {
  return span.file === place.file && span.start === place.start && span.end === place.end
}

/** The only wall whose slip explains the miss, as the message names it. */
function likelyWall(
  room: Room,
  style: UnitStyle,
): { readonly label: string; readonly reading: Reading; readonly likely: Nm } | undefined {
  const walls = readWalls(room)
  const [slip, another] = walls === null ? [] : traverseSlips(room, walls, style)
  if (slip === undefined || another !== undefined) return undefined
  const { label, reading } = room.walls[slip.of.index]!
  return reading.nm === null ? undefined : { label, reading, likely: reading.nm + slip.amount.nm }
}

/** The length in the units that the reading was typed in; null where those cannot tell it exactly. */
function asTyped({ text }: Reading, nm: Nm, { view }: Asked): string | null {
  const options = tapeOptionsIn(view.tree)
  const style = styleOf(text) ?? options.bare ?? options.style
  const typed = printLength(nm, style, 64)
  return readLength(typed, options).nm === nm ? typed : null
}

function styleOf(text: string): UnitStyle | null {
  const unit = /(mm|cm|m)$/i.exec(text)?.[1]?.toLowerCase()
  if (unit !== undefined) return unit as UnitStyle
  if (/[0-9]$/.test(text)) return null
  return /^[^'’′f]*$/i.test(text) ? 'inches' : 'feet-inches'
}
