import type { OnWall, Reading, Room } from '../../job/job.ts'
import type { Tree } from '../../language/tree.ts'
import { NM_PER_INCH, NM_PER_MM, type Nm, type UnitStyle } from '../../units/length.ts'
import { printLength } from '../../units/print.ts'
import type { Edit } from '../view.ts'
import { figureSpan } from './figure-span.ts'
import { type Asked, type Repair, repair } from './repair.ts'

/** For an opening that ends past its wall: moved back so far that it ends with it. */
export function ontoWallRepairs(asked: Asked): readonly Repair[] {
  const { view, message } = asked
  const { job } = view.measured
  for (const room of job.rooms) {
    const found = thingsOf(room).find(({ place }) => isAt(place.distance, message.span))
    if (found !== undefined) return moved(found, room, asked, job.units)
  }
  return []
}

interface OnWallThing {
  readonly kind: string
  readonly place: OnWall
}

function thingsOf({ openings, recesses }: Room): readonly OnWallThing[] {
  return [...openings, ...recesses].flatMap(({ kind, place }) =>
    place === null ? [] : [{ kind, place }],
  )
}

function isAt({ span }: Reading, place: Reading['span']): boolean {
  return span.file === place.file && span.start === place.start
}

function moved(
  { kind, place }: OnWallThing,
  room: Room,
  asked: Asked,
  style: UnitStyle,
): readonly Repair[] {
  const whole = room.walls[place.wall]!.reading.nm
  const near = place.distance.nm
  const width = place.far?.nm == null ? place.width.nm : place.far.nm - (near ?? 0)
  if (whole === null || near === null || width === null || width > whole) return []
  const distance = onGrid(whole - width, style)
  const text = printLength(distance, style)
  const { tree } = asked.view
  const edits = [
    edit(tree, place.distance, distance, style),
    ...(place.far === null ? [] : [edit(tree, place.far, distance + width, style)]),
  ]
  const title = `Move the ${kind} onto its wall: ${text} from ${place.from}`
  return [repair(asked, 'choice', title, edits)]
}

function edit(tree: Tree, reading: Reading, nm: Nm, style: UnitStyle): Edit {
  return { span: figureSpan(tree, reading), text: printLength(onGrid(nm, style), style) }
}

/** Down to what a tape shows, so that it fits. */
function onGrid(nm: Nm, style: UnitStyle): Nm {
  const step = style === 'feet-inches' || style === 'inches' ? NM_PER_INCH / 16 : NM_PER_MM
  return Math.floor(nm / step) * step
}
