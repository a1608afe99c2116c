import { balanceOf, clearWidth } from './balance.ts'
import type { Breach } from './breaches.ts'
import type { House } from './house.ts'
import type { Job } from './job.ts'
import type { Blank, Joint } from './laying.ts'
import { regionWithin } from './laying.ts'
import { FOOT } from './lengths.ts'
import { laidTooEarly, overcutPlanks, usedBy } from './planks.ts'
import type { PublishedFloor, PublishedJoint, PublishedPiece } from './published.ts'
import {
  compare,
  floor,
  minus,
  over,
  plus,
  type Ratio,
  ratio,
  round,
  same,
  size,
  times,
  ZERO,
} from './ratio.ts'
import { areaOf, extentOf, larger, type Region } from './region.ts'
import { areaWithin } from './rim.ts'
import { type Run, shiftAcross } from './run.ts'
import { acrossSlack, alongSlack, type Nearness } from './slack.ts'
import { byPercentage, orderOf, perimeterOf, type Used, wasteOf } from './takeoff.ts'
import { asNumber } from './turns.ts'
import { type Working, workOut } from './working.ts'

/** A number of the product beside its own, as the command line's JSON has it. */
export interface Quantity {
  readonly key: string
  readonly room: string | null
  /** sq ft, sq m, ft, m, %, planks, boxes. */
  readonly unit: string
  readonly value: { readonly n: bigint; readonly d: bigint } | null
}

export interface Result {
  readonly floors: readonly PublishedFloor[]
  readonly quantities: ReadonlyMap<string, readonly Quantity[]>
  readonly orders: ReadonlyMap<string, readonly Quantity[]>
  /** Whether a note says that the line was moved. */
  readonly isLineMoved: (floor: string) => boolean
}

/** Every number that differs, said in words; nothing where all agree. */
export function disagreements(
  job: Job,
  house: House,
  result: Result,
  near: Nearness,
): readonly string[] {
  const said: string[] = []
  const used = new Map<string, Used[]>()
  for (const floor of job.floors) {
    const published = result.floors.find((one) => one.floor === floor.key)
    const working = published ? workOut(job, house, floor, published) : null
    if (!published || working === null) continue
    const tell = (text: string) => said.push(`${floor.key}: ${text}`)
    compareFloor(job, working, published, result, near, tell)
    used.set(floor.product, [...(used.get(floor.product) ?? []), usedBy(published)])
  }
  for (const [key, floors] of used) {
    const product = job.products.find((one) => one.key === key)
    if (product)
      compareOrder(orderOf(floors, product), result.orders.get(key) ?? [], (text) =>
        said.push(`${key}: ${text}`),
      )
  }
  return said
}

type Tell = (text: string) => void

function compareFloor(
  job: Job,
  working: Working,
  published: PublishedFloor,
  result: Result,
  near: Nearness,
  tell: Tell,
): void {
  compareQuantities(
    job,
    working,
    published,
    result.quantities.get(working.floor.key) ?? [],
    near,
    tell,
  )
  compareRun(working, published, result.isLineMoved(working.floor.key), near, tell)
  compareCourses(working, published, tell)
  const numbered = comparePieces(working, published, near, tell)
  compareJoints(working, published, numbered, near, tell)
  compareBreaches(working, published, numbered, near, tell)
  for (const plank of overcutPlanks(published, working.product))
    tell(`plank ${plank} gives more than it has`)
  for (const plank of laidTooEarly(published))
    tell(`plank ${plank}: a rest is laid in the course it is cut in`)
}

/** The run lies as it is said or chosen, and the line where first and last course share the width. */
function compareRun(
  working: Working,
  published: PublishedFloor,
  isMoved: boolean,
  near: Nearness,
  tell: Tell,
): void {
  const { runs } = working
  if (!working.isAlong) return
  const away = runs.map((run) => awayFromLine(run, working, published))
  if (runs.length === 0)
    tell(`runs ${published.frame.east} ${published.frame.north} in the product alone`)
  else if (!isMoved && !away.some((off) => isNear(off, ZERO, near)))
    tell(`line ${away.map(asText)} off`)
}

