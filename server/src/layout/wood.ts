import type { Nm } from '../units/length.ts'
import { type Blank, blanksOf, isWhole, type Jointing } from './jointing.ts'
import type { Laying } from './laying.ts'
import {
  type Cut,
  cutFrom,
  cutNew,
  type Fit,
  firstFit,
  layWhole,
  type Rest,
  readyRests,
} from './stock.ts'
import type { Place } from './stretches.ts'

/** Cuts a blank from the waiting rest that wastes least, or from a new plank where that costs less. */
export function cutBlank(laying: Laying, blank: Blank): Cut {
  const { stock, field, order, used } = laying
  laying.ready = readyRests(stock, order, blank.across.width)
  const fit = fitFor(laying, blank, -1)
  if (fit !== null) return cutFrom(stock, fit, blank, order)
  const kind = cheapestNew(laying, blank)
  const { length } = field.rules.lengths[kind]!
  used[kind]! += 1
  laying.usedUp += length
  const whole = blank.to - blank.from === length && blank.across.width === field.rules.width
  return whole ? layWhole(stock, length, order) : cutNew(stock, length, blank, order)
}

/** The rest that a blank is cut from, or null where a new plank costs less wood. */
function fitFor(laying: Laying, blank: Blank, not: number): Fit | null {
  const { limits, rules } = laying.field
  if (laying.ready.length === 0) return null
  if (blank.across.width === rules.width && isWhole(blank.to - blank.from, rules)) return null
  const fit = firstFit(limits, laying.ready, blank, not)
  if (fit === null) return null
  return costFrom(laying, fit.rest, blank) <= costNew(laying, blank) ? fit : null
}

/** Wood that a stretch costs, in nm of plank: its end pieces by what they leave, whole planks whole. */
export function woodOf(laying: Laying, place: Place, jointing: Jointing): number {
  const { rules } = laying.field
  if (place.across === null || jointing.parted.length > 0) {
    return blanksOf(place, jointing).reduce((sum, blank) => sum + woodFor(laying, blank), 0)
  }
  const pieces = jointing.joints.length + 1
  const first = endBlank(place, jointing, 'first')
  const fit = fitFor(laying, first, -1)
  const cost = fit === null ? costNew(laying, first) : costFrom(laying, fit.rest, first)
  if (pieces === 1) return cost
  const last = endBlank(place, jointing, 'last')
  const plank = rules.lengths[0]!.length
  const between = ((pieces - 2) * plank * place.across.width) / rules.width
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
export function woodFor(laying: Laying, blank: Blank, not = -1): number {
  const fit = fitFor(laying, blank, not)
  return fit === null ? costNew(laying, blank) : costFrom(laying, fit.rest, blank)
}

function costNew(laying: Laying, blank: Blank): number {
  return costOfKind(laying, blank, cheapestNew(laying, blank))
}

/** The length of plank (its place in the rules) that a blank is cut from at the least cost. */
function cheapestNew(laying: Laying, blank: Blank): number {
  const { lengths } = laying.field.rules
  if (lengths.length === 1) return 0
  const length = blank.to - blank.from
  const exact = lengths.findIndex((each) => each.length === length)
  if (exact >= 0 && !blank.cutLeft && !blank.cutRight) return exact
  let best = -1
  let least = 0
  for (const [kind, each] of lengths.entries()) {
    if (each.length <= length) continue
    const cost = costOfKind(laying, blank, kind)
    if (best >= 0 && cost >= least) continue
    best = kind
    least = cost
  }
  return best
}

function costOfKind(laying: Laying, blank: Blank, kind: number): number {
  const { rules, limits } = laying.field
  const plank = rules.lengths[kind]!.length
  const length = blank.to - blank.from
  const strip = rules.width - blank.across.width - limits.kerfAlong
  const beside = strip >= limits.narrowest ? worth(laying, length, strip) : 0
  const left = worth(laying, plank - length - limits.between, rules.width)
  return priceOf(laying, kind) - left - beside
}

/**
 * What a plank of one length costs: its length, and of random lengths more where that length is used
 * faster than the boxes bring it, less where it lies about: so the last box is opened for all of them.
 */
export function priceOf(laying: Laying, kind: number): number {
  const { lengths } = laying.field.rules
  const { length, perBox } = lengths[kind]!
  if (lengths.length === 1) return length
  const { used, usedUp, inBox } = laying
  const ahead = (used[kind]! + 0.5) / perBox - usedUp / inBox
  return length * Math.max(0.25, 1 + 0.5 * ahead)
}

function costFrom(laying: Laying, rest: Rest, blank: Blank): number {
  const after = rest.length - (blank.to - blank.from) - laying.field.limits.between
  const kept = rest.left && rest.right ? worth(laying, after, rest.width) : 0
  return worth(laying, rest.length, rest.width) - kept
}

/** What a rest is worth by the pattern's measure: nothing once no course is left for it. */
function worth(laying: Laying, length: Nm, width: Nm): number {
  const { rules, limits } = laying.field
  if (laying.last || length < limits.shortest) return 0
  return (laying.pattern.keep * length * width) / rules.width
}
