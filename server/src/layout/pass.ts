import type { Nm } from '../units/length.ts'
import { ALIGNED, clashes, offPhase, repeatsPhase } from './clash.ts'
import { type Blank, blanksOf, type Jointing, jointingsFrom } from './jointing.ts'
import type { PlankRules } from './problem.ts'
import { markOf, startsBeside, startsFromRests, wrapped } from './starts.ts'
import {
  type Cut,
  cutFrom,
  cutNew,
  endCourse,
  type Fit,
  firstFit,
  layWhole,
  newStock,
  readyRests,
  type Rest,
  type Stock,
  type StockLimits,
} from './stock.ts'
import type { Place } from './stretches.ts'

/** What every pass over one problem shares. */
export interface Floorboard {
  readonly rules: PlankRules
  readonly places: readonly Place[]
  /** Stretches course by course as they are laid, left to right. */
  readonly laying: readonly (readonly Place[])[]
  readonly limits: StockLimits
  /** Start pieces worth trying in each stretch whatever lies beside it. */
  readonly starts: readonly (readonly Nm[])[]
}

/** A way of laying: how a run begins, and what is weighed against a plank. */
export interface Pattern {
  readonly words: string
  /** The piece that starts a run with nothing laid beside it, as a share of the plank. */
  readonly begin: readonly [number, number]
  /** What a waiting offcut is worth, as a share of its length. */
  readonly keep: number
  /** What is paid, as a share of a plank, for keeping off an H or a constant step. */
  readonly calm: number
}

/** A floor laid once through: how each stretch is jointed, and what each blank is cut from. */
export interface Trial {
  readonly pattern: Pattern
  /** By stretch. */
  readonly jointings: readonly Jointing[]
  readonly blanks: readonly LaidBlank[]
  readonly planks: readonly { readonly length: Nm }[]
}

/** A blank where it lies, and where it is sawn out. */
export interface LaidBlank extends Cut {
  readonly stretch: number
  readonly from: Nm
  readonly to: Nm
}

interface Laying {
  readonly board: Floorboard
  readonly pattern: Pattern
  readonly stock: Stock
  /** By stretch; before a stretch is laid, what an earlier pass did there, or nothing. */
  readonly jointings: (Jointing | undefined)[]
  readonly blanks: LaidBlank[]
  /** Rests that may serve the stretch at hand, the least first. */
  ready: readonly Rest[]
  order: number
  last: boolean
}

/**
 * Lays a floor of one plank length course by course: each stretch takes the start piece with the
 * fewest breaches, and among those the one that costs the least wood. With a `guide` (the jointings
 * of an earlier pass) what is not laid yet counts as the guide has it, so that the breaches never
 * become more. Cost: stretches × starts tried × (neighbours + rests waiting).
 */
export function layOnce(
  board: Floorboard,
  pattern: Pattern,
  guide: readonly Jointing[] | null,
): Trial {
  const laying: Laying = {
    board,
    pattern,
    stock: newStock(board.limits),
    jointings: guide === null ? board.places.map(() => undefined) : [...guide],
    blanks: [],
    ready: [],
    order: 0,
    last: false,
  }
  for (const [index, course] of board.laying.entries()) {
    laying.order = course[0]!.course.order
    laying.last = index === board.laying.length - 1
    for (const place of course) layStretch(laying, place)
    endCourse(laying.stock, laying.order)
  }
  return {
    pattern,
    jointings: laying.jointings as Jointing[],
    blanks: laying.blanks,
    planks: laying.stock.planks,
  }
}

function layStretch(laying: Laying, place: Place): void {
  laying.ready = readyRests(laying.stock, laying.order, narrowestOf(place))
  const jointing = bestJointing(laying, place)
  laying.jointings[place.id] = jointing
  for (const blank of blanksOf(place, jointing)) {
    const { plank, along, across, turned } = cutBlank(laying, blank)
    const { from, to } = blank
    laying.blanks.push({ stretch: place.id, from, to, plank, along, across, turned })
  }
}

function narrowestOf(place: Place): Nm {
  return place.across === null ? 0 : place.across.width
}

