import type { UnitStyle } from '../units/length.ts'
import { BLANKS } from '../units/signs.ts'
import type { BareUnit, TapeOptions } from '../units/tape.ts'

/** Without a units line: feet and inches, and every number carries its mark. */
export const DEFAULT_TAPE_OPTIONS: TapeOptions = { bare: null, style: 'feet-inches' }

const UNITS_LINE = new RegExp(
  `^\\ufeff?[${BLANKS}]*units[${BLANKS}]+(feet-inches|inches|mm|cm|m)[${BLANKS}]*` +
    `(?:,[${BLANKS}]*bare[${BLANKS}]+(inches|mm|cm|m)[${BLANKS}]*)?(?:#.*)?$`,
  'im',
)

/**
 * What the file's units line says, looked up before anything else is read: the order of lines does not
 * matter, and every number hangs on it.
 */
export function tapeOptionsOf(text: string): TapeOptions {
  const found = UNITS_LINE.exec(text)
  if (found === null) return DEFAULT_TAPE_OPTIONS
  const style = found[1]!.toLowerCase() as UnitStyle
  return { style, bare: (found[2]?.toLowerCase() as BareUnit | undefined) ?? null }
}
