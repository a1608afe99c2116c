import type { Nm } from '../units/length.ts'
import type { Blank } from './jointing.ts'
import type { PlankRules } from './problem.ts'

/**
 * The planks opened so far and what is left of them. A rest is a rectangle in its plank's own frame
 * (0 is its factory left end and its low edge); it holds those ends and edges of the plank that it
 * reaches. A blank is sawn across first, then ripped.
 */
export interface Stock {
  readonly limits: StockLimits
  readonly planks: { readonly length: Nm; lastOrder: number }[]
  /** Left by the courses before the one at hand, the least first. */
  waiting: Rest[]
  /** Left by the course laid last, for those after it: none of them is taken before it is done. */
  fresh: Rest[]
}

/** Of more rests than this the least are forgotten: nobody keeps so many strips in mind. */
const MOST_WAITING = 200

export interface StockLimits {
  readonly width: Nm
  readonly kerfAlong: Nm
  /** Lost between two pieces of one plank: the cut, and what is kept to spare. */
  readonly between: Nm
  readonly mayTurn: boolean
  readonly pile: { readonly pieces: number; readonly courses: number }
  /** A rest smaller than this serves nowhere on this floor. */
  readonly shortest: Nm
  readonly narrowest: Nm
  /** Shortest one-piece stretch: what a rest without factory ends can still fill, or null. */
  readonly shortestLoose: Nm | null
}

export interface Rest {
  readonly plank: number
  readonly along: readonly [Nm, Nm]
  readonly across: readonly [Nm, Nm]
  readonly length: Nm
  readonly width: Nm
  /** Factory ends and edges that it still holds. */
  readonly left: boolean
  readonly right: boolean
  readonly low: boolean
  readonly high: boolean
  /** Order of the course since which it waits as a crosscut rest; 0 for a rip's rest, which may wait. */
  since: number
}

/** What must come off a factory end that is to be glued: anything, for then it is a cut end. */
const CUT_OFF: Nm = 1

/** Where a blank is sawn out. */
export interface Cut {
  readonly plank: number
  readonly along: readonly [Nm, Nm]
  readonly across: readonly [Nm, Nm]
  readonly turned: boolean
}

/** Which rest a blank is best cut from: the least one that fits. */
export interface Fit {
  readonly rest: Rest
  readonly turned: boolean
}

export function newStock(limits: StockLimits): Stock {
  return { limits, planks: [], waiting: [], fresh: [] }
}

/** What the rules lose between two pieces of one plank, and whether a rest may be turned. */
export function stockLimits(
  rules: PlankRules,
  least: Pick<StockLimits, 'shortest' | 'narrowest' | 'shortestLoose'>,
): StockLimits {
  return {
    width: rules.width,
    kerfAlong: rules.kerfAlong,
    between: rules.kerfAcross + rules.toSpare,
    mayTurn: rules.laid === 'either way',
    pile: rules.pile,
    ...least,
  }
}

/** The rests that may serve the course laid at `order` and are wide enough, the least first. */
export function readyRests(stock: Stock, order: number, width: Nm): readonly Rest[] {
  gather(stock, order)
  return stock.waiting.filter((rest) => rest.width >= width && isReady(stock, rest, order))
}

/** Puts what earlier courses left in order, once for each course. */
function gather(stock: Stock, order: number): void {
  const [first] = stock.fresh
  if (first === undefined || stock.planks[first.plank]!.lastOrder >= order) return
  stock.waiting = [...stock.waiting, ...stock.fresh].sort(
    (a, b) => sizeOf(a) - sizeOf(b) || a.plank - b.plank,
  )
  stock.fresh = []
}

/** Cut before this course, and not gone from the pile. */
function isReady(stock: Stock, rest: Rest, order: number): boolean {
  if (stock.planks[rest.plank]!.lastOrder >= order) return false
  return rest.since === 0 || order - rest.since <= stock.limits.pile.courses
}

/** The first of `rests` that a blank can be cut from, or null; none of the plank numbered `not`. */
export function firstFit(
  limits: StockLimits,
  rests: readonly Rest[],
  blank: Blank,
  not: number,
): Fit | null {
  for (const rest of rests) {
    if (rest.plank === not) continue
    if (fits(blank, rest)) return { rest, turned: false }
    if (limits.mayTurn && fits(blank, turnedHalf(rest))) return { rest, turned: true }
  }
  return null
}

/** Cuts a blank from a rest, or from a new plank, and keeps what is left of it. */
export function cutFrom(stock: Stock, fit: Fit, blank: Blank, order: number): Cut {
  const { rest, turned } = fit
  stock.waiting = stock.waiting.filter((each) => each !== rest)
  const cut = place(blank, rest, turned)
  keepRests(stock, rest, cut, order)
  stock.planks[rest.plank]!.lastOrder = order
  return cut
}

/** Opens a plank `length` long and cuts a blank from it. */
export function cutNew(stock: Stock, length: Nm, blank: Blank, order: number): Cut {
  const plank = stock.planks.length
  stock.planks.push({ length, lastOrder: order })
  const rest = restOf(stock, plank, [0, length], [0, stock.limits.width], 0)
  return cutFrom(stock, { rest, turned: false }, blank, order)
}

/** Opens a plank that is laid whole. */
export function layWhole(stock: Stock, length: Nm, order: number): Cut {
  const plank = stock.planks.length
  stock.planks.push({ length, lastOrder: order })
  return { plank, along: [0, length], across: [0, stock.limits.width], turned: false }
}

