import type { LaidFloor } from '../../server/src/layout/lay.ts'
import type { PublishedPiece } from '../../server/src/layout/published.ts'
import type { Compiled } from '../../server/src/report/compiled.ts'
import { measuresOf } from '../../server/src/takeoff/amount.ts'
import { closetAreas, roomArea } from '../../server/src/takeoff/areas.ts'
import type { Quantity } from '../../server/src/takeoff/takeoff.ts'
import { printDecimal } from '../../server/src/units/decimal.ts'
import { ratio } from '../../server/src/units/ratio.ts'

/** What a job comes to, a line or two for each room, floor and product, in figures a person can work out. */
export function figuresOf(compiled: Compiled): string {
  const { takeoff, survey, floors, messages } = compiled
  const style = compiled.job.units
  const closing = survey.rooms.flatMap(({ room, closing }) =>
    closing !== null && (closing.east !== 0 || closing.north !== 0)
      ? [
          `${room.name.text} misses by ${inUnits(closing.east, style)} east, ${inUnits(closing.north, style)} north`,
        ]
      : [],
  )
  const measures = measuresOf(style)
  const rooms = survey.rooms
    .filter(({ status }) => status === 'measured')
    .flatMap((room) => [roomArea(room, measures), ...closetAreas(room, measures)])
    .map((area) => `${area.room} ${exact(area, 4)} ${area.unit}`)
  const laid = floors.flatMap((floor, i) => floorLines(floor, takeoff.floors[i]!.quantities, style))
  const bought = takeoff.products.map(({ product, quantities }) => {
    const count = (key: string) => exact(find(quantities, key), 0)
    return `${product}: ${count('planks')} + spoil ${count('spoil')} + spares ${count('spares')} = ${count('boxes')} boxes, left ${count('planks left')}`
  })
  const said = [...new Set(messages.map(({ code }) => code))].sort()
  return [
    ...closing,
    ...rooms,
    ...laid,
    ...bought,
    ...(takeoff.complete ? [] : ['incomplete']),
    ...(said.length === 0 ? [] : [`said: ${said.join(', ')}`]),
  ].join('\n')
}

function floorLines(
  floor: LaidFloor,
  quantities: readonly Quantity[],
  style: Compiled['job']['units'],
): readonly string[] {
  const { published } = floor
  const [area, covered, run] = ['floor area', 'covered area', 'trim run'].map(
    (key) => quantities.findLast((one) => one.key === key)!,
  )
  const broken = [...Map.groupBy(published.breaches, ({ rule }) => rule)]
    .map(([rule, found]) => `${rule} ${found.length}`)
    .sort()
  const courses = published.courses.toSorted((a, b) => b.course - a.course)
  const widths = [courses[0]!, courses.at(-1)!].map(({ course }) =>
    inUnits(widest(published.pieces.filter((piece) => piece.course === course)), style),
  )
  return [
    `${published.floor}: ${exact(area!, 4)} ${area!.unit}, covered ${exact(covered!, 4)}, run ${exact(run!, 3)} ${run!.unit}`,
    `  ${courses.length} courses, first ${widths[0]}, last ${widths[1]}; ${published.pieces.length} pieces of ${published.planks.length} planks`,
    ...(broken.length === 0 ? [] : [`  breaches: ${broken.join(', ')}`]),
  ]
}

function widest(pieces: readonly PublishedPiece[]): number {
  return pieces.reduce((most, { ring }) => {
    const v = ring.map((point) => point[1])
    return Math.max(most, Math.max(...v) - Math.min(...v))
  }, 0)
}

const find = (quantities: readonly Quantity[], key: string) =>
  quantities.find((one) => one.key === key)!

const exact = ({ value }: Quantity, places: number) =>
  value === null ? 'not known' : printDecimal(value, places)

/** To a ten-thousandth of an inch, or of a millimetre. */
function inUnits(nm: number, style: Compiled['job']['units']): string {
  return style === 'feet-inches' || style === 'inches'
    ? `${printDecimal(ratio(nm, 25_400_000), 4)}"`
    : `${printDecimal(ratio(nm, 1_000_000), 4)} mm`
}
