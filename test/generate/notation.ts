import type { Draw } from './draw.ts'

export type Unit = 'feet-inches' | 'inches' | 'mm' | 'cm' | 'm'

/** Whole sixteenths or micrometres in one form of notation; null where the form cannot say the length. */
interface Form {
  readonly name: string
  readonly units: readonly Unit[]
  /** Only where the file says what a bare number is. */
  readonly bare?: Unit
  readonly write: (amount: number) => string | null
}

/** How lengths are written in one file. */
export interface Hand {
  readonly unit: Unit
  readonly bare: Unit | null
  readonly forms: readonly Form[]
}

const MICROMETRES = { mm: 1_000, cm: 10_000, m: 1_000_000 } as const

/** Inches and their fraction: 20 sixteenths are `1 1/4`. */
function mixed(sixteenths: number, fraction: (over: number, under: number) => string | null) {
  const whole = Math.floor(sixteenths / 16)
  if (sixteenths % 16 === 0) return `${whole}`
  let [over, under] = [sixteenths % 16, 16]
  while (over % 2 === 0) [over, under] = [over / 2, under / 2]
  const part = fraction(over, under)
  return part === null ? null : `${whole > 0 ? whole : ''}${part}`
}

const slashed = (sixteenths: number) =>
  mixed(sixteenths, (over, under) => `${sixteenths < 16 ? '' : ' '}${over}/${under}`)!
const dashed = (sixteenths: number) =>
  mixed(sixteenths, (over, under) => `${sixteenths < 16 ? '' : '-'}${over}/${under}`)!
const VULGAR: ReadonlyMap<string, string> = new Map([
  ['1/2', '½'],
  ['1/4', '¼'],
  ['3/4', '¾'],
  ['1/8', '⅛'],
  ['3/8', '⅜'],
  ['5/8', '⅝'],
  ['7/8', '⅞'],
])
const vulgar = (sixteenths: number) =>
  mixed(sixteenths, (over, under) => VULGAR.get(`${over}/${under}`) ?? null)

/** A decimal of whole parts of ten to a power, without needless zeros: (12375, 3) is 12.375. */
function decimal(parts: number, places: number): string {
  const digits = `${parts}`.padStart(places + 1, '0')
  const [whole, rest] = [digits.slice(0, -places), digits.slice(-places).replace(/0+$/, '')]
  return rest === '' ? whole : `${whole}.${rest}`
}

const inchDecimal = (sixteenths: number) => decimal(sixteenths * 625, 4)
/** A sixteenth is a 192nd of a foot: only each third one has an end as a decimal. */
const footDecimal = (sixteenths: number) =>
  sixteenths % 3 === 0 ? decimal((sixteenths / 3) * 15_625, 6) : null

/** Feet, what parts them from the inches, inches; inches alone below a foot. */
const feet =
  (foot: string, inches: (sixteenths: number) => string | null, inch: string) =>
  (sixteenths: number): string | null => {
    const rest = inches(sixteenths % 192)
    if (rest === null) return null
    return sixteenths < 192
      ? `${rest}${inch}`
      : `${Math.floor(sixteenths / 192)}${foot}${rest}${inch}`
  }

const then = (write: (amount: number) => string | null, mark: string) => (amount: number) => {
  const number = write(amount)
  return number === null ? null : `${number}${mark}`
}

const FEET: readonly Unit[] = ['feet-inches']
const INCHES: readonly Unit[] = ['feet-inches', 'inches']
const METRIC: readonly Unit[] = ['mm', 'cm', 'm']

const metric = (unit: keyof typeof MICROMETRES) => (micrometres: number) =>
  decimal(micrometres, { mm: 3, cm: 4, m: 6 }[unit])

