import type { Nm } from '../../units/length.ts'
import { type Direction, left } from './vector.ts'

/** Sizes that are written already, by their length and the way they run. */
export interface SizesSaid {
  add(along: Direction, length: Nm): void
  /** Whether a parallel one already says about the same. */
  has(along: Direction, length: Nm): boolean
}

interface Size {
  readonly along: Direction
  readonly length: Nm
}

/** Ways that differ by less count as parallel: the sine of the angle between them. */
const PARALLEL = 0.03

/** A sixty-fourth of a length and a thirty-second of a way are more than sizes alike may differ by. */
const LENGTHS = 64
const WAYS = 64

/** Sizes alike lie in one field of a table or in two side by side: no other field is looked at. */
export function sizesSaid(): SizesSaid {
  const fields = new Map<number, Size[]>()
  const written = new Set<string>()
  return {
    add: (along, length) => {
      const key = `${along.x} ${along.y} ${length}`
      if (written.has(key)) return
      written.add(key)
      const field = fieldAt(wayOf(along), stepOf(length))
      const there = fields.get(field)
      if (there) there.push({ along, length })
      else fields.set(field, [{ along, length }])
    },
    has: (along, length) => {
      const [way, step] = [wayOf(along), stepOf(length)]
      for (const offWay of [0, 1, WAYS - 1]) {
        for (const offStep of [0, 1, -1]) {
          const sizes = fields.get(fieldAt((way + offWay) % WAYS, step + offStep)) ?? []
          if (sizes.some((size) => alike(size, { along, length }))) return true
        }
      }
      return false
    },
  }
}

function alike(a: Size, b: Size): boolean {
  const parallel = Math.abs(a.along.x * b.along.y - a.along.y * b.along.x) < PARALLEL
  return parallel && Math.abs(a.length - b.length) * 100 <= Math.max(a.length, b.length)
}

function fieldAt(way: number, step: number): number {
  return step * WAYS + way
}

/** Which part of a half turn a way lies in, either way round: by |x| + |y| = 1 in place of a circle. */
function wayOf(along: Direction): number {
  const { x, y } = along.y < 0 || (along.y === 0 && along.x < 0) ? left(left(along)) : along
  const turned = x >= 0 ? y / (x + y) : 1 - x / (y - x)
  return Math.min(WAYS - 1, Math.floor((turned * WAYS) / 2))
}

/** Counts sixty-fourths of a doubling: two lengths of one step or neighbouring ones differ by little. */
function stepOf(length: Nm): number {
  let doublings = 0
  let least = 1
  while (2 * least <= length) {
    least *= 2
    doublings += 1
  }
  return doublings * LENGTHS + Math.floor((length / least - 1) * LENGTHS)
}