/** How far the published seams lie from where the balanced line, shifted, puts them. */
function awayFromLine(
  run: Run,
  { rim, turned, floor: said, product }: Working,
  { courses }: PublishedFloor,
): Ratio {
  const { start, most, varies } = clearWidth(run, rim, turned)
  const line =
    most === null ? start : minus(start, ratio(round(balanceOf(most, varies, product).first)))
  const rest = minus(ratio(BigInt(courses[0]?.low ?? 0)), plus(line, shiftAcross(said, run.axis)))
  return minus(rest, ratio(round(over(rest, ratio(product.width))) * product.width))
}

function compareCourses({ courses }: Working, published: PublishedFloor, tell: Tell): void {
  const own = courses.map(({ low, high }) => `${low.n}..${high.n}`)
  const theirs = published.courses.map(({ low, high }) => `${low}..${high}`)
  if (own.join() !== theirs.join())
    tell(`courses ${own.length} from ${own[0]}, product ${theirs.length} from ${theirs[0]}`)
}

/** Each piece of the oracle by the number that the product gave the same piece. */
type Numbered = ReadonlyMap<Region, PublishedPiece>

function comparePieces(
  { laying }: Working,
  { pieces }: PublishedFloor,
  near: Nearness,
  tell: Tell,
): Numbered {
  const numbered = new Map<Region, PublishedPiece>()
  const left = new Set(pieces)
  for (const blank of laying.blanks) {
    for (const piece of blank.pieces) {
      const found = blank.published.find(
        (one) => left.has(one) && isSamePiece(piece, blank, regionWithin(one.ring), near),
      )
      if (found === undefined) {
        tell(`course ${blank.course}: no piece ${boxText(piece)}`)
        continue
      }
      left.delete(found)
      numbered.set(piece, found)
    }
    compareSpans(blank, near, tell)
  }
  for (const { piece, course } of left) tell(`course ${course}: piece ${piece} is not made so`)
  return numbered
}

function isSamePiece(a: Region, blank: Blank, b: Region, near: Nearness): boolean {
  if (near.isExact) return shapeText(a) === shapeText(b)
  const [one, two] = [extentOf(a), extentOf(b)]
  const around = plus(minus(one.u[1], one.u[0]), minus(one.v[1], one.v[0]))
  const moved = one.u.map((u, i) => size(minus(u, two.u[i] ?? u))).reduce(larger)
  const [along, across] = [alongSlack(a, blank, near), acrossSlack(a, near, moved)]
  const tall = minus(one.v[1], one.v[0])
  return (
    one.u.every((u, i) => isWithin(u, two.u[i] ?? ZERO, along)) &&
    one.v.every((v, i) => isWithin(v, two.v[i] ?? ZERO, across)) &&
    isWithin(
      areaOf(a),
      areaOf(b),
      plus(times(times(around, ratio(2n)), ratio(near.nm)), times(along, tall)),
    )
  )
}

function shapeText(region: Region): string {
  const text = (a: Ratio) => (a.d === 1n ? `${a.n}` : `${a.n}/${a.d}`)
  return region
    .map(({ from, to, low, high }) =>
      [from, to, low.a.y, low.b.y, high.a.y, high.b.y].map(text).join(),
    )
    .toSorted()
    .join(' ')
}

/** The span that a blank takes of its plank is the box around its pieces. */
function compareSpans(blank: Blank, near: Nearness, tell: Tell): void {
  const { published, pieces, course } = blank
  if (published.length === 0 || pieces.length === 0) return
  const { u, v } = extentOf(pieces.flat())
  const long = spanOf(published.map(({ along }) => along))
  const wide = spanOf(published.map(({ across }) => across))
  if (!isWithin(minus(u[1], u[0]), long, alongSlack(pieces.flat(), blank, near)))
    tell(`course ${course}: a blank ${asText(minus(u[1], u[0]))} long takes ${asText(long)}`)
  const across = acrossSlack(pieces.flat(), near)
  const isTooNarrow = compare(plus(wide, across), minus(v[1], v[0])) < 0
  if (near.isExact ? !same(minus(v[1], v[0]), wide) : isTooNarrow)
    tell(`course ${course}: a blank ${asText(minus(v[1], v[0]))} wide takes ${asText(wide)}`)
}

