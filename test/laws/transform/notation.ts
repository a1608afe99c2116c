import type { Figure, Measure } from '../../../server/src/language/tree.ts'
import type { Dice } from '../../generate/dice.ts'
import { type Edit, edited, entriesOf, figureSpan, measuresOf, treeOf } from './edit.ts'

const INCH = 25_400_000
const FOOT = 12 * INCH
const SIXTY_FOURTH = INCH / 64

/** Writes a length in whole nanometres; null where this notation cannot say it exactly. */
type Notation = (nm: number) => string | null

/** Every length and size of a text in the notation that `write` gives it. */
export function rewritten(text: string, write: Notation): string {
  const tree = treeOf(text)
  const edits = entriesOf(tree).flatMap((entry) =>
    measuresOf(entry).flatMap((measure): Edit[] => {
      const instead = figureIn(measure.figure, write)
      const figure = instead === null ? [] : [{ span: figureSpan(tree, measure), text: instead }]
      return [...figure, ...withinEdits(text, measure, write)]
    }),
  )
  return edited(text, edits)
}

/** What a reading is said to be worth is a length too. */
function withinEdits(text: string, { span, within }: Measure, write: Notation): readonly Edit[] {
  const instead = within === null ? null : write(within)
  const said = /(\bwithin\s+)([^?]*[^?\s])/i.exec(text.slice(span.start, span.end))
  if (instead === null || said === null) return []
  const start = span.start + said.index + said[1]!.length
  return [{ span: { start, end: start + said[2]!.length }, text: instead }]
}

function figureIn(figure: Figure, write: Notation): string | null {
  if (figure.kind === 'length') return write(figure.nm)
  if (figure.kind !== 'size') return null
  const [width, length] = figure.nm.map(write)
  return width == null || length == null ? null : `${width} x ${length}`
}

/** Each length in any notation that says it exactly, feet and metres mixed. */
export function withNotationMixed(text: string, dice: Dice): string {
  return rewritten(text, (nm) => {
    const ways = NOTATIONS.map((write) => write(nm)).filter((way) => way !== null)
    return ways.length === 0 ? null : dice.pick(ways)
  })
}

/** Every length in millimetres, to as many decimals as it takes. */
export function inMillimetres(text: string): string {
  return rewritten(text, (nm) => `${decimal(nm, 6)} mm`)
}

/** Every length in inches with their fractions, and no mark: the units line says what a number is. */
export function inBareInches(text: string): string {
  return withUnits(
    rewritten(text, (nm) => inches(nm, '') ?? `${decimal(nm, 6)} mm`),
    (units) => `${units}, bare inches`,
  )
}

/** Every length in bare millimetres. */
export function inBareMillimetres(text: string): string {
  return withUnits(
    rewritten(text, (nm) => decimal(nm, 6)),
    (units) => `${units}, bare mm`,
  )
}

/** Lengths and areas printed in other units. */
export function printedIn(text: string, units: string): string {
  return withUnits(text, (_, bare) => `${units}${bare}`)
}

/** The units line rewritten from what it prints and what it says of bare numbers; a file may lack one. */
function withUnits(text: string, write: (units: string, bare: string) => string): string {
  const said = /^units +([\w-]+)(, *bare +\w+)?(, *[\w-]+)?/m
  if (!said.test(text)) return withLineAfterVersion(text, `units ${write('feet-inches', '')}`)
  return text.replace(said, (_, units, bare) => `units ${write(units, bare ?? '')}`)
}

function withLineAfterVersion(text: string, line: string): string {
  const version = /^floorscribe .*\n/.exec(text)?.[0] ?? ''
  return `${version}${line}\n${text.slice(version.length)}`
}

const NOTATIONS: readonly Notation[] = [
  (nm) => feetAndInches(nm, "'", '"', ' '),
  (nm) => feetAndInches(nm, '′', '″', ' '),
  (nm) => feetAndInches(nm, '’', '”', '-'),
  (nm) => feetAndInches(nm, "'", "''", '-'),
  (nm) => feetAndInches(nm, ' ft ', ' in', ' '),
  (nm) => inches(nm, '"'),
  (nm) => inches(nm, ' in'),
  (nm) => vulgar(nm),
  (nm) => decimalOf(nm, INCH, '"'),
  (nm) => decimalOf(nm, FOOT, "'"),
  (nm) => decimalOf(nm, FOOT, ' ft'),
  (nm) => `${decimal(nm, 6)} mm`,
  (nm) => `${decimal(nm, 7)} cm`,
  (nm) => `${decimal(nm, 9)} m`,
]

/** 12' 4 1/2" with these marks; `joint` stands between inches and fraction. */
function feetAndInches(nm: number, foot: string, inch: string, joint: string): string | null {
  const feet = Math.floor(nm / FOOT)
  const rest = inches(nm % FOOT, inch)?.replace(' ', joint)
  if (rest === undefined || feet === 0) return null
  return `${feet}${foot}${foot.endsWith(' ') ? '' : ' '}${rest}`
}

/** 148 1/2" or 1/2"; null where it is no whole number of 64ths. */
function inches(nm: number, mark: string): string | null {
  if (nm % SIXTY_FOURTH !== 0) return null
  const whole = Math.floor(nm / INCH)
  const fraction = fractionOf((nm % INCH) / SIXTY_FOURTH)
  return `${[whole > 0 || fraction === '' ? whole : '', fraction].join(' ').trim()}${mark}`
}

function fractionOf(sixtyFourths: number): string {
  let [over, under] = [sixtyFourths, 64]
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2]
  return over === 0 ? '' : `${over}/${under}`
}

const SIGNS = new Map([
  ['1/2', '½'],
  ['1/4', '¼'],
  ['3/4', '¾'],
  ['1/8', '⅛'],
  ['3/8', '⅜'],
  ['5/8', '⅝'],
  ['7/8', '⅞'],
])

/** 148½" */
function vulgar(nm: number): string | null {
  const [whole = '', fraction = ''] = inches(nm, '')?.split(' ') ?? []
  const sign = SIGNS.get(fraction)
  return sign === undefined ? null : `${whole}${sign}"`
}

/** 148.5" or 12.375'; null where the decimals do not end. */
function decimalOf(nm: number, unit: number, mark: string): string | null {
  const places = 6
  const scaled = (BigInt(nm) * 10n ** BigInt(places)) / BigInt(unit)
  if (scaled * BigInt(unit) !== BigInt(nm) * 10n ** BigInt(places)) return null
  return `${decimal(Number(scaled), places)}${mark}`
}

/** A whole number of the last decimal place, written as a decimal without needless digits. */
function decimal(value: number, places: number): string {
  const digits = `${value}`.padStart(places + 1, '0')
  const [whole, rest] = [digits.slice(0, -places), digits.slice(-places).replace(/0+$/, '')]
  return rest === '' ? whole : `${whole}.${rest}`
}
