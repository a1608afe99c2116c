import { BLANKS } from '../../units/signs.ts'
import { readLength, type TapeOptions } from '../../units/tape.ts'
import { canonicalLength } from '../../units/tape-canonical.ts'

/** A list of readings as it is pasted: none of it, all of it, or a sentence about what is in the way. */
export type MeterList =
  | { readonly kind: 'none' }
  | { readonly kind: 'readings'; readonly texts: readonly string[] }
  | { readonly kind: 'refused'; readonly why: string }

/** A longer text is no list off a meter. */
const LONGEST = 20_000

/**
 * Reads the plain list that a distance meter or its application sends: one reading on a line, or parted
 * by semicolons, tabs or blanks; with or without a number or a label before each. Nothing is guessed:
 * whatever could be read two ways is refused with both readings. Text that holds no readings is none.
 */
export function readMeterList(pasted: string, options: TapeOptions): MeterList {
  if (pasted.length > LONGEST) return { kind: 'none' }
  const lines = pasted
    .split(/\r\n|[\n\r;]/)
    .map((line) => line.trim())
    .filter((line) => line !== '')
  if (lines.length === 0 || !lines.every(mayBeReading)) return { kind: 'none' }
  const numbered = withoutNumbers(lines, options)
  if (numbered.kind !== 'readings') return numbered
  const texts: string[] = []
  for (const line of numbered.texts) {
    const read = readingsOn(line, options)
    if (read.kind !== 'readings') return read
    texts.push(...read.texts)
  }
  return { kind: 'readings', texts }
}

const BLANK_RUN = new RegExp(`[${BLANKS}]+`)
const TABS = /\t+/

/** A figure stands in it, and not much else: a sentence is no reading. */
function mayBeReading(line: string): boolean {
  if (!/\p{Nd}|[½¼¾⅛⅜⅝⅞]/u.test(line)) return false
  const letters = line.replace(LABEL, '').match(/\p{L}+/gu) ?? []
  return letters.every((word) => UNITS.test(word))
}

const UNITS = /^(?:mm|cm|m|ft|feet|foot|in|inch|inches)$/i
/** `Wall 1:`, `A =`, `#3)`: what a meter's application puts before a reading. */
const LABEL =
  /^(?:#?\p{L}[\p{L} ]{0,30}[0-9]{0,4}[ ]?[:=]|#?[0-9]{1,4}[:)]|#[0-9]{1,4}\b|[0-9]{1,4}\.(?= ))[ ]*/u

/** The lines without the numbers or labels before them; numbers must count up from one line to the next. */
function withoutNumbers(lines: readonly string[], options: TapeOptions): MeterList {
  const labelled = lines.map((line) => line.replace(LABEL, ''))
  if (labelled.every((line, i) => line !== lines[i] && line !== '')) {
    return { kind: 'readings', texts: labelled }
  }
  const rests = lines.map(restAfterNumber)
  if (lines.length < 2 || rests.some((rest) => rest === null) || !countsUp(lines)) {
    return { kind: 'readings', texts: lines }
  }
  const texts = rests as readonly string[]
  const isRead = (line: string): boolean => readLength(line, options).refusal === null
  if (!texts.every(isRead)) return { kind: 'readings', texts: lines }
  const both = lines.findIndex(isRead)
  if (both < 0) return { kind: 'readings', texts }
  const why = `"${lines[both]}" reads two ways: one length, or number ${numberOf(lines[both]!)} of the list and ${texts[both]}. Paste the readings without their numbers.`
  return { kind: 'refused', why }
}

function restAfterNumber(line: string): string | null {
  const found = new RegExp(`^[0-9]{1,4}[${BLANKS}]+(?=[^${BLANKS}])`).exec(line)
  return found === null ? null : line.slice(found[0].length)
}

function numberOf(line: string): string {
  return /^[0-9]+/.exec(line)?.[0] ?? ''
}

function countsUp(lines: readonly string[]): boolean {
  const numbers = lines.map((line) => BigInt(numberOf(line)))
  return numbers.every((number, i) => number === numbers[0]! + BigInt(i))
}

/** The readings on one line: the whole of it, else what stands between tabs, else between blanks. */
function readingsOn(line: string, options: TapeOptions): MeterList {
  const whole = readLength(line, options)
  if (whole.refusal === null) return { kind: 'readings', texts: [canonicalLength(line, options)] }
  for (const parting of [TABS, /,[ ]+/, BLANK_RUN]) {
    const parts = line.split(parting).map((part) => part.trim())
    if (parts.length > 1 && parts.every((part) => isWhole(part, options))) {
      return { kind: 'readings', texts: parts.map((part) => canonicalLength(part, options)) }
    }
  }
  return { kind: 'refused', why: whole.refusal.text }
}

/** A reading that carries its own mark: bare figures beside each other may be one length. */
function isWhole(part: string, options: TapeOptions): boolean {
  return readLength(part, options).refusal === null
}
