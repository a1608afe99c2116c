import { heightOf, type Interval, sameSide, sectionsOf } from '../geometry/sections.ts'
import type { Nm } from '../units/length.ts'
import type { PublishedRing } from './published.ts'

type Corner = readonly [Nm, Nm]

/** At most 1 µm wide counts as a point. */
const POINT: Nm = 1000

/** A trapezium of a piece, with the one that goes on from its whole left or right side. */
interface Strip {
  readonly length: Nm
  readonly interval: Interval
  /** At its left and right side, rounded down. */
  readonly widths: readonly [Nm, Nm]
  readonly beside: [Strip | null, Strip | null]
}

/**
 * The narrowest strip, leg or neck of a piece; null where all of it comes to a point. Where it only
 * gets narrower until it ends in a point, its widest place counts, and nothing where that stretch is no
 * longer along the planks than `rip`, the narrowest rip: such a corner is cut off by scribing to the wall
 * or column, and no strip is left that could work loose.
 */
export function narrowestOf(ring: PublishedRing, rip: Nm): Nm | null {
  const height = heightOfRectangle(ring)
  if (height !== null) return height <= POINT ? null : height
  const strips = stripsOf(ring)
  const points = strips.flatMap((strip) => pointsFrom(strip))
  const tapering = new Set(points.flat())
  const values = [
    ...points.filter((point) => lengthOf(point) > rip).map(widestOf),
    ...strips.filter((strip) => !tapering.has(strip)).flatMap(narrowerSide),
  ]
  return values.length === 0 ? null : values.reduce((a, b) => Math.min(a, b))
}

/** Most pieces are rectangles along the planks. */
function heightOfRectangle(ring: PublishedRing): Nm | null {
  if (ring.length !== 4) return null
  const [a, b, c, d] = ring as readonly [Corner, Corner, Corner, Corner]
  const isLevel = a[1] === b[1] && b[0] === c[0] && c[1] === d[1] && d[0] === a[0]
  const isUpright = a[0] === b[0] && b[1] === c[1] && c[0] === d[0] && d[1] === a[1]
  return isLevel || isUpright ? Math.abs(c[1] - a[1]) : null
}

function stripsOf(ring: PublishedRing): readonly Strip[] {
  const all: Strip[] = []
  let before: readonly Strip[] = []
  for (const { from, to, intervals } of sectionsOf([ring.map(([x, y]) => ({ x, y }))])) {
    const now = intervals.map((interval): Strip => {
      const widths = [heightOf(interval, 0, 'down'), heightOf(interval, 1, 'down')] as const
      return { length: to - from, interval, widths, beside: [null, null] }
    })
    link(before, now)
    all.push(...now)
    before = now
  }
  return all
}

function link(before: readonly Strip[], now: readonly Strip[]): void {
  for (const left of before) {
    const right = now.find((strip) => sameSide(left.interval, strip.interval))
    if (right === undefined) continue
    left.beside[1] = right
    right.beside[0] = left
  }
}

/** From each side of a strip that is a point, all strips that only get wider. */
function pointsFrom(strip: Strip): Strip[][] {
  return ([0, 1] as const)
    .filter((end) => strip.widths[end] <= POINT && strip.widths[1 - end]! > POINT)
    .map((end) => {
      const chain = [strip]
      const away = (1 - end) as 0 | 1
      let next = strip.beside[away]
      while (next !== null && next.widths[away] >= next.widths[end]) {
        chain.push(next)
        next = next.beside[away]
      }
      return chain
    })
}

const lengthOf = (point: readonly Strip[]) => point.reduce((sum, { length }) => sum + length, 0)

const widestOf = (point: readonly Strip[]) =>
  point.reduce((most, { widths }) => Math.max(most, ...widths), 0)

function narrowerSide({ widths: [left, right] }: Strip): Nm[] {
  return Math.max(left, right) <= POINT ? [] : [Math.min(left, right)]
}
