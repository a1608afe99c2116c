import type { Course } from './courses.ts'
import type { Product } from './job.ts'
import { type Joint, type Laying, longAlong } from './laying.ts'
import type { Nm } from './lengths.ts'
import { narrowest } from './narrowest.ts'
import type { PublishedFloor } from './published.ts'
import {
  ceiling,
  compare,
  floor,
  half,
  minus,
  plus,
  type Ratio,
  ratio,
  same,
  size,
} from './ratio.ts'
import { heightAt, larger, type Region, smaller } from './region.ts'

/** A soft rule that the layout breaks: what was found, and the pieces that it is about. */
export interface Breach {
  readonly rule: string
  readonly value: Nm
  readonly limit: Nm
  /** Null where it is the first vertex of a piece. */
  readonly at: readonly [Nm, Nm] | null
  readonly pieces: readonly Region[]
  readonly direction: '' | 'along' | 'across'
}

type Zones = PublishedFloor['doorways']

export function breachesOf(
  courses: readonly Course[],
  laying: Laying,
  product: Product,
  zones: Zones,
): readonly Breach[] {
  return [
    ...staggers(courses, laying.joints, product.stagger),
    ...shortEnds(laying, product.shortestEnd),
    ...narrowRips(laying, product.narrowestRip),
    ...doorwayJoints(laying.joints, zones),
  ]
}

const middleOf = ({ at, low, high }: Joint): readonly [Nm, Nm] => [
  floor(at),
  floor(half(plus(low, high))),
]

/** Pairs of joints on one seam, strictly inside one interval where the two courses touch. */
function staggers(
  courses: readonly Course[],
  joints: readonly Joint[],
  limit: Nm,
): readonly Breach[] {
  return courses.slice(1).flatMap((upper, i) => {
    const lower = courses[i]
    if (lower === undefined) return []
    const seam = upper.low
    const touching = sharedAt(lower, upper, seam)
    const below = joints.filter(({ course, high }) => course === lower.course && same(high, seam))
    const above = joints.filter(({ course, low }) => course === upper.course && same(low, seam))
    return below.flatMap((one) =>
      above.flatMap((other): Breach[] => {
        const apart = size(minus(one.at, other.at))
        const isInside = touching.some(
          ({ from, to }) => inside(one.at, from, to) && inside(other.at, from, to),
        )
        if (!isInside || compare(apart, ratio(limit)) >= 0) return []
        const pieces = [one.left, other.left]
        return [
          { rule: 'stagger', value: floor(apart), limit, at: middleOf(one), pieces, direction: '' },
        ]
      }),
    )
  })
}

const inside = (at: Ratio, from: Ratio, to: Ratio): boolean =>
  compare(from, at) < 0 && compare(at, to) < 0

interface Interval {
  readonly from: Ratio
  readonly to: Ratio
}

/** The greatest intervals of a seam with floor on both sides. */
function sharedAt(lower: Course, upper: Course, seam: Ratio): readonly Interval[] {
  const below = reaching(lower, seam, 'high')
  const above = reaching(upper, seam, 'low')
  return joinedUp(
    below.flatMap((one) =>
      above.flatMap((other) => {
        const [from, to] = [larger(one.from, other.from), smaller(one.to, other.to)]
        return compare(from, to) < 0 ? [{ from, to }] : []
      }),
    ),
  )
}

function reaching({ stretches }: Course, seam: Ratio, side: 'low' | 'high'): readonly Interval[] {
  return stretches.flat().filter((slice) => {
    const line = slice[side]
    return same(heightAt(line, slice.from), seam) && same(heightAt(line, slice.to), seam)
  })
}

function joinedUp(intervals: readonly Interval[]): readonly Interval[] {
  const done: Interval[] = []
  for (const { from, to } of intervals.toSorted((a, b) => compare(a.from, b.from))) {
    const last = done.at(-1)
    if (last && compare(last.to, from) >= 0)
      done[done.length - 1] = { from: last.from, to: larger(last.to, to) }
    else done.push({ from, to })
  }
  return done
}

/** Pieces that are no whole plank long and shorter along u than the limit. */
function shortEnds({ blanks }: Laying, limit: Nm): readonly Breach[] {
  return blanks.flatMap(({ pieces, plankLength }) =>
    pieces
      .filter((piece) => !same(longAlong(piece), ratio(plankLength)))
      .filter((piece) => compare(longAlong(piece), ratio(limit)) < 0)
      .map((piece): Breach => {
        const value = floor(longAlong(piece))
        return { rule: 'shortest end', value, limit, at: null, pieces: [piece], direction: '' }
      }),
  )
}

function narrowRips({ blanks }: Laying, limit: Nm): readonly Breach[] {
  return blanks.flatMap(({ pieces }) =>
    pieces.flatMap((piece): Breach[] => {
      const width = narrowest(piece, ratio(limit))
      if (width === null || compare(width, ratio(limit)) >= 0) return []
      return [
        {
          rule: 'narrowest rip',
          value: floor(width),
          limit,
          at: null,
          pieces: [piece],
          direction: '',
        },
      ]
    }),
  )
}

function doorwayJoints(joints: readonly Joint[], zones: Zones): readonly Breach[] {
  return joints.flatMap((joint) =>
    zones.flatMap((zone): Breach[] => {
      const [from, to, low, high] = [zone.from, zone.to, zone.low, zone.high].map((edge) =>
        ratio(BigInt(edge)),
      )
      if (!from || !to || !low || !high || !inside(joint.at, from, to)) return []
      if (compare(larger(joint.low, low), smaller(joint.high, high)) >= 0) return []
      const value = floor(smaller(minus(joint.at, from), minus(to, joint.at)))
      return [
        {
          rule: 'doorway joint',
          value,
          limit: 0n,
          at: middleOf(joint),
          pieces: [joint.left],
          direction: '',
        },
      ]
    }),
  )
}

/** The longest line across the slices of a region: of equal ones that of lowest place. */
export function longestAcross(
  region: Region,
): { readonly value: Nm; readonly at: Ratio; readonly low: Ratio } | null {
  const lines = region.flatMap(({ from, to, low, high }) =>
    [from, to].map((at) => ({
      at,
      low: heightAt(low, at),
      long: minus(heightAt(high, at), heightAt(low, at)),
    })),
  )
  const longest = lines.toSorted(
    (a, b) => compare(b.long, a.long) || compare(a.at, b.at) || compare(a.low, b.low),
  )[0]
  return longest === undefined
    ? null
    : { value: ceiling(longest.long), at: longest.at, low: longest.low }
}
