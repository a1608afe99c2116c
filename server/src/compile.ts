import { inOrder } from './facts/in-order.ts'
import type { Message } from './facts/message.ts'
import type { Sliced } from './facts/slices.ts'
import { bind } from './job/bind.ts'
import { notRead, reach } from './job/includes.ts'
import type { Floor, Job } from './job/job.ts'
import { settle } from './job/settle.ts'
import { parse } from './language/parse.ts'
import { parseAgain } from './language/parse-again.ts'
import type { Tree } from './language/tree.ts'
import { floorArea } from './layout/area.ts'
import { type LaidFloor, laying, notLaid } from './layout/lay.ts'
import type { Compiled, Measured } from './report/compiled.ts'
import { type Kept, newKept } from './report/kept.ts'
import { isSurelyMisread } from './survey/closing.ts'
import { houseIndex } from './survey/house-index.ts'
import type { Survey } from './survey/survey.ts'
import { survey as surveyRooms } from './survey/survey-job.ts'
import { afterMore, takeoff as count } from './takeoff/count.ts'
import { unmetExpectations } from './takeoff/expectations.ts'
import type { Takeoff } from './takeoff/takeoff.ts'

export type { Compiled, Kept, Measured }
export { newKept }

/** Includes that are named and not among the texts: whoever can read files comes back with them. */
export interface Missing {
  readonly missing: readonly string[]
}

/** How far a job has come: its rooms are measured, or another stretch of the laying is done. */
export type Progress =
  | { readonly kind: 'measured'; readonly measured: Measured }
  | { readonly kind: 'laying' }

/**
 * The whole of Floorscribe on one page: text → trees → job → survey → floors → quantities. Each stage
 * is a function of the values before it. Takes a closed set of texts by path; where an include is not
 * among them it says which are missing, and whoever can read files comes back with them, or with the
 * reason why one is `absent`. Never throws, whatever the texts are.
 */
export function compile(
  texts: ReadonlyMap<string, string>,
  root: string,
  absent: ReadonlyMap<string, string> = new Map(),
): Compiled | Missing {
  const steps = compiling(texts, root, absent)
  for (;;) {
    const step = steps.next()
    if (step.done) return step.value
  }
}

/**
 * The same in steps, so that a caller who has others to answer may do so in between, or stop. What the
 * rooms come to is told as soon as it is known; laying takes longest and comes after. The number of
 * steps depends on the texts and on what is kept, and what comes out never on the steps. Spans that come
 * out with something kept move on with the text when the next version is read.
 */
export function* compiling(
  texts: ReadonlyMap<string, string>,
  root: string,
  absent: ReadonlyMap<string, string> = new Map(),
  kept?: Kept,
): Generator<Progress, Compiled | Missing> {
  kept?.begin()
  const parsed = [...texts].map(([file, text]) => treeOf(file, text, kept))
  const { trees, missing, messages: includes } = reach(parsed, root)
  const wanted = missing.filter((include) => !absent.has(include.path))
  if (wanted.length > 0) return { missing: [...new Set(wanted.map((include) => include.path))] }

  const files = trees.map(({ file }) => file)
  const { job, messages: bound } = bind(trees, root, kept?.job)
  const survey = surveyRooms(job, kept?.survey)
  const early = [
    ...trees.flatMap((tree) => tree.messages),
    ...includes,
    ...missing.map((include) => notRead(include, root, absent.get(include.path))),
    ...bound,
    ...survey.messages,
  ]
  const measured = {
    root,
    trees,
    job,
    survey,
    messages: inOrder(settle(early, job.accepts), files),
  }
  yield { kind: 'measured', measured }

  const { floors, messages: laid } = yield* layFloors(job, survey, kept)
  const before = [...early, ...laid]
  const counted = count(job, survey, floors, before, kept?.takeoff)
  const expectations = counted.complete ? unmetExpectations(job, counted) : []
  const takeoff = afterMore(counted, expectations)
  const messages = inOrder(settle([...before, ...expectations], job.accepts), files)
  kept?.end()
  return { ...measured, floors, takeoff, messages, exit: exitOf(messages, takeoff) }
}

function treeOf(file: string, text: string, kept: Kept | undefined): Tree {
  if (kept === undefined) return parse(file, text)
  return kept.files.set(file, parseAgain(kept.files.get(file) ?? null, file, text)).tree
}

/** Lays each floor whose area and product are known; what stands in the way of the others is said. */
function* layFloors(
  job: Job,
  survey: Survey,
  kept: Kept | undefined,
): Generator<
  Progress,
  { readonly floors: readonly LaidFloor[]; readonly messages: readonly Message[] }
> {
  const floors: LaidFloor[] = []
  const messages: Message[] = []
  for (const floor of job.floors) {
    const product = job.products.find((one) => one.name.key === floor.product?.key)
    const area = floorArea(job, survey, floor, kept?.areas)
    const isSettled = area.complete && hasSettledRooms(floor, survey)
    // What follows from an area that is not the floor's own would only be unsaid again.
    messages.push(...area.messages.filter(({ weight }) => isSettled || weight !== 'note'))
    if (product === undefined || area.gross.length === 0) continue
    const input = { job, floor, product, area, survey }
    const laid = yield* told(laying(input, kept?.layouts))
    if (laid === null) {
      messages.push(notLaid(input))
      continue
    }
    floors.push(laid)
    if (isSettled) messages.push(...laid.messages)
  }
  return { floors, messages }
}

/** Each pause of the laying is told. */
function* told<T>(work: Sliced<T>): Generator<Progress, T> {
  for (;;) {
    const slice = work.next()
    if (slice.done) return slice.value
    yield { kind: 'laying' }
  }
}

/** Whether no room of a floor misses closing by so much that its shape is none to be judged. */
function hasSettledRooms(floor: Floor, survey: Survey): boolean {
  const { rooms } = houseIndex(survey)
  return !floor.rooms
    .flatMap(({ key }) => rooms.get(key) ?? [])
    .map((i) => survey.rooms[i]!.closing)
    .some((closing) => closing !== null && isSurelyMisread(closing))
}

function exitOf(messages: readonly Message[], takeoff: Takeoff): Compiled['exit'] {
  const wrong = messages.some(
    (one) => one.weight === 'error' || (one.weight === 'warning' && !one.accepted),
  )
  if (wrong) return 'errors'
  return takeoff.complete ? 'sound' : 'incomplete'
}
