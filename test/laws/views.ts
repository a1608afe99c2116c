import type { Compiled } from '../../server/src/report/compiled.ts'
import { checkJson } from '../../server/src/report/json/check.ts'
import { estimateJson } from '../../server/src/report/json/estimate.ts'
import { layoutJson } from '../../server/src/report/json/layout.ts'
import type { Quantity } from '../../server/src/takeoff/takeoff.ts'

/** All that `check`, `estimate` and `layout` write as JSON, byte for byte. */
export function everyByte(compiled: Compiled): string {
  return [checkJson(compiled), estimateJson(compiled), layoutJson(compiled)].join('')
}

/** The same but for the places in the text that `check` and `estimate` lead back to. */
export function butPlaces(compiled: Compiled): string {
  const reports = [checkJson(compiled), estimateJson(compiled)].map(withoutPlaces)
  return [...reports, layoutJson(compiled)].join('\n')
}

function withoutPlaces(json: string): string {
  return JSON.stringify(JSON.parse(json, isPlace), null, 1)
}

function isPlace(key: string, value: unknown): unknown {
  if (key === 'place' || key === 'file') return undefined
  const isSpot = typeof value === 'object' && value !== null && 'line' in value
  return (key === 'from' || key === 'to') && isSpot ? undefined : value
}

/**
 * What the readings come to, whatever words and notation they are written in: quantities, exact and
 * printed, the survey to the nanometre, the whole layout, the verdict and what is said, by code.
 */
export function everyNumber(compiled: Compiled): string {
  const { survey, verdict } = JSON.parse(checkJson(compiled), (key, value) =>
    key === 'read' || key === 'fixes' ? undefined : value,
  )
  const said = compiled.messages.map(
    ({ code, accepted }) => `${code}${accepted ? ', accepted' : ''}`,
  )
  const numbers = { verdict, said, ...figures(compiled), survey }
  return `${JSON.stringify(numbers, null, 1)}\n${layoutJson(compiled)}`
}

/** Every quantity of floors and products: what it is, its exact value, and as it is printed. */
export function everyQuantity(compiled: Compiled): string {
  return JSON.stringify(figures(compiled), null, 1)
}

function figures({ takeoff }: Compiled) {
  return {
    complete: takeoff.complete,
    incompleteBecause: takeoff.incompleteBecause,
    floors: takeoff.floors.map(({ floor, product, quantities }) => ({
      floor,
      product,
      quantities: quantities.map(figure),
    })),
    products: takeoff.products.map(({ product, quantities }) => ({
      product,
      quantities: quantities.map(figure),
    })),
  }
}

function figure({ key, label, room, unit, value, printed, complete }: Quantity) {
  return [key, label, room, unit, value && `${value.n}/${value.d}`, printed, complete].join(' | ')
}
