import type { Sliced } from '../facts/slices.ts'
import { NM_PER_INCH, type Nm } from '../units/length.ts'
import { clashes } from './clash.ts'
import { type Jointing, jointingsFrom } from './jointing.ts'
import type { Field } from './laying.ts'
import { tightStarts, wrapped } from './starts.ts'
import type { Place, Touch } from './stretches.ts'

/** Start pieces are tried this far apart: no crew marks a stagger finer. */
const STEP: Nm = NM_PER_INCH / 4

/** How far from a breach stretches are chosen anew, counted in contacts. */
const REACHES = [2, 6] as const

/** No more stretches than about this are chosen at once. */
const MOST_AT_ONCE = 60

/** Where a loop closes, the stretch is fixed in so many of its choices in turn. */
const MOST_ROOTS = 96

/** Loops closed in one reach that are opened. */
const MOST_LOOPS = 3

/**
 * Pairs of choices that may be looked at. Of 300 random jobs none but one needs a quarter of it; a
 * stagger that no floor can keep would use any number.
 */
const MOST_WORK = 1_000_000

/**
 * The jointings of a floor with fewer breaches, or the same ones where none is found. Around each
 * breach the stretches within reach are chosen anew all at once, the rest staying as it is: along a
 * tree of contacts the fewest breaches are found exactly (dynamic programming over every start piece
 * on a quarter-inch grid, then over those that just fit, which no grid holds). Where contacts close a loop, the stretch at which it closes is fixed in each
 * of its choices in turn, which is exact for the loops through it. Cost for each breach: contacts within reach
 * × start pieces squared, in loops times start pieces, up to `MOST_WORK`. Only for planks of one length.
 * Pauses after each breach.
 */
export function* withFewerBreaches(
  field: Field,
  jointings: readonly Jointing[],
): Sliced<readonly Jointing[]> {
  if (field.rules.lengths.length > 1) return jointings
  const fewer = yield* repaired(field, jointings, startsOnGrid)
  return yield* repaired(field, fewer, startsThatFit)
}

/** Start pieces that a stretch may be given anew, its present one aside. */
type Starts = (place: Place, field: Field) => readonly Nm[]

function* repaired(
  field: Field,
  jointings: readonly Jointing[],
  starts: Starts,
): Sliced<readonly Jointing[]> {
  const repair: Repair = { field, starts, jointings: [...jointings], choices: new Map(), work: 0 }
  for (const reach of REACHES) {
    for (const place of field.places) {
      if (repair.work >= MOST_WORK || !hasAvoidable(repair, place)) continue
      yield* chooseAnew(repair, place, reach)
    }
  }
  return repair.jointings
}

function startsOnGrid(place: Place, { rules, starts }: Field): readonly Nm[] {
  const plank = rules.lengths[0]!.length
  const lengths = [...starts[place.id]!]
  if (place.length > plank || place.posts.length > 0)
    for (let start = STEP; start <= plank; start += STEP) lengths.push(start)
  return lengths
}

function startsThatFit(place: Place, { rules, starts, places }: Field): readonly Nm[] {
  return [...starts[place.id]!, ...tightStarts(place, places, rules)]
}

interface Repair {
  readonly field: Field
  readonly starts: Starts
  readonly jointings: Jointing[]
  readonly choices: Map<number, readonly Jointing[]>
  /** Pairs of choices looked at so far. */
  work: number
}

/** A stretch in the tree: what each of its choices costs together with all that hangs below it. */
interface Node {
  readonly place: Place
  readonly parent: number | null
  readonly choices: readonly Jointing[]
  /** A contact outside the tree joins it to a stretch below it: a loop closes here. */
  readonly closes: boolean
  readonly costs: number[]
  /** For each choice of the parent, this node's best choice. */
  answers: readonly number[]
}

/** Whether a stretch has more breaches than it would have standing alone. */
function hasAvoidable(repair: Repair, place: Place): boolean {
  const breaches = breachesAt(repair, place)
  return breaches > 0 && breaches > fewestAlone(repair, place)
}

function breachesAt(repair: Repair, place: Place): number {
  const { field, jointings } = repair
  const own = jointings[place.id]!
  return place.touches.reduce(
    (sum, touch) => sum + clashes(own, jointings[touch.other]!, touch, field.rules),
    own.breaches,
  )
}

function fewestAlone(repair: Repair, place: Place): number {
  const least = (fewest: number, each: Jointing) => Math.min(fewest, each.breaches)
  return choicesOf(repair, place).reduce(least, repair.jointings[place.id]!.breaches)
}

/** Every way to joint a stretch that begins with one of its start pieces or the present one. */
function choicesOf(repair: Repair, place: Place): readonly Jointing[] {
  const known = repair.choices.get(place.id)
  if (known !== undefined) return known
  const { field } = repair
  const { rules } = field
  const plank = rules.lengths[0]!.length
  const lengths = [repair.jointings[place.id]!.start, ...repair.starts(place, field)]
  const once = new Set(lengths.map((start) => wrapped(start, plank, place.length)))
  const choices = [...once].flatMap((start) => jointingsFrom(place, start, rules))
  repair.choices.set(place.id, choices)
  return choices
}

/**
 * Chooses the stretches within reach of one anew: first along a tree, then, for each stretch at which a
 * loop closes, with that one fixed in each of its choices.
 */
