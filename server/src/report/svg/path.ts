import type { Point, Region, Ring } from '../../geometry/point.ts'
import type { Nm } from '../../units/length.ts'
import { mm } from './number.ts'

/** Turns plan points into places on the sheet: x right and y down from its upper left corner. */
export type Place = (point: Point) => { readonly x: Nm; readonly y: Nm }

export function placeOn(low: Point, high: Point): Place {
  return (point) => ({ x: point.x - low.x, y: high.y - point.y })
}

/** A path round the ring. */
export function closed(place: Place, ring: Ring): string {
  return ring.length === 0 ? '' : `${open(place, ring)}Z`
}

export function closedAll(place: Place, region: Region): string {
  return region.map((ring) => closed(place, ring)).join('')
}

/** A path along the points. */
export function open(place: Place, points: readonly Point[]): string {
  const at = (point: Point): string => {
    const { x, y } = place(point)
    return `${mm(x)} ${mm(y)}`
  }
  return points.length === 0 ? '' : `M${points.map(at).join('L')}`
}

export function strokes(place: Place, lines: readonly (readonly [Point, Point])[]): string {
  return lines.map((line) => open(place, line)).join('')
}