function cutBlank(laying: Laying, blank: Blank): Cut {
  const { stock, board, order } = laying
  if (isWholeAcross(blank, board)) return layWhole(stock, plankOf(board), order)
  laying.ready = readyRests(stock, order, blank.across.width)
  const fit = fitFor(laying, blank, -1)
  return fit === null
    ? cutNew(stock, plankOf(board), blank, order)
    : cutFrom(stock, fit, blank, order)
}

function plankOf(board: Floorboard): Nm {
  return board.rules.lengths[0]!.length
}

function isWholeAcross(blank: Blank, board: Floorboard): boolean {
  return blank.to - blank.from === plankOf(board) && blank.across.width === board.rules.width
}

/** The rest that a blank is cut from, or null where a new plank costs less wood. */
function fitFor(laying: Laying, blank: Blank, not: number): Fit | null {
  if (laying.ready.length === 0 || isWholeAcross(blank, laying.board)) return null
  const fit = firstFit(laying.board.limits, laying.ready, blank, not)
  if (fit === null) return null
  return costFrom(laying, fit.rest, blank) <= costNew(laying, blank) ? fit : null
}

/** The jointing with the fewest breaches, then the least cost, then the first that was thought of. */
function bestJointing(laying: Laying, place: Place): Jointing {
  let best: Jointing | null = null
  let fewest = ALIGNED
  let least = 0
  for (const start of startsToTry(laying, place)) {
    for (const jointing of jointingsFrom(place, start, laying.board.rules)) {
      const breaches = breachesHere(laying, place, jointing)
      if (breaches >= ALIGNED || breaches > fewest) continue
      const cost = costOf(laying, place, jointing)
      if (breaches === fewest && cost >= least) continue
      best = jointing
      fewest = breaches
      least = cost
    }
  }
  return best ?? unaligned(laying, place)
}

/** Any jointing that aligns with no neighbour: there are finitely many joints to keep off. */
function unaligned(laying: Laying, place: Place): Jointing {
  const { rules } = laying.board
  const plank = rules.lengths[0]!.length
  const mark = markOf(plank)
  for (let start = mark; ; start += mark) {
    const [jointing] = jointingsFrom(place, wrapped(start, plank, place.length), rules)
    if (breachesHere(laying, place, jointing!) < ALIGNED) return jointing!
    // Past a whole plank the marks are walked again one nanometre on.
    if (start + mark > plank) start -= plank - 1
  }
}

/** The start pieces worth trying, each once. A run with nothing beside it begins as the pattern says. */
function startsToTry(laying: Laying, place: Place): readonly Nm[] {
  const { board, jointings, pattern } = laying
  const plank = board.rules.lengths[0]!.length
  const guided = jointings[place.id]
  const starts = guided === undefined ? [] : [guided.start]
  const beside: Nm[] = []
  for (const { other } of place.touches) {
    const neighbour = jointings[other]
    if (neighbour !== undefined && neighbour.joints.length > 0)
      beside.push(...startsBeside(place, neighbour, board.rules))
  }
  if (place.length <= plank && place.posts.length === 0) starts.push(place.length)
  else if (beside.length === 0 && guided === undefined) {
    const begin = wrapped(beginOf(pattern, plank), plank, place.length)
    if (jointingsFrom(place, begin, board.rules)[0]!.breaches === 0) return [begin]
    starts.push(begin)
  }
  starts.push(...startsFromRests(place, laying.ready, board.limits.mayTurn), ...board.starts[place.id]!, ...beside)
  return onceEach(starts, plank, place.length)
}

/** Wrapped into the plank, without repeats: few enough that looking through them beats a set. */
function onceEach(starts: readonly Nm[], plank: Nm, stretch: Nm): readonly Nm[] {
  const once: Nm[] = []
  for (const start of starts) {
    const inside = wrapped(start, plank, stretch)
    if (!once.includes(inside)) once.push(inside)
  }
  return once
}

function beginOf(pattern: Pattern, plank: Nm): Nm {
  const mark = markOf(plank)
  return Math.floor((plank * pattern.begin[0]) / pattern.begin[1] / mark) * mark
}

