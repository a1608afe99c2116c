import { NM_PER_INCH, type Nm } from '../units/length.ts'
import { clashes } from './clash.ts'
import { type Jointing, jointingsFrom } from './jointing.ts'
import type { Field } from './laying.ts'
import { breachesOf } from './score.ts'
import { wrapped } from './starts.ts'
import type { Place } from './stretches.ts'

/** Start pieces are tried this far apart: no crew marks a stagger finer. */
const STEP: Nm = NM_PER_INCH / 4

/** How far from a breach stretches are chosen anew, counted in contacts. */
const REACHES = [2, 6] as const

/**
 * The jointings of a floor with fewer breaches, or the same ones where none is found. Around each
 * breach the stretches within reach are chosen anew all at once, the rest staying as it is: along a
 * tree of contacts the fewest breaches are found exactly (dynamic programming over every start piece
 * on a quarter-inch grid); contacts that close a loop count as they stood, and the tree is grown from
 * each breach in turn, so that every loop is opened somewhere else. Cost for each breach: contacts
 * within reach × start pieces squared. Only for planks of one length.
 */
export function withFewerBreaches(
  field: Field,
  jointings: readonly Jointing[],
): readonly Jointing[] {
  if (field.rules.lengths.length > 1) return jointings
  const repair: Repair = { field, jointings: [...jointings], choices: new Map() }
  for (const reach of REACHES) {
    for (const place of field.places) {
      if (hasAvoidable(repair, place)) chooseAnew(repair, place, reach)
    }
  }
  return repair.jointings
}

interface Repair {
  readonly field: Field
  readonly jointings: Jointing[]
  readonly choices: Map<number, readonly Jointing[]>
}

/** A stretch in the tree: what each of its choices costs together with all that hangs below it. */
interface Node {
  readonly place: Place
  readonly parent: number | null
  readonly choices: readonly Jointing[]
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

/** Every way to joint a stretch on the grid, those worth trying anywhere, and the present one. */
function choicesOf(repair: Repair, place: Place): readonly Jointing[] {
  const known = repair.choices.get(place.id)
  if (known !== undefined) return known
  const { rules, starts } = repair.field
  const plank = rules.lengths[0]!.length
  const lengths = [repair.jointings[place.id]!.start, ...starts[place.id]!]
  if (place.length <= plank) lengths.push(place.length)
  if (place.length > plank || place.posts.length > 0)
    for (let start = STEP; start <= plank; start += STEP) lengths.push(start)
  const once = new Set(lengths.map((start) => wrapped(start, plank, place.length)))
  const choices = [...once].flatMap((start) => jointingsFrom(place, start, rules))
  repair.choices.set(place.id, choices)
  return choices
}

/** Chooses the stretches within reach of one anew, and keeps that where the breaches became fewer. */
function chooseAnew(repair: Repair, root: Place, reach: number): void {
  const nodes = treeFrom(repair, root, reach)
  const before = breachesOf(repair.field.places, repair.jointings, repair.field.rules)
  const were = nodes.map((node) => repair.jointings[node.place.id]!)
  for (const node of [...nodes].reverse()) {
    if (node.parent !== null) hand(repair, node, nodes[node.parent]!)
  }
  const picked: number[] = []
  for (const [index, node] of nodes.entries()) {
    picked[index] =
      node.parent === null ? leastIndex(node.costs) : node.answers[picked[node.parent]!]!
    repair.jointings[node.place.id] = node.choices[picked[index]!]!
  }
  if (breachesOf(repair.field.places, repair.jointings, repair.field.rules) < before) return
  for (const [index, node] of nodes.entries()) repair.jointings[node.place.id] = were[index]!
}

/** The stretches within reach, each hung under the one it was reached from; costs but for the tree. */
function treeFrom(repair: Repair, root: Place, reach: number): readonly Node[] {
  const { places } = repair.field
  const found: { place: Place; parent: number | null; depth: number }[] = [
    { place: root, parent: null, depth: 0 },
  ]
  const seen = new Set([root.id])
  for (let index = 0; index < found.length; index += 1) {
    const { place, depth } = found[index]!
    if (depth === reach) continue
    for (const { other } of place.touches) {
      if (seen.has(other)) continue
      seen.add(other)
      found.push({ place: places[other]!, parent: index, depth: depth + 1 })
    }
  }
  const hung = new Map(found.map((each) => [each.place.id, each]))
  return found.map(({ place, parent }) => {
    const above = parent === null ? -1 : found[parent]!.place.id
    const choices = choicesOf(repair, place)
    const inTree = (other: number) => {
      const beyond = hung.get(other)
      const under = beyond === undefined || beyond.parent === null ? null : found[beyond.parent]!
      return other === above || under?.place.id === place.id
    }
    return { place, parent, choices, costs: costsOutside(repair, place, inTree), answers: [] }
  })
}

/** What each choice costs by itself and against neighbours that are not joined to it in the tree. */
function costsOutside(repair: Repair, place: Place, inTree: (other: number) => boolean): number[] {
  const outside = place.touches.filter((touch) => !inTree(touch.other))
  return choicesOf(repair, place).map((choice) =>
    outside.reduce(
      (sum, touch) =>
        sum + clashes(choice, repair.jointings[touch.other]!, touch, repair.field.rules),
      choice.breaches,
    ),
  )
}

/** Adds to each choice of the parent the least that this node can then do. */
function hand(repair: Repair, node: Node, parent: Node): void {
  const { rules } = repair.field
  const touches = node.place.touches.filter((touch) => touch.other === parent.place.id)
  node.answers = parent.choices.map((above, index) => {
    let best = 0
    let least = Number.MAX_SAFE_INTEGER
    for (let i = 0; i < node.choices.length && least > 0; i += 1) {
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