function restOf(
  stock: Stock,
  plank: number,
  along: readonly [Nm, Nm],
  across: readonly [Nm, Nm],
  since: number,
): Rest {
  return {
    plank,
    along,
    across,
    length: along[1] - along[0],
    width: across[1] - across[0],
    left: along[0] === 0,
    right: along[1] === stock.planks[plank]!.length,
    low: across[0] === 0,
    high: across[1] === stock.limits.width,
    since,
  }
}

/** When a course is done: rests that have waited too long go, then the least beyond the pile. */
export function endCourse(stock: Stock, order: number): void {
  const { pile } = stock.limits
  gather(stock, order + 1)
  const kept = stock.waiting.filter(
    (rest) => rest.since === 0 || order + 1 - rest.since <= pile.courses,
  )
  const piled = kept.filter((rest) => rest.since > 0)
  const tooMany = new Set(piled.slice(0, Math.max(0, piled.length - pile.pieces)))
  stock.waiting = kept.filter((rest) => !tooMany.has(rest)).slice(-MOST_WAITING)
}

function sizeOf(rest: Rest): number {
  return rest.length * rest.width
}

/** What a piece's directions see of a rest that is turned by half a turn. */
interface View {
  readonly length: Nm
  readonly width: Nm
  readonly left: boolean
  readonly right: boolean
  readonly low: boolean
  readonly high: boolean
}

function turnedHalf(rest: Rest): View {
  const { length, width } = rest
  return { length, width, left: rest.right, right: rest.left, low: rest.high, high: rest.low }
}

function fits(blank: Blank, view: View): boolean {
  const { across } = blank
  if (blank.left && !view.left) return false
  if (blank.right && !view.right) return false
  if (across.low && !view.low) return false
  if (across.high && !view.high) return false
  if (view.width < across.width) return false
  const length = blank.to - blank.from
  if (blank.left && blank.right) return view.length === length
  return view.length >= length + trimmed(blank, view)
}

/** What must come off a rest's factory ends where the blank is glued at a post. */
function trimmed(blank: Blank, view: View): Nm {
  return (blank.cutLeft && view.left ? CUT_OFF : 0) + (blank.cutRight && view.right ? CUT_OFF : 0)
}

function place(blank: Blank, rest: Rest, turned: boolean): Cut {
  const view = turned ? turnedHalf(rest) : rest
  const along = placedAlong(blank, view)
  const across = placedAcross(blank, view)
  return {
    plank: rest.plank,
    along: shifted(rest.along, along, turned),
    across: shifted(rest.across, across, turned),
    turned,
  }
}

/** A span seen within a rest, put into the plank's own frame. */
function shifted(
  rest: readonly [Nm, Nm],
  span: readonly [Nm, Nm],
  turned: boolean,
): readonly [Nm, Nm] {
  return turned ? [rest[1] - span[1], rest[1] - span[0]] : [rest[0] + span[0], rest[0] + span[1]]
}

/** A blank that may lie anywhere leaves the rest an end that a later piece can use. */
function placedAlong(blank: Blank, view: View): readonly [Nm, Nm] {
  const length = blank.to - blank.from
  const atHigh = blank.right || (!blank.left && view.left && !view.right && !blank.cutRight)
  if (atHigh) return [view.length - length, view.length]
  const low = blank.cutLeft && view.left ? CUT_OFF : 0
  return [low, low + length]
}

function placedAcross(blank: Blank, view: View): readonly [Nm, Nm] {
  const { width, low, high } = blank.across
  const atHigh = high || (!low && view.low && !view.high)
  return atHigh ? [view.width - width, view.width] : [0, width]
}

/** Keeps what is left beside the blank, and what is left above or below it, where it can still serve. */
function keepRests(stock: Stock, rest: Rest, cut: Cut, order: number): void {
  const { between, kerfAlong } = stock.limits
  for (const other of stock.waiting) {
    if (other.plank === rest.plank && !areApart(other.across, cut.across, kerfAlong))
      other.since = order
  }
  const left: readonly [Nm, Nm] = [rest.along[0], cut.along[0] - between]
  const right: readonly [Nm, Nm] = [cut.along[1] + between, rest.along[1]]
  const below: readonly [Nm, Nm] = [rest.across[0], cut.across[0] - kerfAlong]
  const above: readonly [Nm, Nm] = [cut.across[1] + kerfAlong, rest.across[1]]
  keep(stock, rest.plank, left, rest.across, order)
  keep(stock, rest.plank, right, rest.across, order)
  keep(stock, rest.plank, cut.along, below, rest.since)
  keep(stock, rest.plank, cut.along, above, rest.since)
}

function areApart(a: readonly [Nm, Nm], b: readonly [Nm, Nm], kerf: Nm): boolean {
  return a[1] + kerf <= b[0] || b[1] + kerf <= a[0]
}

function keep(
  stock: Stock,
  plank: number,
  along: readonly [Nm, Nm],
  across: readonly [Nm, Nm],
  since: number,
): void {
  const { shortest, narrowest, shortestLoose } = stock.limits
  if (across[1] - across[0] < narrowest) return
  const hasEnd = along[0] === 0 || along[1] === stock.planks[plank]!.length
  const least = hasEnd ? shortest : shortestLoose
  if (least !== null && along[1] - along[0] >= least)
    stock.fresh.push(restOf(stock, plank, along, across, since))
}
