import { downToMark } from '../units/down-to-mark.ts'
import type { Nm, UnitStyle } from '../units/length.ts'
import { printLength } from '../units/print.ts'
import type { PieceFacts } from './piece-facts.ts'

/** Planks and their pieces are sized in inches where rooms are in feet and inches, as they are cut. */
export function plankStyle(units: UnitStyle): UnitStyle {
  return units === 'feet-inches' ? 'inches' : units
}

/** A size to saw, in the plank's own style. */
export function cutSize(size: Nm, units: UnitStyle): string {
  return printLength(downToMark(size, units), plankStyle(units))
}

/** A piece's length; one that keeps both ends is as long as the factory made it. */
export function lengthText({ length, sawnAt }: PieceFacts, units: UnitStyle): string {
  return sawnAt === 'neither end' ? printLength(length, plankStyle(units)) : cutSize(length, units)
}

/** A width across the planks: one, or the two that a taper runs between. */
export function widthText(
  { least, most }: PieceFacts['width'],
  plankWidth: Nm,
  units: UnitStyle,
): string {
  const one = (width: Nm): string =>
    width === plankWidth ? printLength(width, plankStyle(units)) : cutSize(width, units)
  return one(least) === one(most) ? one(most) : `${one(least)} to ${one(most)}`
}
