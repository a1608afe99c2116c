import type { Floor } from '../../job/job.ts'
import { counted } from '../../job/sentence.ts'
import type { LaidFloor } from '../../layout/lay.ts'
import { cutSize } from '../../report/cut-size.ts'
import { settingOut } from '../../report/setting-out.ts'
import { breachLines } from '../../report/text/layout.ts'
import { amountText } from '../../report/text/quantities.ts'
import type { Quantity } from '../../takeoff/takeoff.ts'
import type { UnitStyle } from '../../units/length.ts'
import { countedIndex, quantityOf } from '../figures/counted-index.ts'
import { floorFigures } from '../figures/floor-figures.ts'
import { floorText } from '../hints.ts'
import type { Asked } from './asked.ts'
import { BEING_COUNTED, quantityParts } from './counted.ts'
import { type HoverPart, step, steps, text, title } from './parts.ts'

/** A floor: planks, boxes and area with their reasons, how it is set out, and what else was tried. */
export function floorParts({ view, units }: Asked, floor: Floor): readonly HoverPart[] {
  const name = title(`floor ${floor.name.text}`)
  if (view.counted === null) return [name, BEING_COUNTED]
  const { floors } = countedIndex(view.counted)
  const found = floors.get(floor.name.key)
  if (found === undefined) return [name, text('It cannot be laid yet: its messages say why.')]
  const { laid, quantities } = found
  const [planks, area] = ['planks', 'floor area'].map((key) => quantityOf(quantities, key)!)
  return [
    title(`floor ${floor.name.text}: ${floorText(view.counted, floor.name.key)}`),
    ...(view.counted.takeoff.complete
      ? []
      : [text('Not final: something is still to come or wrong.')]),
    ...settingOut(laid.published, units).map((line) => text(line.trim())),
    text(narrowestText(laid, units)),
    text(`${counted(laid.boxes, 'box', 'boxes')} if this floor were all that is bought.`),
    ...breachParts(laid, units),
    ...alternativeParts(laid),
    ...quantityParts(planks!),
    ...quantityParts(area!),
    ...otherParts(quantities),
  ]
}

/** What else the floor comes to as a whole, each with its formula and rule. */
function otherParts(quantities: readonly Quantity[]): readonly HoverPart[] {
  const others = quantities.filter(({ key, room }) => room === null && !TOLD.includes(key))
  return steps(
    others.flatMap(({ derivation: { label, formula, rule }, ...quantity }) => [
      step(`${label}: ${amountText(quantity)}`),
      step(`= ${formula}`, null, 1),
      ...(rule === '' ? [] : [step(rule, null, 1)]),
    ]),
  )
}

const TOLD: readonly string[] = ['planks', 'floor area']

function narrowestText(laid: LaidFloor, units: UnitStyle): string {
  const { narrowest } = floorFigures(laid)
  if (narrowest === null) return 'No piece is narrower than a plank.'
  const { width, piece, course } = narrowest
  return `The narrowest rip is ${cutSize(width, units)}: piece ${piece}, course ${course}.`
}

function breachParts({ published }: LaidFloor, units: UnitStyle): readonly HoverPart[] {
  const [head, ...lines] = breachLines(published, units).map((line) => line.trim())
  return [text(head!), ...steps(lines.map((line) => step(line)))]
}

/** Other ways of setting it out that were tried. */
function alternativeParts({ alternatives }: LaidFloor): readonly HoverPart[] {
  if (alternatives.length === 0) return []
  const lines = alternatives.map(({ words, planks, boxes, breaches }) => {
    const broken = breaches === 0 ? 'no breaches' : counted(breaches, 'breach', 'breaches')
    return step(
      `${words}: ${counted(planks, 'plank')}, ${counted(boxes, 'box', 'boxes')}, ${broken}`,
    )
  })
  return [text('Other ways would take:'), ...steps(lines)]
}
