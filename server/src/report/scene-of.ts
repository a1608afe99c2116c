import { twiceArea } from '../geometry/exact.ts'
import type { Point, Region } from '../geometry/point.ts'
import type { SurveyedRoom } from '../survey/survey.ts'
import type { Nm } from '../units/length.ts'
import { printLength } from '../units/print.ts'
import { roundToNm } from '../units/round.ts'
import { breachMarks } from './drawing/breaches.ts'
import { ripLabels, workingLine } from './drawing/courses.ts'
import { dimensions } from './drawing/dimensions.ts'
import { beyondLabels, labels } from './drawing/labels.ts'
import { groundOf } from './drawing/letter.ts'
import { drawnThickness, masonry } from './drawing/masonry.ts'
import { type Occupied, occupied } from './drawing/occupied.ts'
import { openingShape } from './drawing/openings.ts'
import { joints, pieceShapes, seams } from './drawing/pieces.ts'
import { closets, obstacles, roomFloors, wallFaces } from './drawing/rooms.ts'
import { alongOf, runFrame } from './drawing/run-frame.ts'
import { column } from './drawing/sheet.ts'
import { type Arranged, sideBySide } from './drawing/side-by-side.ts'
import type { Subject, SubjectFloor } from './drawing/subject.ts'
import { titleBlock } from './drawing/title-block.ts'
import { transitions } from './drawing/transitions.ts'
import { direction, distance, EAST, extent, inMillionths, middle, plate } from './drawing/vector.ts'
import type { Lettering, OpeningShape, Scene, Shape } from './scene.ts'

export type { Subject, SubjectFloor } from './drawing/subject.ts'

/** Everything that every renderer draws, from the survey and the published layouts; a pure function. */
export function sceneOf(subject: Subject): Scene {
  const arranged = sideBySide(subject)
  const rooms = arranged.rooms.filter((room) => room.outline.length > 2)
  const thickness = drawnThickness(arranged.doorways)
  const walls = masonry(rooms, arranged.doorways, thickness)
  const em = emOf([...walls, ...rooms.map((room) => room.outline)])
  const plan = planShapes(subject, { arranged, rooms, walls, thickness, em })
  return sheetOf(subject, plan, em)
}

/** The lettering's height, so that the plan is about seventy of it wide or high. */
function emOf(plan: Region): Nm {
  const { low, high } = extent(plan.flat())
  const size = Math.max(high.x - low.x, high.y - low.y)
  return Math.max(20_000_000, roundToNm(size / 70))
}

interface PlanBase {
  readonly arranged: Arranged
  readonly rooms: readonly SurveyedRoom[]
  readonly walls: Region
  readonly thickness: Nm
  readonly em: Nm
}

/** The plan itself, in drawing order. Lettering is placed from the scarcest place to the freest. */
function planShapes(subject: Subject, base: PlanBase): Shape[] {
  const { arranged, rooms, walls, thickness, em } = base
  const { units } = subject
  const house = occupied()
  for (const room of rooms) house.add(room.outline)
  for (const ring of walls.filter((ring) => twiceArea(ring) > 0n)) house.add(ring)
  const taken = occupied()
  const openings = arranged.doorways.map(
    (doorway): OpeningShape => ({
      ...openingShape(doorway, rooms, arranged.doorways),
      title: `${doorway.label}: ${printLength(doorway.width, units)} wide`,
    }),
  )
  for (const opening of openings) block(taken, opening)
  const faces = wallFaces(rooms, arranged.doorways, units)
  const standing = obstacles(rooms)
  for (const { ring } of standing) taken.add(ring)
  const marks = subject.floors.flatMap((floor) =>
    breachMarks(floor, frameOf(floor, arranged), base, units),
  )
  const sizes = dimensions(rooms, { units, em, thickness, house, taken })
  const rips = subject.floors.flatMap((floor) =>
    ripLabels(floor.published, {
      frame: frameOf(floor, arranged),
      units,
      em,
      off: thickness,
      house,
      taken,
    }),
  )
  const beyond = beyondLabels(rooms, arranged.doorways, { units, em, taken, house, thickness })
  const names = labels(rooms, { units, em, taken })
  const floors = subject.floors.map((floor) => {
    const frame = frameOf(floor, arranged)
    return {
      pieces: pieceShapes(floor.published, { frame, units, em, taken }),
      lines: [...seams(floor.published, frame), ...joints(floor.published, frame)],
      working: workingLine(floor.published, frame, em),
      trim: transitions(floor, arranged.moves),
    }
  })
  return [
    ...roomFloors(rooms),
    ...closets(rooms),
    ...floors.flatMap((floor) => floor.pieces),
    ...floors.flatMap((floor) => floor.lines),
    ...standing,
    { kind: 'masonry', id: 'walls', span: null, region: walls },
    ...openings,
    ...floors.flatMap((floor) => floor.trim),
    ...faces,
    ...floors.flatMap((floor) => floor.working ?? []),
    ...marks,
    ...sizes,
    ...rips,
    ...beyond,
    ...names,
  ]
}

function frameOf(floor: SubjectFloor, arranged: Arranged) {
  return runFrame(floor, arranged.moves)
}

/** What is drawn of an opening keeps lettering away. */
function block(taken: Occupied, { leaves, swing, heads }: OpeningShape): void {
  for (const [from, to] of heads) {
    const long = distance(from, to)
    taken.add(plate(middle(from, to), direction(from, to), long, long / 20))
  }
  for (const leaf of leaves) taken.add(leaf)
  for (const [i, to] of swing.entries()) {
    const from = swing[i - 1]
    if (from === undefined) continue
    const long = distance(from, to)
    taken.add(plate(middle(from, to), direction(from, to), long, long / 4))
  }
}

/** East where nothing is laid. */
function runOf({ floors: [first] }: Subject): Point {
  return inMillionths(first === undefined ? EAST : alongOf(first.published.frame))
}

const MARGIN = 2.5
const COLUMN_WIDTH = 23

/** The plan, and to its right the column with the title block, tops level. */
function sheetOf(subject: Subject, plan: readonly Shape[], em: Nm): Scene {
  const drawn = extent(plan.flatMap(pointsOf))
  const margin = roundToNm(em * MARGIN)
  const side = column(
    drawn.high.x + roundToNm(margin * 1.4),
    drawn.high.y,
    roundToNm(em * COLUMN_WIDTH),
    em,
  )
  titleBlock(side, subject, plan)
  return {
    title: subject.title,
    run: runOf(subject),
    low: { x: drawn.low.x - margin, y: Math.min(drawn.low.y, side.top()) - margin },
    high: { x: side.left + side.width + margin, y: drawn.high.y + margin },
    em,
    shapes: [...plan, ...side.shapes],
  }
}

/** What of a plan's shape may reach out furthest. */
function pointsOf(shape: Shape) {
  const lettered = (lettering: Lettering) => groundOf(lettering)
  switch (shape.kind) {
    case 'masonry':
      return shape.region.flat()
    case 'dimension':
      return [...shape.line, ...shape.extensions.flat(), ...lettered(shape.lettering)]
    case 'rip label':
      return [...shape.plate, ...shape.leader]
    case 'label':
      return shape.plate
    case 'opening':
      return [...shape.throat, ...shape.swing]
    default:
      return []
  }
}
