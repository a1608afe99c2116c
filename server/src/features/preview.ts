import type { Span } from '../facts/span.ts'
import type { Compiled, Measured } from '../report/compiled.ts'
import { openingId } from '../report/drawing/openings.ts'
import { laidShapes, planScene } from '../report/plan-scene.ts'
import type { Scene, Shape } from '../report/scene.ts'
import { subjectOf } from '../report/subject-of.ts'
import { isInterrupted } from './preview/interrupted.ts'
import type { CourseRow, Picture, PictureState } from './preview/picture.ts'
import { courseRows, floorHeads } from './preview/preview-courses.ts'
import { stripOf } from './preview/preview-strip.ts'
import type { View } from './view.ts'

/**
 * The drawing beside the text, and what of it stands where in the text. Made anew for every version;
 * only `picture` is shown, so that typing above a room changes nothing in the drawing of it.
 */
export interface Preview {
  readonly root: string
  readonly picture: Picture
  /** What each shape was drawn from, by its id; shapes that no text stands for are not in it. */
  readonly places: ReadonlyMap<string, Span>
  /** For a doorway that is read from both its sides, the line in the room beyond. */
  readonly beyond: ReadonlyMap<string, Span>
}

/**
 * The preview of a job as it stands. `before` is that of the version before, if there is one: while
 * floors are still being laid its planks stay, and while the text is broken all of it does.
 */
export function previewOf(view: View, before: Preview | null): Preview {
  const last = before?.root === view.measured.root ? before : null
  if (last !== null && isInterrupted(view, last.picture))
    return { ...last, picture: { ...last.picture, state: 'old' } }
  return view.counted === null ? whileCounting(view, last) : onceCounted(view, view.counted)
}

/** Rooms as they are now, planks and counts as they were. */
function whileCounting(view: View, last: Preview | null): Preview {
  const { measured } = view
  const kept = measured.job.floors.length > 0 ? last : null
  const subject = subjectOf({ ...measured, floors: [], takeoff: { incompleteBecause: [] } })
  const rooms = planScene(subject, kept && laidShapes(kept.picture.scene.shapes))
  const scene = kept === null ? rooms : { ...rooms, run: kept.picture.scene.run }
  return {
    root: measured.root,
    picture: {
      state: measured.job.floors.length > 0 ? 'counting' : 'measuring',
      scene: withoutPlaces(scene),
      floors: kept?.picture.floors ?? [],
      courses: kept?.picture.courses ?? [],
      strip: stripOf(view, scene.shapes, kept?.picture.strip ?? []),
    },
    places: placesOf(scene.shapes, kept?.places),
    beyond: linesBeyond(measured),
  }
}

function onceCounted(view: View, counted: Compiled): Preview {
  const scene = planScene(subjectOf(counted))
  const courses = courseRows(counted)
  return {
    root: counted.root,
    picture: {
      state: stateOf(counted),
      scene: withoutPlaces({ ...scene, shapes: withOffcuts(scene.shapes, courses) }),
      floors: floorHeads(counted),
      courses,
      strip: stripOf(view, scene.shapes, []),
    },
    places: placesOf(scene.shapes),
    beyond: linesBeyond(counted),
  }
}

function stateOf({ floors, takeoff }: Compiled): PictureState {
  if (floors.length === 0) return 'measuring'
  return takeoff.complete ? 'counted' : 'open'
}

/** A piece says where its offcut goes, or whose it is, as the list of courses does. */
function withOffcuts(shapes: readonly Shape[], courses: readonly CourseRow[]): readonly Shape[] {
  const pieces = courses.flatMap((course) => course.pieces)
  const offcuts = new Map(pieces.map(({ id, offcut }) => [id, offcut]))
  return shapes.map((shape) => {
    const offcut = shape.kind === 'piece' ? (offcuts.get(shape.id) ?? '') : ''
    return shape.kind === 'piece' && offcut !== ''
      ? { ...shape, title: `${shape.title}; ${offcut}` }
      : shape
  })
}

function withoutPlaces(scene: Scene): Scene {
  return { ...scene, shapes: scene.shapes.map((shape) => ({ ...shape, span: null })) }
}

/** Shapes that were kept have their places from before. */
function placesOf(
  shapes: readonly Shape[],
  before: ReadonlyMap<string, Span> = new Map(),
): ReadonlyMap<string, Span> {
  return new Map(
    shapes.flatMap(({ id, span }) => {
      const place = span ?? before.get(id)
      return place === undefined ? [] : [[id, place] as const]
    }),
  )
}

function linesBeyond({ survey }: Measured): ReadonlyMap<string, Span> {
  return new Map(
    survey.doorways.flatMap((doorway) =>
      doorway.other === null ? [] : [[openingId(doorway), doorway.other.span] as const],
    ),
  )
}

/**
 * Shapes that a stretch of a file stands for: a cursor's place, or its whole line. Both ends count. Of a
 * floor it is the working line and the ends, not every piece.
 */
export function shapesAt(
  { picture, places, beyond }: Preview,
  file: string,
  from: number,
  to = from,
): readonly string[] {
  const isThere = (span: Span | undefined): boolean =>
    span !== undefined && span.file === file && span.start <= to && from <= span.end
  const isMeant = ({ id, kind }: Shape): boolean =>
    kind !== 'piece' && (isThere(places.get(id)) || isThere(beyond.get(id)))
  return picture.scene.shapes.flatMap((shape) => (isMeant(shape) ? [shape.id] : []))
}

/** The text that a shape was drawn from; for a piece that of its floor. */
export function placeOf({ places }: Preview, id: string): Span | null {
  return places.get(id) ?? null
}
