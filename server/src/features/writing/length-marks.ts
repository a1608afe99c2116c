import type { UnitStyle } from '../../units/length.ts'
import { readLength, type TapeOptions } from '../../units/tape.ts'

/** A figure with a mark put to it, and what it says then. */
export interface MarkedLength {
  readonly text: string
  readonly says: string
}

const INCHES = { mark: '"', says: 'inches' }
const FEET = { mark: "'", says: 'feet' }
const MM = { mark: ' mm', says: 'millimetres' }
const CM = { mark: ' cm', says: 'centimetres' }
const M = { mark: ' m', says: 'metres' }

/** The marks that a person who writes in these units is likely to mean, likeliest first. */
const MARKS: Readonly<
  Record<UnitStyle, readonly { readonly mark: string; readonly says: string }[]>
> = {
  'feet-inches': [FEET, INCHES, M, MM],
  inches: [INCHES, FEET, MM],
  mm: [MM, CM, M],
  cm: [CM, MM, M],
  m: [M, CM, MM],
}

/** A figure that lacks its unit, with each mark that makes it a length. Empty for one that has its own. */
export function unitMarks(figure: string, options: TapeOptions): readonly MarkedLength[] {
  if (/[^0-9]$/.test(figure)) return []
  return MARKS[options.style]
    .map(({ mark, says }) => ({ text: `${figure}${mark}`, says: saysOf(figure, says) }))
    .filter(({ text }) => readLength(text, options).refusal === null)
}

function saysOf(figure: string, unit: string): string {
  return figure.includes("'")
    ? `Feet and ${unit}.`
    : `${unit.charAt(0).toUpperCase()}${unit.slice(1)}.`
}
