import type { Nm } from './lengths.ts'
import { compare, floor, half, minus, over, plus, type Ratio, ratio, same, size } from './ratio.ts'
import {
  between,
  extentOf,
  goesOnAs,
  hangingTogether,
  heightAt,
  type Line,
  type Region,
  type Slice,
} from './region.ts'

/** A course: the strip between two seams, numbered from 1 upwards. */
export interface Course {
  readonly course: number
  readonly low: Ratio
  readonly high: Ratio
  /** The parts of it that hang together, from low u on. */
  readonly stretches: readonly Region[]
}

/** Every course that the covered area reaches into; `seam` is one seam's v. */
export function coursesOf(covered: Region, seam: Nm, width: Nm): readonly Course[] {
  if (covered.length === 0) return []
  const [least, most] = extentOf(covered).v
  const lowest = seam + floor(over(minus(least, ratio(seam)), ratio(width))) * width
  const tall = covered.map((slice) => ({ slice, v: extentOf([slice]).v }))
  const courses: Course[] = []
  for (let low = lowest; compare(ratio(low), most) < 0; low += width) {
    const [seamBelow, seamAbove] = [ratio(low), ratio(low + width)]
    const reaching = tall.filter(
      ({ v }) => compare(v[0], seamAbove) < 0 && compare(v[1], seamBelow) > 0,
    )
    const strip = between(
      reaching.map(({ slice }) => slice),
      seamBelow,
      seamAbove,
    )
    const stretches = hangingTogether(strip).toSorted((a, b) =>
      compare(extentOf(a).u[0], extentOf(b).u[0]),
    )
    courses.push({
      course: courses.length + 1,
      low: ratio(low),
      high: ratio(low + width),
      stretches,
    })
  }
  return courses
}

const SNAP = 1000n

/** The covered area with each corner within 1000 nm of a seam moved onto it. */
export function ontoSeams(covered: Region, seam: Nm, width: Nm): Region {
  const moved = (y: Ratio): Ratio => {
    const courses = floor(over(plus(minus(y, ratio(seam)), half(ratio(width))), ratio(width)))
    const nearest = ratio(seam + courses * width)
    return compare(size(minus(y, nearest)), ratio(SNAP)) <= 0 ? nearest : y
  }
  const wide = covered.filter(isMoreThanHair)
  return covered.map((slice) => {
    const movedLine = (side: 'low' | 'high'): Line => {
      const line = slice[side]
      const [from, to] = cornersOf(wide, slice, side)
      const [a, b] = [from, to].map((x) => ({ x, y: heightAt(line, x) }))
      if (!a || !b || [a, b].every(({ y }) => same(moved(y), y))) return line
      return { a: { ...a, y: moved(a.y) }, b: { ...b, y: moved(b.y) } }
    }
    return { ...slice, low: movedLine('low'), high: movedLine('high') }
  })
}

const isMoreThanHair = ({ from, to }: Slice): boolean => compare(minus(to, from), ratio(1n)) > 0

/** From corner to corner: as far as a slice's side goes on straight through other slices. */
function cornersOf(wide: Region, slice: Slice, side: 'low' | 'high'): readonly [Ratio, Ratio] {
  const line = slice[side]
  const goesOn = (other: Slice) => other !== slice && goesOnAs(other[side], line)
  let { from, to } = slice
  for (let next: Slice | undefined = slice; next !== undefined; to = next?.to ?? to)
    next = wide.find((other) => same(other.from, to) && goesOn(other))
  for (let next: Slice | undefined = slice; next !== undefined; from = next?.from ?? from)
    next = wide.find((other) => same(other.to, from) && goesOn(other))
  return [from, to]
}

/** Whether a region holds a place that lies on none of its lines. */
export function holds(region: Region, u: Ratio, v: Ratio): boolean {
  return region.some(
    ({ from, to, low, high }) =>
      compare(from, u) <= 0 &&
      compare(u, to) <= 0 &&
      compare(heightAt(low, u), v) < 0 &&
      compare(v, heightAt(high, u)) < 0,
  )
}
