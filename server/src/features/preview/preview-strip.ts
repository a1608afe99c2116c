import type { Message } from '../../facts/message.ts'
import type { Span } from '../../facts/span.ts'
import type { Hold } from '../../job/job.ts'
import type { PublishedFloor } from '../../layout/published.ts'
import { breachText } from '../../report/breach-text.ts'
import type { Compiled } from '../../report/compiled.ts'
import { cutSize } from '../../report/cut-size.ts'
import { breachId } from '../../report/drawing/breaches.ts'
import { ownIds } from '../../report/drawing/own-ids.ts'
import { pieceId } from '../../report/drawing/pieces.ts'
import type { Shape } from '../../report/scene.ts'
import type { Quantity } from '../../takeoff/takeoff.ts'
import type { UnitStyle } from '../../units/length.ts'
import { floorFigures } from '../figures/floor-figures.ts'
import type { View } from '../view.ts'
import type { StripItem } from './picture.ts'

/**
 * What is told over the drawing: counts first, then what wants to be looked at, then what is missing.
 * While floors are still being laid the counts are those of `last`.
 */
export function stripOf(
  { measured, counted }: View,
  shapes: readonly Shape[],
  last: readonly StripItem[],
): readonly StripItem[] {
  const shapesOf = finderOf(shapes)
  const told =
    counted === null
      ? last.filter(({ about }) => about !== 'holds' && about !== 'missing')
      : [
          ...bought(counted),
          ...narrowestRip(counted),
          ...rulesNotMet(counted),
          ...edges(counted, shapesOf),
        ]
  const { job, messages } = counted ?? measured
  return ownIds([...told, ...holds(job.holds), ...missing(messages, shapesOf)])
}

type ShapesOf = (span: Span | null) => readonly string[]

/** Shapes that were drawn from just this text. */
function finderOf(shapes: readonly Shape[]): ShapesOf {
  const key = (span: Span): string => `${span.start} ${span.end} ${span.file}`
  const found = Map.groupBy(shapes, ({ span }) => (span === null ? '' : key(span)))
  return (span) => (span === null ? [] : (found.get(key(span)) ?? []).map(({ id }) => id))
}

function bought({ takeoff }: Compiled): readonly StripItem[] {
  return takeoff.products.flatMap(({ product, quantities }) =>
    quantities.flatMap((quantity): StripItem[] => {
      const about =
        quantity.key === 'boxes' ? 'boxes' : quantity.key === 'planks left' ? 'spare planks' : null
      if (about === null) return []
      const label = about === 'boxes' ? product : `left over of ${product}`
      return [{ id: `${about}: ${product}`, about, label, ...amount(quantity), shapes: [] }]
    }),
  )
}

/** A count that is not ready never looks ready. */
function amount({ printed, complete }: Quantity): Pick<StripItem, 'text' | 'weight'> {
  return complete
    ? { text: printed, weight: 'plain' }
    : { text: `${printed} so far`, weight: 'open' }
}

/** The narrowest piece, or part of one, judged as the product's rule judges it. */
function narrowestRip({ floors, job }: Compiled): readonly StripItem[] {
  const rips = floors.flatMap((laid) => {
    const { narrowest } = floorFigures(laid)
    return narrowest === null ? [] : [{ floor: laid.published, ...narrowest }]
  })
  const [first, ...others] = rips
  if (first === undefined) return []
  const least = others.reduce((least, rip) => (rip.width < least.width ? rip : least), first)
  const { floor, piece, course, width } = least
  const text = `${cutSize(width, job.units)}, piece ${piece} in course ${course}`
  return [
    {
      id: 'narrowest rip',
      about: 'narrowest rip',
      label: 'narrowest rip',
      text: floors.length === 1 ? text : `${text} of ${floor.floor}`,
      weight: width < floor.rules.narrowestRip ? 'alarm' : 'plain',
      shapes: [pieceId(floor, piece)],
    },
  ]
}

/** One item for each rule of a floor's product that some place does not meet. */
function rulesNotMet({ floors, job }: Compiled): readonly StripItem[] {
  return floors.flatMap(({ published }) => {
    const breaches = published.breaches.map((breach, i) => ({ breach, i }))
    return [...Map.groupBy(breaches, ({ breach }) => breach.rule)].map(([rule, places]) => ({
      id: `rule: ${published.floor}: ${rule}`,
      about: 'rules' as const,
      label: `${rule} not met in ${published.floor}`,
      text: places.length === 1 ? worst(places, job.units) : `${places.length} places`,
      weight: 'alarm' as const,
      shapes: places.map(({ i }) => breachId(published, i)),
    }))
  })
}

function worst(
  [first]: readonly { readonly breach: PublishedFloor['breaches'][number] }[],
  units: UnitStyle,
): string {
  return first === undefined ? '' : breachText(first.breach, units)
}

/** Walls and other edges of which the text does not say what they meet. */
function edges({ floors }: Compiled, shapesOf: ShapesOf): readonly StripItem[] {
  const unsaid = floors
    .flatMap(({ area }) => area.rim)
    .filter(({ kind }) => kind === null)
    .map(({ label, span }) => [label, span] as const)
  const labels = new Map(unsaid)
  if (labels.size === 0) return []
  const [first] = labels.keys()
  return [
    {
      id: 'edges',
      about: 'edges',
      label: 'edges without a kind',
      text: labels.size === 1 ? first! : `${labels.size}`,
      weight: 'plain',
      shapes: [...new Set([...labels.values()].flatMap(shapesOf))],
    },
  ]
}

function holds(all: readonly Hold[]): readonly StripItem[] {
  return all
    .filter(({ cleared }) => cleared === null)
    .map(({ what, by }) => ({
      id: `hold: ${what}`,
      about: 'holds',
      label: 'held until cleared',
      text: by === null ? what : `${what} by ${by}`,
      weight: 'open',
      shapes: [],
    }))
}

/** More causes would bury the drawing; the list of problems has them all. */
const MOST_CAUSES = 3

/** Why no count is final: what is wrong or still to come, holds left out. */
function missing(messages: readonly Message[], shapesOf: ShapesOf): readonly StripItem[] {
  const causes = new Map(
    messages
      .filter(({ weight, code }) => CAUSES.has(weight) && code !== 'hold-open')
      .map((one) => [one.text, one]),
  )
  const shown = [...causes.values()].slice(0, MOST_CAUSES)
  const more = causes.size - shown.length
  return [
    ...shown.map(
      ({ text, span, weight }): StripItem => ({
        id: `missing: ${text}`,
        about: 'missing',
        label: weight === 'error' ? 'to be mended' : 'still to come',
        text,
        weight: weight === 'error' ? 'alarm' : 'open',
        shapes: shapesOf(span),
      }),
    ),
    ...(more === 0 ? [] : [andMore(more)]),
  ]
}

const CAUSES: ReadonlySet<Message['weight']> = new Set(['error', 'incomplete'])

function andMore(more: number): StripItem {
  return {
    id: 'missing: more',
    about: 'missing',
    label: 'and',
    text: `${more} more`,
    weight: 'open',
    shapes: [],
  }
}
