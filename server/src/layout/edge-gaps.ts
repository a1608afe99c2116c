import type { EdgeKind } from '../job/job.ts'
import { NM_PER_INCH, type Nm } from '../units/length.ts'

/**
 * How far the floor stays off an edge of each kind, unless the text gives that edge a gap of its own.
 * `product` stands for the gap that the product asks for at a wall.
 *
 * Gap belongs to the edge: base, drywall, a tub, a slider's track, a hearth and a toe-kick take the
 * product's; a flush nosing none, for the floor butts against it. Under a transition half its track and
 * a gap on each side, 3/4 in of floor in all, are missing: 3/8 in on this side. Carpet is met under
 * the same piece. At an open edge the floor runs to the edge. Source: common practice.
 */
const GAPS: Readonly<Record<EdgeKind, Nm | 'product'>> = {
  'base kept': 'product',
  'base off and back': 'product',
  'base new': 'product',
  'no base': 'product',
  tub: 'product',
  hearth: 'product',
  slider: 'product',
  cabinet: 'product',
  nosing: 0,
  'open edge': 0,
  carpet: (NM_PER_INCH * 3) / 8,
  jamb: 'product',
  transition: (NM_PER_INCH * 3) / 8,
  obstacle: 'product',
}

/** The gap at an edge: its own if the text gives one, else what its kind asks for. */
export function gapAt(kind: EdgeKind, own: Nm | null, product: Nm): Nm {
  if (own !== null) return own
  const gap = GAPS[kind]
  return gap === 'product' ? product : gap
}
