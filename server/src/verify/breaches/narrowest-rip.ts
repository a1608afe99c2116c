import type { Floor, Ring } from '../layout.ts'
import type { Breach } from '../report.ts'
import { type Interval, sections, widthDown } from '../sections.ts'

/** At most a thousandth of a millimetre wide counts as coming to a point. */
const POINT = 1000

/**
 * Pieces with a strip, leg or neck narrower than the narrowest rip. Between two neighbouring vertices
 * every strip of a piece is a trapezium, narrowest at one of its sides; but where it tapers to a
 * point there, its wide side is what a hand can hold, and counts.
 */
export function narrowestRipBreaches({ pieces, rules }: Floor): readonly Breach[] {
  const limit = rules.narrowestRip
  return pieces.flatMap(({ piece, ring }) => {
    const value = narrowest(ring)
    if (value === null || value >= limit) return []
    return [{ rule: 'narrowest rip', value, limit, at: ring[0]!, pieces: [piece], direction: '' }]
  })
}

function narrowest(ring: Ring): number | null {
  const widths = sections([ring])
    .flatMap(({ intervals }) => intervals.map(widthOf))
    .filter((width) => width !== null)
  return widths.reduce<number | null>(
    (least, width) => (least === null ? width : Math.min(least, width)),
    null,
  )
}

function widthOf(interval: Interval): number | null {
  const sides = [widthDown(interval, 0), widthDown(interval, 1)] as const
  const [smaller, larger] = [Math.min(...sides), Math.max(...sides)]
  if (larger <= POINT) return null
  return smaller <= POINT ? larger : smaller
}
