import type { Made, Shelf } from '../facts/kept.ts'
import { type Message, message } from '../facts/message.ts'
import { sameThings } from '../facts/same.ts'
import { inOneGo, type Sliced } from '../facts/slices.ts'
import type { Region } from '../geometry/point.ts'
import type { Floor, Job, Product } from '../job/job.ts'
import { houseIndex } from '../survey/house-index.ts'
import type { Survey } from '../survey/survey.ts'
import type { Nm } from '../units/length.ts'
import { breachMessages } from './breach-messages.ts'
import { crosswise, type Direction, directionOf } from './direction.ts'
import type { FloorArea } from './floor-area.ts'
import type { Frame } from './frame.ts'
import { mirroredProblem, planSeenInMirror } from './hand.ts'
import { hasTooManyPieces, MOST_PLANKS, takesTooManyPlanks } from './how-large.ts'
import { balancedLine, betterLines, type Line, movedLine } from './line.ts'
import { netInFrame } from './net.ts'
import { type Plan, planOf, USUAL_BUDGET } from './plan.ts'
import { plankRules } from './plank-rules.ts'
import type { PlankRules } from './problem.ts'
import { type CutFloor, problemOf } from './problem-of.ts'
import { publishFloor } from './publish.ts'
import type { PublishedFloor } from './published.ts'
import { advancing, begin, type Search } from './search.ts'
import { type Moved, setOutMessages, shiftAcross } from './set-out.ts'
import { type Start, startOf } from './start-wall.ts'
import { zonesOf } from './zones.ts'

/** What one floor is laid from. */
export interface ToLay {
  readonly job: Job
  readonly floor: Floor
  readonly product: Product
  readonly area: FloorArea
  readonly survey: Survey
}

/** One floor, laid: where it starts, its pieces, and what else was tried. */
export interface LaidFloor extends Layout {
  readonly floor: Floor
  readonly product: Product
  readonly area: FloorArea
  readonly messages: readonly Message[]
}

/** What of it does not tell where in the text anything stands. */
export interface Layout {
  /** What the planks cover, in the frame of the run. */
  readonly net: Region
  readonly frame: Frame
  readonly start: Start
  readonly line: Line
  readonly published: PublishedFloor
  /** Planks used of each length, as the product lists them. */
  readonly used: readonly {
    readonly length: Nm
    readonly perBox: number
    readonly planks: number
  }[]
  /** Boxes if this floor were all that is bought, spoil and spares included. */
  readonly boxes: number
  /** How the plan was begun, and how many ways were tried. */
  readonly pattern: string
  readonly tried: number
  readonly alternatives: readonly Alternative[]
  /** How far the line was moved by choice, and what for. */
  readonly moved: Moved
}

/** Floors of earlier runs, and layouts by all that they were made from, wherever that stands in the text. */
export interface LayoutsKept {
  readonly floors: Shelf<Floor, Made<Laid>>
  readonly layouts: Shelf<string, Layout>
}

/** What another way of setting out would come to. */
export interface Alternative {
  readonly words: string
  readonly planks: number
  readonly boxes: number
  /** Stagger, ends, rips and doorway joints that would not be met. */
  readonly breaches: number
}

/** Patterns that a line or a direction is weighed by. */
const SHORT_SEARCH = 2

/**
 * Lays one floor: direction, start wall and line as stated or else chosen and said, then the plan, its
 * pieces and its breaches. Null where nothing can be laid: the gaps leave no floor, or it is far beyond
 * a house. Never throws.
 */
export function layFloor(input: ToLay): LaidFloor | null {
  return inOneGo(laying(input))
}

/**
 * The same, pausing between the lines that are tried and every few milliseconds' worth of steps, or at
 * once where it is laid from the same as in an earlier run.
 */
export function* laying(input: ToLay, kept?: LayoutsKept): Sliced<LaidFloor | null> {
  const given = givenTo(input)
  const before = kept?.floors.get(input.floor)
  if (before !== undefined && sameThings(before.given, given)) {
    // Its layout is in use as well: one more note in a room of it, and it is asked for.
    kept?.layouts.get(before.value.key)
    return before.value.floor
  }
  yield
  const value = yield* laidAnew(input, kept?.layouts)
  kept?.floors.set(input.floor, { given, value })
  return value.floor
}

