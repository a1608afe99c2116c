// The one file that touches the product: it runs it and hands over what is published.
import { compile } from '../../server/src/compile.ts'
import type { Quantity, Result } from './agreement.ts'
import { blocksOf, nameKey } from './lines.ts'

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
  const isAt = (
    floor: string,
    { file, start }: { readonly file: string; readonly start: number },
  ) => {
    const head = blocksOf(file, files.get(file)?.slice(start) ?? '')[0]?.head.rest ?? ''
    return nameKey(head) === floor
  }
  const quantitiesOf = (all: readonly Quantity[]) =>
    all.map(({ key, room, unit, value }) => {
      return { key, room: room === null ? null : nameKey(room), unit, value }
    })
  return {
    rooms: survey.rooms.map(({ room, corners, closing }) => ({
      room: room.name.key,
      corners: corners.map(({ x, y }) => [x, y] as const),
      closing,
    })),
    hasErrors: messages.some(({ weight }) => weight === 'error'),
    floors: floors.flatMap(({ published }) =>
      published === null ? [] : [{ ...published, floor: nameKey(published.floor) }],
    ),
    quantities: new Map(
      takeoff.floors.map((one) => [nameKey(one.floor), quantitiesOf(one.quantities)]),
    ),
    orders: new Map(
      takeoff.products.map((one) => [nameKey(one.product), quantitiesOf(one.quantities)]),
    ),
    isLineMoved: (floor) =>
      messages.some(
        ({ code, span }) => code === 'line-moved' && span !== null && isAt(floor, span),
      ),
  }
}
