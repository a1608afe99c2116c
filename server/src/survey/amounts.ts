import type { Reading } from '../job/job.ts'
import {
  NM_PER_CM,
  NM_PER_FOOT,
  NM_PER_INCH,
  NM_PER_M,
  type Nm,
  type UnitStyle,
} from '../units/length.ts'
import { readLength } from '../units/tape.ts'

/** An amount by which a reading is likely to be wrong, and how people say it. */
export interface Amount {
  /** True value less reading. */
  readonly nm: Nm
  readonly words: string
}

const IMPERIAL: readonly Amount[] = [
  { nm: NM_PER_FOOT, words: 'one foot' },
  { nm: NM_PER_INCH, words: 'one inch' },
  { nm: 10 * NM_PER_FOOT, words: 'ten feet' },
  { nm: NM_PER_INCH / 2, words: 'half an inch' },
]

const METRIC: readonly Amount[] = [
  { nm: NM_PER_M, words: 'one metre' },
  { nm: 10 * NM_PER_CM, words: 'ten centimetres' },
  { nm: NM_PER_CM, words: 'one centimetre' },
  { nm: 10 * NM_PER_M, words: 'ten metres' },
]

/**
 * What a reading may be wrong by: a whole foot or inch read at the wrong mark, ten feet, half an inch,
 * or two figures that changed places (common practice, no source).
 */
export function likelyAmounts(reading: Reading, style: UnitStyle): readonly Amount[] {
  const imperial = style === 'feet-inches' || style === 'inches'
  const marks = (imperial ? IMPERIAL : METRIC).flatMap(({ nm, words }) => [
    { nm, words },
    { nm: -nm, words },
  ])
  const nm = reading.nm ?? 0
  return [...marks, ...exchanges(reading, style)].filter((amount) => nm + amount.nm > 0)
}

/** Each two neighbouring figures of a number exchanged, where a length still stands there. */
function exchanges(reading: Reading, style: UnitStyle): readonly Amount[] {
  const { text, nm } = reading
  const found: Amount[] = []
  for (let i = 0; i + 1 < text.length; i++) {
    const [a, b] = [text[i]!, text[i + 1]!]
    if (!isDigit(a) || !isDigit(b) || a === b || nm === null) continue
    const other = readLength(`${text.slice(0, i)}${b}${a}${text.slice(i + 2)}`, {
      bare: null,
      style,
    })
    if (other.nm !== null) found.push({ nm: other.nm - nm, words: 'two figures exchanged' })
  }
  return found
}

const isDigit = (sign: string) => sign >= '0' && sign <= '9'
