import type { Nm } from '../../units/length.ts'
import { mm } from './number.ts'

/** Line weights as hundredths of the plain lettering's height. */
export const HAIRLINE = 4
export const THIN = 6
export const MEDIUM = 10
export const HEAVY = 18

/** A line's weight in millimetres from hundredths of the lettering. */
export function weight(em: Nm, hundredths: number): string {
  return mm((em * hundredths) / 100)
}