function spanOf(spans: readonly (readonly [number, number])[]): Ratio {
  return ratio(
    BigInt(Math.max(...spans.map(([, to]) => to)) - Math.min(...spans.map(([from]) => from))),
  )
}

function compareJoints(
  { laying }: Working,
  { joints }: PublishedFloor,
  numbered: Numbered,
  near: Nearness,
  tell: Tell,
): void {
  const left = new Set(joints)
  for (const own of laying.joints) {
    const pieces = [own.left, own.right].map((piece) => numbered.get(piece)?.piece)
    const found = [...left].find(
      (joint) =>
        joint.course === own.course &&
        joint.leftPiece === pieces[0] &&
        joint.rightPiece === pieces[1] &&
        isSameJoint(own, joint, near),
    )
    if (found === undefined)
      tell(`course ${own.course}: a joint at ${asText(own.at)} that the product has not`)
    else left.delete(found)
  }
  for (const { course, at } of left) tell(`course ${course}: no joint at ${at}`)
}

function isSameJoint(own: Joint, joint: PublishedJoint, near: Nearness): boolean {
  const moved = size(minus(own.at, ratio(BigInt(joint.at))))
  const across = [own.left, own.right]
    .map((piece) => acrossSlack(piece, near, moved))
    .reduce(larger)
  return (
    compare(moved, alongSlack(own.left, own.blank, near)) <= 0 &&
    isWithin(own.low, ratio(BigInt(joint.low)), across) &&
    isWithin(own.high, ratio(BigInt(joint.high)), across)
  )
}

function compareBreaches(
  { breaches, laying }: Working,
  published: PublishedFloor,
  numbered: Numbered,
  near: Nearness,
  tell: Tell,
): void {
  const left = new Set(published.breaches)
  for (const breach of breaches) {
    const numbers = breach.pieces.map((piece) => numbered.get(piece)?.piece ?? 0)
    const at = breach.at ?? numbered.get(breach.pieces[0] ?? [])?.ring[0]?.map(BigInt)
    const slack = slackOf(breach, laying.blanks, near)
    const found = [...left].find(
      (one) =>
        one.rule === breach.rule &&
        one.direction === breach.direction &&
        one.limit === Number(breach.limit) &&
        one.pieces.join() === numbers.join() &&
        isWithin(ratio(BigInt(one.value)), ratio(breach.value), slack) &&
        (isAnywhere(one.rule, near) ||
          one.at.every((place, i) => isWithin(ratio(BigInt(place)), ratio(at?.[i] ?? 0n), slack))),
    )
    if (found !== undefined) left.delete(found)
    else if (!isWithin(ratio(breach.value), ratio(breach.limit), slack)) {
      tell(`breach ${breachText(breach)} of pieces ${numbers} at ${at}`)
    }
  }
  for (const { rule, value, limit, pieces, at } of left) {
    if (isBorderline(BigInt(value), BigInt(limit), near)) continue
    tell(`no breach: ${rule} ${value} of ${limit} of pieces ${pieces} at ${at}`)
  }
}

/** How long a piece is, and where its joints are, depends on where its tips lie; a run may end at a steep edge. */
function slackOf({ rule, pieces }: Breach, blanks: readonly Blank[], near: Nearness): Ratio {
  if (near.isExact || rule === 'narrowest rip') return ratio(near.nm)
  if (rule === 'longest run') return ratio(near.nm * 1000n)
  return pieces.reduce((slack, piece) => {
    const blank = blanks.find((one) => one.pieces.includes(piece))
    return blank ? plus(slack, alongSlack(piece, blank, near)) : slack
  }, ratio(near.nm))
}

