import type { PublishedPiece, PublishedRing } from '../layout/published.ts'
import type { Nm } from '../units/length.ts'
import type { Cut } from './scene.ts'

/** What a person asks of one piece: how long, how wide, what to saw. Lengths in nanometres. */
export interface PieceFacts {
  readonly piece: number
  readonly cut: Cut
  readonly length: Nm
  /** Of one width where both are the same; a taper runs from `least` to `most`. */
  readonly width: { readonly least: Nm; readonly most: Nm }
  /** Ends that are sawn, as seen in plan along the run. */
  readonly sawnAt: 'neither end' | 'left' | 'right' | 'both ends'
  /** Something other than a straight cut: round an obstacle, at a slanted wall. */
  readonly shaped: boolean
}

export function pieceFacts(piece: PublishedPiece): PieceFacts {
  const us = piece.ring.map(([u]) => u)
  const shaped = cornersOf(piece.ring) > 4
  return {
    piece: piece.piece,
    cut: cutOf(piece, shaped),
    length: Math.max(...us) - Math.min(...us),
    width: widths(piece.ring),
    sawnAt: sawnAt(piece),
    shaped,
  }
}

/** Whether a piece is laid as it came, with nothing sawn off. */
export function isWhole({ factory, ring }: PublishedPiece): boolean {
  const { left, right, low, high } = factory
  return left && right && low && high && (ring.length <= 4 || cornersOf(ring) <= 4)
}

function cutOf({ factory }: PublishedPiece, shaped: boolean): Cut {
  const crosscut = !factory.left || !factory.right
  const ripped = !factory.low || !factory.high
  if (ripped) return crosscut ? 'cut and rip' : 'rip'
  return crosscut || shaped ? 'cut' : 'whole'
}

function sawnAt({ factory }: PublishedPiece): PieceFacts['sawnAt'] {
  if (factory.left) return factory.right ? 'neither end' : 'right'
  return factory.right ? 'left' : 'both ends'
}

/** Corners where the ring turns; vertices inside a straight edge do not count. */
function cornersOf(ring: PublishedRing): number {
  return ring.filter((point, i) => {
    const before = ring.at(i - 1) ?? point
    const after = ring[(i + 1) % ring.length] ?? point
    return turns(before, point, after)
  }).length
}

/** Within 2 nm of straight on: what rounding a crossing may move a vertex. */
function turns(a: readonly [number, number], b: typeof a, c: typeof a): boolean {
  const [x, y] = [c[0] - a[0], c[1] - a[1]]
  const away = x * (b[1] - a[1]) - y * (b[0] - a[0])
  return Math.abs(away) > 2 * Math.sqrt(x * x + y * y)
}

/** What a taper to a point may come to, in nanometres, before it counts as a point. */
const A_POINT: Nm = 1000

/**
 * Widths across the piece, slab by slab between the places where it has a vertex, as the published
 * layout's rule for the narrowest rip takes them.
 */
function widths(ring: PublishedRing): PieceFacts['width'] {
  const places = [...new Set(ring.map(([u]) => u))].sort((a, b) => a - b)
  let [least, most] = [Infinity, 0]
  for (const [i, from] of places.entries()) {
    const to = places[i + 1]
    if (to === undefined) continue
    for (const [atFrom, atTo] of sections(ring, from, to)) {
      const wide = Math.max(atFrom, atTo)
      if (wide <= A_POINT) continue
      const narrow = Math.min(atFrom, atTo)
      least = Math.min(least, narrow <= A_POINT ? wide : narrow)
      most = Math.max(most, wide)
    }
  }
  return { least: Math.min(least, most), most }
}

/** The cross-sections of one slab: the width of each at both sides, rounded down to nanometres. */
function sections(ring: PublishedRing, from: Nm, to: Nm): (readonly [Nm, Nm])[] {
  const crossing = ring.flatMap((a, i) => {
    const b = ring[(i + 1) % ring.length] ?? a
    const spans = Math.min(a[0], b[0]) <= from && to <= Math.max(a[0], b[0]) && a[0] !== b[0]
    return spans ? [[heightAt(a, b, from), heightAt(a, b, to)] as const] : []
  })
  crossing.sort((a, b) => a[0] + a[1] - b[0] - b[1])
  return crossing.flatMap((low, i) => {
    const high = crossing[i + 1]
    return i % 2 === 0 && high !== undefined
      ? [[Math.floor(high[0] - low[0]), Math.floor(high[1] - low[1])] as const]
      : []
  })
}

function heightAt(a: readonly [number, number], b: typeof a, u: Nm): number {
  if (a[1] === b[1]) return a[1]
  return a[1] + ((b[1] - a[1]) * (u - a[0])) / (b[0] - a[0])
}
