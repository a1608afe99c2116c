import { counted } from '../job/sentence.ts'
import type { Block } from '../language/tree.ts'
import { areaText } from '../report/area-text.ts'
import { cutSize } from '../report/cut-size.ts'
import { amountText } from '../report/text/quantities.ts'
import { isSurelyMisread } from '../survey/closing.ts'
import type { SurveyedRoom } from '../survey/survey.ts'
import type { UnitStyle } from '../units/length.ts'
import { closingWords } from './figures/closing-words.ts'
import { countedIndex, quantityOf } from './figures/counted-index.ts'
import { floorFigures } from './figures/floor-figures.ts'
import { jobIndex } from './names/job-index.ts'
import { blocksIn } from './place/entries.ts'
import { thingOn } from './place/line-thing.ts'
import type { View } from './view.ts'

/** A few figures at the end of a line. */
export interface Hint {
  /** Where it stands: the end of the line. */
  readonly at: number
  readonly text: string
  /** What it follows from: the readings alone, or the count, which takes longer. */
  readonly kind: 'measured' | 'counted'
}

/**
 * The hints of a part of a file: a room's area and how it closes, a product's boxes, a floor's planks.
 * A counted one is left out while the count is being worked out: whoever shows hints keeps the old ones
 * of that kind until then.
 */
export function hints(
  view: View,
  { start, end }: { readonly start: number; readonly end: number },
): readonly Hint[] {
  return blocksIn(view.tree, start, end).flatMap((block) => {
    const at = block.line.span.end
    if (at < start || end < at) return []
    const kind = block.word === 'room' ? 'measured' : 'counted'
    const text = textFor(view, block)
    return text === null ? [] : [{ at, text, kind } as const]
  })
}

function textFor(view: View, block: Block): string | null {
  const thing = thingOn(view.measured, block, block)
  switch (thing?.kind) {
    case 'room': {
      const room = jobIndex(view.measured).surveyed.get(thing.room.name.key)
      return room === undefined ? null : roomText(room, view.measured.job.units)
    }
    case 'product':
      return view.counted === null ? null : productText(view.counted, thing.block.name!.key)
    case 'floor':
      return view.counted === null ? null : floorText(view.counted, thing.floor.name.key)
    default:
      return null
  }
}

/** "182.1 sq ft, closes within 3/16""; an area that the readings contradict is not shown. */
function roomText(
  { room, status, outline, closing }: SurveyedRoom,
  units: UnitStyle,
): string | null {
  if (status === 'unfinished') {
    const asked = room.walls.filter((wall) => wall.reading.nm === null).length
    return asked === 0 ? 'unfinished' : `unfinished, ${counted(asked, 'wall')} to read`
  }
  if (closing === null) return null
  const closes = closingWords(closing, units)
  if (status !== 'measured' || isSurelyMisread(closing)) return closes
  return `${areaText([outline], units)}, ${closes}`
}

function productText(compiled: NonNullable<View['counted']>, key: string): string | null {
  const product = countedIndex(compiled).products.get(key)
  const boxes = quantityOf(product?.quantities ?? [], 'boxes')
  return boxes === undefined ? null : amountText(boxes)
}

/** "44 boxes, 428 planks, narrowest rip 3 3/8""; where others share the product, boxes "alone". */
export function floorText(compiled: NonNullable<View['counted']>, key: string): string | null {
  const { floors, products } = countedIndex(compiled)
  const floor = floors.get(key)
  if (floor === undefined) return null
  const { laid, quantities } = floor
  const product = products.get(laid.product.name.key)!
  const planks = quantityOf(quantities, 'planks')!
  const boxes =
    product.floors.length === 1
      ? quantityOf(product.quantities, 'boxes')!.printed
      : `${counted(laid.boxes, 'box', 'boxes')} alone`
  const { narrowest } = floorFigures(laid)
  const rip =
    narrowest === null
      ? 'nothing ripped'
      : `narrowest rip ${cutSize(narrowest.width, compiled.job.units)}`
  return `${amountText({ ...planks, printed: `${boxes}, ${planks.printed}` })}, ${rip}`
}
