// The one file that touches the product: it runs it and hands over what is published.
import { compile } from '../../server/src/compile.ts'
import type { Quantity, Result } from './agreement.ts'

export interface Surveyed {
  readonly room: string
  readonly corners: readonly (readonly [number, number])[]
  readonly closing: {
    readonly east: number
    readonly north: number
    readonly perimeter: number
    readonly allowedEast: number
    readonly allowedNorth: number
  } | null
}

export interface Compiled extends Result {
  readonly rooms: readonly Surveyed[]
  readonly hasErrors: boolean
}

export function compiled(files: ReadonlyMap<string, string>, root: string): Compiled {
  const result = compile(new Map(files), root)
  if ('missing' in result) throw new Error(`without ${result.missing.join(', ')}`)
  const { survey, floors, takeoff, messages } = result
  const text = files.get(root) ?? ''
  const isAt = (floor: string, at: number) => {
    const heads = [...text.matchAll(/^floor (.*)$/gm)].filter(({ index }) => index <= at)
    return heads.at(-1)?.[1]?.trim() === floor
  }
  const quantitiesOf = (all: readonly Quantity[]) =>
    all.map(({ key, room, unit, value }) => ({ key, room, unit, value }))
  return {
    rooms: survey.rooms.map(({ room, corners, closing }) => ({
      room: room.name.key,
      corners: corners.map(({ x, y }) => [x, y] as const),
      closing,
    })),
    hasErrors: messages.some(({ weight }) => weight === 'error'),
    floors: floors.flatMap(({ published }) => published ?? []),
    quantities: new Map(takeoff.floors.map((one) => [one.floor, quantitiesOf(one.quantities)])),
    orders: new Map(takeoff.products.map((one) => [one.product, quantitiesOf(one.quantities)])),
    isLineMoved: (floor) =>
      messages.some(
        ({ code, span }) => code === 'line-moved' && span !== null && isAt(floor, span.start),
      ),
  }
}
