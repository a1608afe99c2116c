import { NM_PER_MM, type Nm, type UnitStyle } from './length.ts'
import { printLength } from './print.ts'
import { readLength } from './tape.ts'

/** A length as sentences of ours write it: `12' 4 1/2"`, `1/4"`, `10'`. */
const SAMPLE = /(?:[0-9]{1,4}' )?(?:[0-9]{1,4} )?[0-9]{1,4}(?:\/[0-9]{1,2})?"|[0-9]{1,4}'/g

/**
 * A sentence whose sample lengths are written in feet and inches, as a job in these units would write
 * it. In metres and millimetres a sample is rounded as a person would choose it, not converted.
 */
export function samplesIn(text: string, style: UnitStyle): string {
  if (style === 'feet-inches') return text
  return text.replace(SAMPLE, (typed) => {
    const nm = readLength(typed, { bare: null, style: 'feet-inches' }).nm ?? 0
    return printLength(style === 'inches' ? nm : rounded(nm), style)
  })
}

function rounded(nm: Nm): Nm {
  const step = (nm < 20 * NM_PER_MM ? 1 : nm < 300 * NM_PER_MM ? 5 : 10) * NM_PER_MM
  return Math.round(nm / step) * step
}
