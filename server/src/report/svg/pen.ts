import type { Nm } from '../../units/length.ts'
import type { Palette } from './palette.ts'
import type { Place } from './path.ts'

/** What every shape's drawing needs: where things go, how heavy a line is, and in what it is drawn. */
export interface Pen {
  readonly place: Place
  readonly em: Nm
  readonly palette: Palette
}
