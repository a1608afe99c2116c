import type { Scene, Shape } from '../report/scene.ts'
import { applyTo, isSame, type ListChange, listChange } from './preview/list-change.ts'
import type { CourseRow, FloorHead, Picture, PictureState, StripItem } from './preview/picture.ts'

/** How to come from one picture to the next: all of it, or only what differs. */
export type PreviewChange =
  | { readonly kind: 'whole'; readonly picture: Picture }
  | {
      readonly kind: 'part'
      readonly state: PictureState
      /** Null where the sheet itself stays as it is. */
      readonly sheet: Sheet | null
      readonly shapes: ListChange<Shape>
      readonly floors: ListChange<FloorHead>
      readonly courses: ListChange<CourseRow>
      readonly strip: ListChange<StripItem>
    }

/** The scene without what is drawn on it. */
export type Sheet = Omit<Scene, 'shapes'>

/** What turns the one picture into the other; all of the second where there is no first. */
export function previewChange(before: Picture | null, after: Picture): PreviewChange {
  if (before === null) return { kind: 'whole', picture: after }
  const { shapes: drawnBefore, ...sheetBefore } = before.scene
  const { shapes, ...sheet } = after.scene
  return {
    kind: 'part',
    state: after.state,
    sheet: isSame(sheetBefore, sheet) ? null : sheet,
    shapes: listChange(drawnBefore, shapes),
    floors: listChange(before.floors, after.floors),
    courses: listChange(before.courses, after.courses),
    strip: listChange(before.strip, after.strip),
  }
}

/** The picture that a change leads to; null where the change is one of a picture that is not there. */
export function applyChange(before: Picture | null, change: PreviewChange): Picture | null {
  if (change.kind === 'whole') return change.picture
  if (before === null) return null
  const { shapes: drawn, ...sheetBefore } = before.scene
  return {
    state: change.state,
    scene: { ...(change.sheet ?? sheetBefore), shapes: applyTo(drawn, change.shapes) },
    floors: applyTo(before.floors, change.floors),
    courses: applyTo(before.courses, change.courses),
    strip: applyTo(before.strip, change.strip),
  }
}
