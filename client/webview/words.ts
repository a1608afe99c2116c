import type { PictureState } from '../../server/src/features/preview/picture.ts'
import type { Shape } from '../../server/src/report/scene.ts'

/** How the page stands: with a picture as that one does, and before the first one `reading`. */
export type PageState = PictureState | 'reading'

/** What is said of a page that is not simply right. */
export const STATES: Readonly<Record<PageState, string>> = {
  reading: 'Reading the job',
  measuring: 'No floor to lay yet',
  counting: 'Counting; planks are those of before',
  counted: '',
  open: 'Not final',
  old: 'Old drawing: a line of the text cannot be read just now',
}

/** The drawing for those who do not see it: its rooms, and how much there is to lay. */
export function inWords(shapes: readonly Shape[]): string {
  const rooms = shapes.flatMap((shape) => (shape.kind === 'room' ? [shape.title] : []))
  const pieces = shapes.filter(({ kind }) => kind === 'piece').length
  const half = shapes.filter(({ kind }) => kind === 'sketch wall').length
  return [
    rooms.length === 0 ? 'No room is measured yet.' : `Rooms: ${rooms.join('; ')}.`,
    ...(half === 0 ? [] : [`A room is being read: ${half} of its walls are drawn.`]),
    ...(pieces === 0 ? [] : [`${pieces} pieces are laid.`]),
    'Arrow keys go from one to the next, Enter goes to its line.',
  ].join(' ')
}