function* chooseAnew(repair: Repair, root: Place, reach: number): Sliced<void> {
  const members = within(repair, root, reach)
  const loops = solve(repair, { root, members, choices: choicesOf(repair, root) })
  for (const place of loops.slice(0, MOST_LOOPS)) {
    const choices = choicesOf(repair, place)
    const stride = Math.ceil(choices.length / MOST_ROOTS)
    for (let i = 0; i < choices.length && repair.work < MOST_WORK; i += stride) {
      if (!hasAvoidable(repair, root)) return
      solve(repair, { root: place, members, choices: [choices[i]!] })
      yield
    }
  }
}

/** What is chosen anew: `members`, as a tree under `root`, which has these choices. */
interface Task {
  readonly root: Place
  readonly members: ReadonlySet<number>
  readonly choices: readonly Jointing[]
}

/** Takes the best choices along the tree where that makes the breaches fewer; gives where loops close. */
function solve(repair: Repair, task: Task): readonly Place[] {
  const before = breachesAround(repair, task.members)
  const were = [...task.members].map((id) => [id, repair.jointings[id]!] as const)
  if (task.choices.length === 1) repair.jointings[task.root.id] = task.choices[0]!
  const nodes = treeFrom(repair, task)
  for (const node of [...nodes].reverse()) {
    if (node.parent !== null) hand(repair, node, nodes[node.parent]!)
  }
  const picked: number[] = []
  for (const [index, node] of nodes.entries()) {
    picked[index] =
      node.parent === null ? leastIndex(node.costs) : node.answers[picked[node.parent]!]!
    repair.jointings[node.place.id] = node.choices[picked[index]!]!
  }
  if (breachesAround(repair, task.members) >= before) {
    for (const [id, jointing] of were) repair.jointings[id] = jointing
  }
  return nodes.filter((node) => node.closes).map((node) => node.place)
}

/** Breaches that can change when these stretches are chosen anew: their own, and with their neighbours. */
function breachesAround({ field, jointings }: Repair, members: ReadonlySet<number>): number {
  let count = 0
  for (const id of members) {
    const own = jointings[id]!
    count += own.breaches
    for (const touch of field.places[id]!.touches) {
      if (members.has(touch.other) && touch.other < id) continue
      count += clashes(own, jointings[touch.other]!, touch, field.rules)
    }
  }
  return count
}

/**
 * The members as a tree: each hung under one that it touches, going on from the latest as far as that
 * goes, so that a contact outside the tree leads to a stretch further up. Costs but for the contacts of
 * the tree.
 */
function treeFrom(repair: Repair, { root, members, choices }: Task): readonly Node[] {
  const found: Hung[] = []
  hang(repair.field.places, { place: root, parent: null }, new Set(members), found)
  const at = new Map(found.map(({ place }, index) => [place.id, index]))
  return found.map(({ place, parent }, index) => {
    const own = place === root ? choices : choicesOf(repair, place)
    const isInTree = (other: number) => {
      const there = at.get(other)
      return there !== undefined && (there === parent || found[there]!.parent === index)
    }
    const outside = place.touches.filter((touch) => !isInTree(touch.other))
    repair.work += own.length * outside.length
    return {
      place,
      parent,
      choices: own,
      closes: outside.some((touch) => (at.get(touch.other) ?? -1) > index),
      costs: costsOutside(repair, own, outside),
      answers: [],
    }
  })
}

interface Hung {
  readonly place: Place
  /** Where in the tree's list it hangs; null for the root. */
  readonly parent: number | null
}

function hang(places: readonly Place[], next: Hung, left: Set<number>, found: Hung[]): void {
  const index = found.push(next) - 1
  left.delete(next.place.id)
  for (const { other } of next.place.touches) {
    if (left.has(other)) hang(places, { place: places[other]!, parent: index }, left, found)
  }
}

/** The stretches at most so many contacts from one. */
function within(repair: Repair, root: Place, reach: number): Set<number> {
  const seen = new Set([root.id])
  let rim: readonly Place[] = [root]
  for (let step = 0; step < reach && seen.size < MOST_AT_ONCE; step += 1) {
    const next = rim.flatMap((place) => place.touches.map((touch) => touch.other))
    rim = [...new Set(next)].filter((id) => !seen.has(id)).map((id) => repair.field.places[id]!)
    for (const place of rim.slice(0, MOST_AT_ONCE)) seen.add(place.id)
  }
  return seen
}

/** What each choice costs by itself and against neighbours that are not joined to it in the tree. */
function costsOutside(
  { jointings, field }: Repair,
  choices: readonly Jointing[],
  outside: readonly Touch[],
): number[] {
  return choices.map((choice) =>
    outside.reduce(
      (sum, touch) => sum + clashes(choice, jointings[touch.other]!, touch, field.rules),
      choice.breaches,
    ),
  )
}

/** Adds to each choice of the parent the least that this node can then do. */
function hand(repair: Repair, node: Node, parent: Node): void {
  const { rules } = repair.field
  const touches = node.place.touches.filter((touch) => touch.other === parent.place.id)
  const fewest = node.costs[leastIndex(node.costs)]!
  node.answers = parent.choices.map((above, index) => {
    let best = 0
    let least = Number.MAX_SAFE_INTEGER
    for (let i = 0; i < node.choices.length && least > fewest; i += 1) {
      repair.work += 1
      let cost = node.costs[i]!
      if (cost >= least) continue
      for (const touch of touches) cost += clashes(node.choices[i]!, above, touch, rules)
      if (cost >= least) continue
      best = i
      least = cost
    }
    parent.costs[index]! += least
    return best
  })
}

function leastIndex(costs: readonly number[]): number {
  return costs.reduce((best, cost, index) => (cost < costs[best]! ? index : best), 0)
}