/** Which of runs that are alike but for rounding is told does not matter. */
const isAnywhere = (rule: string, near: Nearness): boolean =>
  !near.isExact && rule === 'longest run'

/** Rounding alone may decide whether the rule is broken. */
const isBorderline = (value: bigint, limit: bigint, near: Nearness): boolean =>
  !near.isExact && isNear(ratio(value), ratio(limit), near)

const breachText = ({ rule, value, limit, direction }: Breach): string =>
  `${rule} ${direction} ${value} of ${limit}`

function compareQuantities(
  job: Job,
  working: Working,
  published: PublishedFloor,
  quantities: readonly Quantity[],
  near: Nearness,
  tell: Tell,
): void {
  const area = areaWithin(working.rim)
  const covered = areaOf(working.covered)
  const used = usedBy(published)
  const planks = [...used.values()].reduce((a, b) => a + b, 0n)
  const slack = (exact: Ratio) => (near.isExact ? ZERO : times(size(exact), ratio(5n, 10n ** 9n)))
  const check = (key: string, own: Ratio, room: string | null = null, whole = own) => {
    const found = quantities.find((one) => one.key === key && one.room === room)
    const theirs = found?.value
      ? times(ratio(found.value.n, found.value.d), unitOf(found.unit))
      : null
    if (!theirs || !isWithin(own, ratio(theirs.n, theirs.d), slack(whole))) {
      tell(
        `${key} ${room ?? ''} ${asText(own)}, product ${theirs ? asText(ratio(theirs.n, theirs.d)) : 'none'}`,
      )
    }
  }
  check('floor area', area)
  // Of less than a square metre what corners are rounded by is a larger part.
  const small = larger(ratio(1n), over(ratio(METRE * METRE), covered))
  check('covered area', covered, null, times(covered, small))
  check('planks', ratio(planks))
  const waste = wasteOf(used, working.product, covered)
  check('waste', waste, null, times(plus(waste, ratio(100n)), small))
  check('planks by percentage', ratio(byPercentage(job, used, working.product, area)))
  const rooms = quantities.filter(({ key }) => key === 'trim run').map(({ room }) => room)
  for (const room of rooms) {
    const run = perimeterOf(working.rim, room)
    check('trim run', run, room, larger(run, ratio(METRE)))
  }
}

/** Nanometres, or square ones, in a unit. */
function unitOf(unit: string): Ratio {
  const [length] = [unit.endsWith('ft') ? FOOT : unit.endsWith('m') ? METRE : 1n]
  return ratio(unit.startsWith('sq ') ? length * length : length)
}

const METRE = 10n ** 9n

function compareOrder(
  order: ReturnType<typeof orderOf>,
  quantities: readonly Quantity[],
  tell: Tell,
): void {
  const check = (key: string, own: bigint) => {
    const theirs = quantities.find((one) => one.key === key)?.value
    if (!theirs || theirs.n !== own || theirs.d !== 1n) tell(`${key} ${own}, product ${theirs?.n}`)
  }
  check('planks', order.planks)
  check('spoil', order.spoil)
  check('spares', order.spares)
  check('boxes', order.boxes)
  check('planks left', order.left)
}

function isNear(a: Ratio, b: Ratio, near: Nearness): boolean {
  return near.isExact ? same(a, b) : isWithin(a, b, ratio(near.nm))
}

const isWithin = (a: Ratio, b: Ratio, slack: Ratio): boolean =>
  compare(size(minus(a, b)), slack) <= 0

const asText = (a: Ratio): string => (a.d === 1n ? `${a.n}` : `${asNumber(a)}`)

function boxText(region: Region): string {
  const { u, v } = extentOf(region)
  return `${floor(u[0])}..${floor(u[1])} x ${floor(v[0])}..${floor(v[1])}`
}
