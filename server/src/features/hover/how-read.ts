import type { Figure, Measure } from '../../language/tree.ts'
import { NM_PER_64TH, NM_PER_MM, type Nm, type UnitStyle } from '../../units/length.ts'
import { printExact, printLength } from '../../units/print.ts'
import { roundToNm } from '../../units/round.ts'

/** How a figure is read, in other units too; null for one that says itself. */
export function howRead({ text, ...figure }: Figure, units: UnitStyle): string | null {
  switch (figure.kind) {
    case 'length':
      return `Read as ${inAllUnits(figure.nm, units)}.`
    case 'size': {
      const [first, second] = figure.nm
      return `Read as ${inAllUnits(first, units)}, by ${inAllUnits(second, units)}.`
    }
    case 'asked':
      return 'Still to be taken: what needs it waits, and no total is final until then.'
    default:
      return null
  }
}

/** A length as the job prints it, then in the units that it may be held against. */
export function inAllUnits(nm: Nm, units: UnitStyle): string {
  const inMetres = printExact(nm, units === 'cm' || units === 'm' ? units : 'mm')
  const inInches = nm % NM_PER_64TH === 0 ? '' : 'about '
  const own = printLength(nm, units)
  if (units === 'feet-inches') {
    const inches = printLength(nm, 'inches')
    return [own, ...(inches === own ? [] : [inches]), inMetres].join(', ')
  }
  if (units === 'inches') return `${own}, ${inMetres}`
  return `${inMetres}, ${inInches}${printLength(nm, 'feet-inches')}`
}

/** The doubts that stand beside a figure, one sentence each. */
export function doubts({ about, doubtful, figure }: Measure): readonly string[] {
  return [
    ...(about ? ['Marked "about": it is worth less than a plain reading.'] : []),
    ...(doubtful && figure.kind !== 'asked'
      ? ['Marked "?": it is used, and listed to be taken again.']
      : []),
  ]
}

/** A small length where a sixteenth would hide it: to 1/64 in, or to a tenth of a millimetre. */
export function fineLength(nm: number, units: UnitStyle): string {
  const whole = roundToNm(nm)
  if (units === 'feet-inches' || units === 'inches') return printLength(whole, units, 64)
  const tenth = NM_PER_MM / 10
  return printLength(roundToNm(whole / tenth) * tenth, units)
}

/** As `fineLength`, with its sign always: `+1/32"`. */
export function signedLength(nm: number, units: UnitStyle): string {
  const printed = fineLength(nm, units)
  return nm > 0 && /[1-9]/.test(printed) ? `+${printed}` : printed
}