/** Every form that the language reads, by what a file in it would be printed in. */
const FORMS: readonly Form[] = [
  { name: `12' 4 1/2"`, units: FEET, write: feet("' ", slashed, '"') },
  { name: `12'4-1/2"`, units: FEET, write: feet("'", dashed, '"') },
  { name: `12'-4 1/2"`, units: FEET, write: feet("'-", slashed, '"') },
  { name: `12' 4½"`, units: FEET, write: feet("' ", vulgar, '"') },
  { name: `12 ft 4 1/2 in`, units: FEET, write: feet(' ft ', slashed, ' in') },
  { name: `12 feet 4 inches`, units: FEET, write: feet(' feet ', slashed, ' inches') },
  { name: `12' 4.5"`, units: FEET, write: feet("' ", inchDecimal, '"') },
  { name: '12’ 4 1/2”', units: FEET, write: feet('’ ', slashed, '”') },
  { name: '12′ 4 1/2″', units: FEET, write: feet('′ ', slashed, '″') },
  { name: `12' 4 1/2''`, units: FEET, write: feet("' ", slashed, "''") },
  { name: `12 ' 4 1/2 "`, units: FEET, write: feet(" ' ", slashed, ' "') },
  { name: `12.375'`, units: FEET, write: then(footDecimal, "'") },
  { name: `12.375 ft`, units: FEET, write: then(footDecimal, ' ft') },
  { name: `148 1/2"`, units: INCHES, write: then(slashed, '"') },
  { name: `148.5"`, units: INCHES, write: then(inchDecimal, '"') },
  { name: `148½ in`, units: INCHES, write: then(vulgar, ' in') },
  { name: `148 1/2`, units: INCHES, bare: 'inches', write: slashed },
  { name: `12' 4 1/2`, units: FEET, bare: 'inches', write: feet("' ", slashed, '') },
  { name: '3760 mm', units: METRIC, write: then(metric('mm'), ' mm') },
  { name: '3760mm', units: METRIC, write: then(metric('mm'), 'mm') },
  { name: '376 cm', units: METRIC, write: then(metric('cm'), ' cm') },
  { name: '3.76 m', units: METRIC, write: then(metric('m'), ' m') },
  { name: '3760', units: METRIC, bare: 'mm', write: metric('mm') },
  { name: '376', units: METRIC, bare: 'cm', write: metric('cm') },
  { name: '3.76', units: METRIC, bare: 'm', write: metric('m') },
]

/** A hand keeps to one form; a nasty one takes any that its units line allows, of the other system too. */
export function handOf(unit: Unit, draw: Draw): Hand {
  const { dice, nasty } = draw
  const isInches = INCHES.includes(unit)
  const bare = !dice.chance(nasty ? 50 : 25) ? null : isInches ? 'inches' : unit
  const isOpen = (form: Form) => form.bare === undefined || form.bare === bare
  const own = FORMS.filter((form) => form.units.includes(unit) && isOpen(form))
  draw.has(`units: ${unit}${bare === null ? '' : `, bare ${bare}`}`)
  if (!nasty) return { unit, bare, forms: [dice.pick(own)] }
  const isOther = (form: Form) => isOpen(form) && METRIC.includes(form.units[0]!) === isInches
  const others = dice.chance(30) ? FORMS.filter(isOther) : []
  if (others.length > 0) draw.has('units: both systems in one file')
  return { unit, bare, forms: [...own, ...others] }
}

/** These say every length. */
const USUAL_INCHES = FORMS.find(({ name }) => name === `148 1/2"`)!
const USUAL_METRIC = FORMS.find(({ name }) => name === '3760 mm')!

/**
 * A length of whole steps as one file writes it. What the other system writes is rounded to its own
 * sixteenth or millimetre, as a tape would show it.
 */
export function written(steps: number, hand: Hand, draw: Draw): string {
  const form = hand.forms.length === 1 ? hand.forms[0]! : draw.dice.pick(hand.forms)
  const said = form.write(amountIn(form, steps, draw))
  if (said !== null) {
    draw.has(`notation: ${form.name}`)
    return said
  }
  const usual = METRIC.includes(form.units[0]!) ? USUAL_METRIC : USUAL_INCHES
  return usual.write(amountIn(usual, steps, draw))!
}

function amountIn({ units }: Form, steps: number, { grid }: Draw): number {
  const isMetric = METRIC.includes(units[0]!)
  const isWhole = isMetric === (grid.nm === 1_000_000)
  if (isWhole) return isMetric ? steps * 1_000 : steps
  const nm = steps * grid.nm
  return isMetric ? Math.round(nm / 1_000_000) * 1_000 : Math.round(nm / 1_587_500)
}

/** The straight distance between two points, to the nearest step. */
export function distance(east: number, north: number): number {
  return Math.round(Math.sqrt(east * east + north * north))
}
