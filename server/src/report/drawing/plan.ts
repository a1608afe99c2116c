import { twiceArea } from '../../geometry/exact.ts'
import type { Point, Region } from '../../geometry/point.ts'
import type { Doorway, SurveyedRoom } from '../../survey/survey.ts'
import type { Nm, UnitStyle } from '../../units/length.ts'
import { roundToNm } from '../../units/round.ts'
import type { OpeningShape, RipLabel, Shape } from '../scene.ts'
import { breachMarks } from './breaches.ts'
import { ripLabels, workingLine } from './courses.ts'
import { dimensions } from './dimensions.ts'
import { beyondLabels, labels } from './labels.ts'
import { drawnThickness, masonry } from './masonry.ts'
import { type Occupied, occupied } from './occupied.ts'
import { openingShape, surroundingsOf } from './openings.ts'
import { ownIds } from './own-ids.ts'
import { joints, pieceShapes, seams } from './pieces.ts'
import { closets, obstacles, roomFloors, wallFaces } from './rooms.ts'
import { type RunFrame, runFrame } from './run-frame.ts'
import { sideBySide } from './side-by-side.ts'
import type { Subject, SubjectFloor } from './subject.ts'
import { transitions } from './transitions.ts'
import { direction, distance, extent, middle, plate } from './vector.ts'

/** What is drawn, where everything lies, and the sizes that all of the drawing shares. */
export interface Plan {
  readonly units: UnitStyle
  /** Rooms that have a shape. */
  readonly rooms: readonly SurveyedRoom[]
  readonly doorways: readonly Doorway[]
  readonly floors: readonly PlanFloor[]
  /** How far rooms were moved so that untied ones stand beside each other. */
  readonly moves: ReadonlyMap<string, Point>
  readonly walls: Region
  /** Of a wall as it is drawn. */
  readonly thickness: Nm
  /** The height of plain lettering. */
  readonly em: Nm
  /** Rooms and their walls: nothing that belongs outside may touch them. */
  readonly house: Occupied
  /** What lettering must keep clear of; it grows as lettering is placed. */
  readonly taken: Occupied
}

interface PlanFloor {
  readonly floor: SubjectFloor
  readonly frame: RunFrame
}

/** How large lettering is beside the plan. */
export interface Scale {
  /** So many times the plain lettering's height is the plan wide, or high. */
  readonly across: number
  /** Width that is drawn beside the plan and shares its sheet. */
  readonly beside: Nm
  /** However large the plan is: beyond it lettering would fill the rooms. */
  readonly most: Nm
}

export const ON_PAPER: Scale = { across: 70, beside: 0, most: Infinity }

export function planOf(subject: Subject, scale: Scale = ON_PAPER): Plan {
  const { moves, doorways, rooms: all } = sideBySide(subject)
  const rooms = all.filter((room) => room.outline.length > 2)
  const thickness = drawnThickness(doorways)
  const walls = masonry(rooms, doorways, thickness)
  return {
    units: subject.units,
    rooms,
    doorways,
    floors: subject.floors.map((floor) => ({ floor, frame: runFrame(floor, moves) })),
    moves,
    walls,
    thickness,
    em: emOf([...walls, ...rooms.map((room) => room.outline)], scale),
    house: houseOf(rooms, walls),
    taken: occupied(),
  }
}

function emOf(plan: Region, { across, beside, most }: Scale): Nm {
  const { low, high } = extent(plan.flat())
  const size = Math.max(high.x - low.x + beside, high.y - low.y)
  return Math.min(most, Math.max(20_000_000, roundToNm(size / across)))
}

function houseOf(rooms: readonly SurveyedRoom[], walls: Region): Occupied {
  const house = occupied()
  for (const room of rooms) house.add(room.outline)
  for (const ring of walls) if (twiceArea(ring) > 0n) house.add(ring)
  return house
}

/** What is drawn of laid floors: under the walls, over them, and the labels beside. */
export interface LaidShapes {
  readonly under: readonly Shape[]
  readonly over: readonly Shape[]
  readonly labels: readonly RipLabel[]
}

/**
 * The plan's shapes in drawing order. Places for lettering are given from the scarcest to the freest.
 * Where `kept` is given it is drawn in place of the floors, as it stands.
 */
export function planShapes(plan: Plan, kept: LaidShapes | null = null): Shape[] {
  const openings = openingShapes(plan)
  const standing = obstacles(plan.rooms)
  for (const opening of openings) keepClear(plan.taken, opening)
  for (const { ring } of standing) plan.taken.add(ring)
  const lettering = letteringShapes(plan, kept)
  const { under, over } = kept ?? floorShapes(plan)
  return ownIds([
    ...roomFloors(plan.rooms, plan.units),
    ...closets(plan.rooms, plan.units),
    ...under,
    ...standing,
    { kind: 'masonry', id: 'walls', span: null, region: plan.walls },
    ...openings,
    ...wallFaces(plan.rooms, plan.doorways, plan.units),
    ...over,
    ...lettering,
  ])
}

function openingShapes({ rooms, doorways, units }: Plan): OpeningShape[] {
  const around = surroundingsOf(rooms, doorways, units)
  return doorways.map((doorway) => openingShape(doorway, around))
}

/** Placed one after the other; labels on plates are drawn last, over what leads past them. */
function letteringShapes(plan: Plan, kept: LaidShapes | null): Shape[] {
  const sizes = dimensions(plan.rooms, plan)
  const beyond = beyondLabels(plan.rooms, plan.doorways, plan)
  for (const { plate } of kept?.labels ?? []) plan.taken.add(plate)
  const rips =
    kept?.labels ?? plan.floors.flatMap(({ floor, frame }) => ripLabels(floor, { ...plan, frame }))
  const names = labels(plan.rooms, plan)
  return [...sizes, ...rips, ...beyond, ...names]
}

function floorShapes(plan: Plan): Pick<LaidShapes, 'under' | 'over'> {
  const floors = plan.floors.map((floor) => shapesOf(plan, floor))
  return {
    under: floors.flatMap(({ under }) => under),
    over: floors.flatMap(({ over }) => over),
  }
}

/** What of a floor lies under the walls, and what is drawn over them. */
function shapesOf(plan: Plan, { floor, frame }: PlanFloor): Pick<LaidShapes, 'under' | 'over'> {
  const working = workingLine(floor, frame, plan.em)
  return {
    under: [
      ...pieceShapes(floor, { ...plan, frame }),
      ...seams(floor.published, frame),
      ...joints(floor.published, frame),
    ],
    over: [
      ...transitions(floor, plan.moves),
      ...(working === null ? [] : [working]),
      ...breachMarks(floor, { ...plan, frame }),
    ],
  }
}

/** What is drawn of an opening keeps lettering away. */
function keepClear(taken: Occupied, { leaves, swing, heads }: OpeningShape): void {
  const strip = (from: Point, to: Point, part: number): void => {
    const long = distance(from, to)
    taken.add(plate(middle(from, to), direction(from, to), long, long * part))
  }
  for (const [from, to] of heads) strip(from, to, 0.05)
  for (const leaf of leaves) taken.add(leaf)
  for (const [i, from] of swing.slice(0, -1).entries()) strip(from, swing[i + 1] ?? from, 0.25)
}
