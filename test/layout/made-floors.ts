import type { Band, Contact, PlankRules, Problem } from '../../server/src/layout/problem.ts'
import { NM_PER_INCH } from '../../server/src/units/length.ts'

/** Whole nanometres of inches and binary fractions of them. */
export function inches(value: number): number {
  return Math.round(value * NM_PER_INCH)
}

/** A 7 × 48 in plank with common rules (common practice, no source), changed as a test wants. */
export function plankRules(changes: Partial<PlankRules> = {}): PlankRules {
  return {
    width: inches(7),
    lengths: [{ length: inches(48), perBox: 10 }],
    stagger: inches(8),
    shortestEnd: inches(10),
    narrowestRip: inches(2),
    kerfAlong: inches(1 / 8),
    kerfAcross: inches(1 / 8),
    toSpare: inches(1 / 4),
    laid: 'left to right',
    longestRun: { along: null, across: null },
    pile: { pieces: 8, courses: 6 },
    spoilPlanks: 2,
    spoilPercent: null,
    sparePlanks: 0,
    spareBoxes: 0,
    ...changes,
  }
}

/** An upright rectangle of floor in the frame of the run, in inches: [u from, v from, u to, v to]. */
export type Box = readonly [number, number, number, number]

interface OpenStretch {
  readonly id: number
  readonly course: number
  readonly from: number
  to: number
  readonly bands: Band[]
  readonly posts: []
  readonly doorways: []
}

/** The problem of a floor made of boxes that meet, with a seam at `seam`; laid from high v down. */
export function floorOf(boxes: readonly Box[], rules: PlankRules, seam = 0): Problem {
  const nm = boxes.map((box) => box.map(inches) as [number, number, number, number])
  const bottom = Math.min(...nm.map((box) => box[1]))
  const top = Math.max(...nm.map((box) => box[3]))
  const first = inches(seam) - Math.ceil((inches(seam) - bottom) / rules.width) * rules.width
  const count = Math.ceil((top - first) / rules.width)
  const courses = Array.from({ length: count }, (_, index) => ({
    course: index + 1,
    low: first + index * rules.width,
    high: first + (index + 1) * rules.width,
    order: count - index,
  }))
  const stretches: OpenStretch[] = []
  for (const { course, low, high } of courses) stretches.push(...cut(nm, course, low, high))
  const numbered = stretches.map((stretch, id) => ({ ...stretch, id, area: areaOf(stretch.bands) }))
  return { courses, stretches: numbered, contacts: contactsOf(numbered, courses), rules }
}

function areaOf(bands: readonly Band[]): number {
  return bands.reduce((sum, band) => sum + (band.to - band.from) * (band.high - band.low), 0)
}

function cut(
  boxes: readonly (readonly [number, number, number, number])[],
  course: number,
  low: number,
  high: number,
): OpenStretch[] {
  const found: OpenStretch[] = []
  const edges = [...new Set(boxes.flatMap((box) => [box[0], box[2]]))].sort((a, b) => a - b)
  let open: OpenStretch | null = null
  for (const [index, to] of edges.slice(1).entries()) {
    const from = edges[index]!
    const here = boxes.filter(
      (box) => box[0] <= from && box[2] >= to && box[1] < high && box[3] > low,
    )
    if (here.length === 0) {
      open = null
      continue
    }
    const band = {
      from,
      to,
      low: Math.max(low, Math.min(...here.map((box) => box[1]))),
      high: Math.min(high, Math.max(...here.map((box) => box[3]))),
    }
    if (open === null) {
      open = { id: 0, course, from, to, bands: [], posts: [], doorways: [] }
      found.push(open)
    }
    open.bands.push(band)
    open.to = to
  }
  return found
}

function contactsOf(
  stretches: readonly OpenStretch[],
  courses: readonly { readonly high: number }[],
): Contact[] {
  const contacts: { below: number; above: number; from: number; to: number }[] = []
  for (const below of stretches) {
    const seam = courses[below.course - 1]!.high
    for (const above of stretches.filter((one) => one.course === below.course + 1)) {
      for (const a of below.bands.filter((band) => band.high === seam)) {
        for (const b of above.bands.filter((band) => band.low === seam)) {
          const from = Math.max(a.from, b.from)
          const to = Math.min(a.to, b.to)
          if (from >= to) continue
          const last = contacts.at(-1)
          if (last?.below === below.id && last.above === above.id && last.to === from) last.to = to
          else contacts.push({ below: below.id, above: above.id, from, to })
        }
      }
    }
  }
  return contacts
}

/** The same problem with posts and doorways put into the stretches they lie in (in inches along). */
export function withThings(
  problem: Problem,
  things: readonly {
    readonly course: number
    readonly kind: 'posts' | 'doorways'
    readonly from: number
    readonly to: number
  }[],
): Problem {
  return {
    ...problem,
    stretches: problem.stretches.map((stretch) => {
      const inside = (kind: 'posts' | 'doorways') =>
        things
          .filter((thing) => thing.kind === kind && thing.course === stretch.course)
          .map((thing) => ({ from: inches(thing.from), to: inches(thing.to) }))
          .filter((thing) => thing.from >= stretch.from && thing.to <= stretch.to)
      return { ...stretch, posts: inside('posts'), doorways: inside('doorways') }
    }),
  }
}
