import type { Wall } from './job.ts'
import { add, length, less, type Point, scaled } from './point.ts'
import type { Face } from './shape.ts'
import { asNumber, exactly } from './turns.ts'

/**
 * The corners of a bowed wall between its two ends, left to right: outward on the arc, inward where the
 * tangents at the ends of each piece meet, so that the wall lies outside the floor.
 */
export function bowed(face: Face, bow: NonNullable<Wall['bow']>): readonly Point[] {
  const chord = asNumber(length(less(face.right, face.left)))
  const rise = Number(bow.rise)
  const radius = (chord * chord) / (8 * rise) + rise / 2
  const angle = 4 * Math.atan((2 * rise) / chord)
  const pieces = Math.max(4, Math.ceil((angle * 64) / (2 * Math.PI) - 1e-12))
  const step = angle / pieces
  const reach = bow.isOut ? radius : radius / Math.cos(step / 2)
  const turns = Array.from(
    { length: pieces },
    (_, i) => (i + (bow.isOut ? 0 : 0.5)) * step - angle / 2,
  )
  return (bow.isOut ? turns.slice(1) : turns).map((turn) => {
    const on = exactly(chord / 2 + reach * Math.sin(turn))
    const off = exactly((reach * Math.cos(turn) - (radius - rise)) * (bow.isOut ? 1 : -1))
    return add(add(face.left, scaled(face.along, on)), scaled(face.out, off))
  })
}
