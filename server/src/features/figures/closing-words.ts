import type { Closing } from '../../survey/survey.ts'
import type { Nm, UnitStyle } from '../../units/length.ts'
import { printLength } from '../../units/print.ts'

/** How a room closes, in a few words: "closes within 1/8"". */
export function closingWords(closing: Closing, units: UnitStyle): string {
  const { east, north, length, within, rule } = closing
  if (rule === 'distances') return 'shaped by its distances'
  if (length === 0) return 'closes exactly'
  const miss = printLength(length, units)
  if (within) return `closes within ${isNothing(miss) ? `less than ${leastShown(units)}` : miss}`
  const mostlyEast = Math.abs(east) * closing.allowedNorth > Math.abs(north) * closing.allowedEast
  const allowed: Nm = mostlyEast ? closing.allowedEast : closing.allowedNorth
  return `misses closing by ${miss}, allowed ${printLength(allowed, units)}`
}

function isNothing(printed: string): boolean {
  return !/[1-9]/.test(printed)
}

function leastShown(units: UnitStyle): string {
  return units === 'feet-inches' || units === 'inches' ? '1/16"' : '1 mm'
}