/** A floor laid, or null where it cannot be, and the key of its layout. */
interface Laid {
  readonly floor: LaidFloor | null
  readonly key: string
}

const NOT_LAID: Laid = { floor: null, key: '' }

/** All that a floor is laid from besides its own lines; of other rooms those that its lines name. */
function givenTo({ job, floor, product, area, survey }: ToLay): readonly unknown[] {
  const { rooms } = houseIndex(survey)
  const along = [floor.start, floor.running?.kind === 'along' ? floor.running : null]
  const named = along.map((line) => line && survey.rooms[rooms.get(line.room.key)?.[0] ?? -1])
  return [product, area, job.units, job.pile.pieces, job.pile.courses, ...named]
}

function* laidAnew(input: ToLay, kept: LayoutsKept['layouts'] | undefined): Sliced<Laid> {
  const { job, floor, product, area, survey } = input
  const rules = plankRules(job, product)
  if (takesTooManyPlanks(area, rules)) return NOT_LAID
  const direction = directionOf(floor, survey, area)
  if (hasTooManyPieces(area, direction.frame, rules)) return NOT_LAID
  const start = startOf({ floor, survey, area, laid: rules.laid }, direction.frame)
  const set = { rules, direction, start }
  const key = kept === undefined ? '' : madeFrom(input, set)
  const layout = kept?.get(key) ?? (yield* layoutOf(input, set))
  if (layout === null) return NOT_LAID
  kept?.set(key, layout)
  const messages = [
    ...setOutMessages({ job, floor, direction, start, moved: layout.moved }),
    ...breachMessages(layout.published, job.units, floor.span),
  ]
  return { floor: { ...layout, floor, product, area, messages }, key }
}

/** A floor set out: the rules it is laid by, the way of its planks, and where they begin. */
interface SetOut {
  readonly rules: PlankRules
  readonly direction: Direction
  readonly start: Start
}

/** All that a layout is made from, but for where it stands in the text. */
function madeFrom({ floor, product, area }: ToLay, setOut: SetOut): string {
  const { rings, rooms, doorways } = area
  const names = [floor.name.text, product.name.text]
  return JSON.stringify([names, setOut, floor.shift, rings, rooms, doorways], (key, value) =>
    key === 'span' ? undefined : value,
  )
}

function* layoutOf(input: ToLay, { rules, direction, start }: SetOut): Sliced<Layout | null> {
  const { floor, product, area } = input
  const ground = groundOf(area, start)
  if (ground === null) return null
  const ways: Way[] = []
  for (const line of linesToTry(floor, ground, rules))
    ways.push(yield* tryLine(ground, line, rules))
  const chosen = ways.reduce((a, b) => (isBetter(b, a) ? b : a))
  const search = yield* advancing(chosen.search, USUAL_BUDGET.patterns - SHORT_SEARCH)
  const published = publishFloor(
    { floor: floor.name.text, product: product.name.text },
    start.frame,
    chosen.cut,
    planIn(chosen.cut, search, start),
  )
  yield
  const { trial, score } = search.best!
  const turned = yield* otherDirection(input, direction.frame, rules)
  return {
    net: ground.net,
    frame: start.frame,
    start,
    line: chosen.line,
    published,
    used: rules.lengths.map((each, kind) => ({ ...each, planks: trial.used[kind]! })),
    boxes: score.boxes,
    pattern: trial.pattern.words,
    tried: search.tried,
    alternatives: [
      ...ways.filter((way) => way !== chosen).map((way) => alternative(way, lineInWords(way))),
      ...turned,
    ],
    moved: movedFrom(ways[0]!, chosen),
  }
}

/** How far the line was moved by choice, and what for. */
function movedFrom(balanced: Way, chosen: Way): Moved {
  const fewer =
    chosen.line.narrow < balanced.line.narrow ||
    chosen.search.best!.score.breaches < balanced.search.best!.score.breaches
  return { by: chosen.line.moved, why: fewer ? 'breaches' : 'boxes' }
}