function breachesHere(laying: Laying, place: Place, jointing: Jointing): number {
  let count = jointing.breaches
  for (const touch of place.touches) {
    const beside = laying.jointings[touch.other]
    if (beside !== undefined) count += clashes(jointing, beside, touch, laying.board.rules)
  }
  return count
}

/** Wood that the stretch costs, in nm of plank, and what its looks cost by this pattern's measure. */
function costOf(laying: Laying, place: Place, jointing: Jointing): number {
  const plank = laying.board.rules.lengths[0]!.length
  const looks = looksOf(laying, place, jointing, plank)
  return woodOf(laying, place, jointing) + looks * plank
}

function woodOf(laying: Laying, place: Place, jointing: Jointing): number {
  const { rules } = laying.board
  if (place.across === null || jointing.parted.length > 0) {
    return blanksOf(place, jointing).reduce((sum, blank) => sum + woodFor(laying, blank), 0)
  }
  const pieces = jointing.joints.length + 1
  const first = endBlank(place, jointing, 'first')
  const fit = fitFor(laying, first, -1)
  const cost = fit === null ? costNew(laying, first) : costFrom(laying, fit.rest, first)
  if (pieces === 1) return cost
  const last = endBlank(place, jointing, 'last')
  const between = ((pieces - 2) * plankOf(laying.board) * place.across.width) / rules.width
  return cost + between + woodFor(laying, last, fit?.rest.plank)
}

function endBlank(place: Place, jointing: Jointing, which: 'first' | 'last'): Blank {
  const first = which === 'first'
  return {
    from: first ? place.from : place.to - jointing.end,
    to: first ? place.from + jointing.start : place.to,
    across: place.across!,
    left: !first,
    right: first && jointing.joints.length > 0,
    cutLeft: false,
    cutRight: false,
  }
}

/** Wood that a blank costs: of the rest it would be cut from, or of a new plank. */
function woodFor(laying: Laying, blank: Blank, not = -1): number {
  const fit = fitFor(laying, blank, not)
  return fit === null ? costNew(laying, blank) : costFrom(laying, fit.rest, blank)
}

function costNew(laying: Laying, blank: Blank): number {
  const { rules, limits } = laying.board
  const plank = rules.lengths[0]!.length
  const length = blank.to - blank.from
  const strip = rules.width - blank.across.width - limits.kerfAlong
  const beside = strip >= limits.narrowest ? worth(laying, length, strip) : 0
  return plank - worth(laying, plank - length - limits.between, rules.width) - beside
}

function costFrom(laying: Laying, rest: Rest, blank: Blank): number {
  const after = rest.length - (blank.to - blank.from) - laying.board.limits.between
  const kept = rest.left && rest.right ? worth(laying, after, rest.width) : 0
  return worth(laying, rest.length, rest.width) - kept
}

/** What a rest is worth by the pattern's measure: nothing once no course is left for it. */
function worth(laying: Laying, length: Nm, width: Nm): number {
  const { rules, limits } = laying.board
  if (laying.last || length < limits.shortest) return 0
  return (laying.pattern.keep * length * width) / rules.width
}

/** What the stretch's looks cost, in planks: repeats with the courses before, pieces hard to cut. */
function looksOf(laying: Laying, place: Place, jointing: Jointing, plank: Nm): number {
  const { pattern, jointings, board } = laying
  const { rules } = board
  let looks = jointing.slivers * 0.5 + jointing.hardCuts * 0.01
  for (const { other } of place.touches) {
    const beside = jointings[other]
    if (beside === undefined || beside.phase < 0 || jointing.phase < 0) continue
    if (offPhase(jointing.phase - beside.phase, plank) < rules.stagger + rules.toSpare) looks += 0.02
  }
  if (pattern.calm === 0) return looks
  for (const { between, other } of place.beyond) {
    const middle = jointings[between]
    const far = jointings[other]
    if (middle !== undefined && far !== undefined && repeatsPhase(jointing, middle, far, plank))
      looks += pattern.calm
  }
  return looks
}
