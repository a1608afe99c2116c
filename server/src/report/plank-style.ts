import type { UnitStyle } from '../units/length.ts'

/** Planks and their pieces are sized in inches where rooms are in feet and inches, as they are cut. */
export function plankStyle(units: UnitStyle): UnitStyle {
  return units === 'feet-inches' ? 'inches' : units
}