/** Why a floor has no layout: every total of the job waits for it. */
export function notLaid({ job, floor, product, area, survey }: ToLay): Message {
  const rules = plankRules(job, product)
  if (takesTooManyPlanks(area, rules))
    return tooLarge(floor, `This floor would take more than ${MOST_PLANKS} planks.`)
  const run = directionOf(floor, survey, area).frame
  if (hasTooManyPieces(area, run, rules))
    return tooLarge(floor, 'This floor would be cut into more pieces than any floor has.')
  const { frame } = startOf({ floor, survey, area, laid: rules.laid }, run)
  const text =
    netInFrame(area, frame).length === 0
      ? 'The gaps along the walls leave no floor for the planks. It has to be wider than the gaps at its two sides.'
      : 'No edge of this floor runs along the planks, so laying has nothing to start along. The planks have to run more nearly along one of its walls.'
  return message('error', 'nothing-to-lay', floor.span, text)
}

function tooLarge(floor: Floor, why: string): Message {
  const text = `${why} Look for a reading or a plank size that is out by far.`
  return message('error', 'floor-too-large', floor.span, text)
}

/** A floor seen from its start wall. */
interface Ground {
  readonly area: FloorArea
  readonly start: Start
  readonly net: Region
}

function groundOf(area: FloorArea, start: Start): Ground | null {
  const net = netInFrame(area, start.frame)
  return net.length === 0 || start.wall.length === 0 ? null : { area, start, net }
}

/** A line, the floor cut into courses on it, and the search for its plan. */
interface Way {
  readonly line: Line
  readonly cut: CutFloor
  readonly search: Search
}

/** A line is weighed by a short search, which goes on from there for the one that is taken. */
function* tryLine(ground: Ground, line: Line, rules: PlankRules): Sliced<Way> {
  const { area, start, net } = ground
  const setOut = { seam: line.seam, start: line.start, onward: 'down' as const }
  const cut = problemOf(net, setOut, rules, zonesOf(area, start.frame, longestOf(rules)))
  const problem = start.fromRight ? mirroredProblem(cut.problem) : cut.problem
  yield
  return { line, cut, search: yield* advancing(begin(problem), SHORT_SEARCH) }
}

/** What a search found, as it lies on the floor. */
function planIn({ problem }: CutFloor, search: Search, { fromRight }: Start): Plan {
  const plan = planOf(search)
  return fromRight ? planSeenInMirror(plan, problem) : plan
}

/**
 * Fewer breaches, then fewer narrow courses (a slanted wall's are not all seen in a problem), boxes,
 * slivers. For less than that no line leaves its balanced place.
 */
function isBetter(a: Way, b: Way): boolean {
  const [scoreA, scoreB] = [a.search.best!.score, b.search.best!.score]
  const less =
    scoreA.breaches - scoreB.breaches ||
    a.line.narrow - b.line.narrow ||
    scoreA.boxes - scoreB.boxes ||
    scoreA.slivers - scoreB.slivers
  return less < 0
}

/** The line as shifted in the text; else the balanced one, and those that may be better. */
function linesToTry(floor: Floor, ground: Ground, rules: PlankRules): readonly Line[] {
  const { walls, wall, frame } = ground.start
  const lineRules = {
    width: rules.width,
    narrowestRip: rules.narrowestRip,
    kerfAlong: rules.kerfAlong,
    length: longestOf(rules),
  }
  const balanced = balancedLine(walls, wall, lineRules)
  if (floor.shift !== null) {
    return [movedLine(balanced, shiftAcross(floor.shift, frame), walls, lineRules)]
  }
  return [balanced, ...betterLines(balanced, walls, lineRules)]
}

function longestOf({ lengths }: PlankRules): Nm {
  return lengths.reduce((most, each) => Math.max(most, each.length), 0)
}

function lineInWords(way: Way): string {
  return way.line.moved === 0 ? 'the balanced line' : 'a line off the balanced one'
}

function alternative({ search }: Way, words: string): Alternative {
  const { score } = search.best!
  return { words, planks: score.planks, boxes: score.boxes, breaches: score.breaches }
}

/** The planks laid the other way, from the longest wall along them. */
function* otherDirection(
  input: ToLay,
  frame: Frame,
  rules: PlankRules,
): Sliced<readonly Alternative[]> {
  const { floor, survey, area } = input
  if (hasTooManyPieces(area, crosswise(frame), rules)) return []
  const free = { ...floor, start: null, shift: null }
  const ground = groundOf(
    area,
    startOf({ floor: free, survey, area, laid: rules.laid }, crosswise(frame)),
  )
  if (ground === null) return []
  const line = linesToTry(free, ground, rules).at(-1)!
  const way = yield* tryLine(ground, line, rules)
  return [alternative(way, 'planks running the other way')]
}
