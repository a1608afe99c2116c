import type { SurveyedRoom } from '../survey/survey.ts'
import { NM_PER_FOOT, NM_PER_INCH, type Nm } from '../units/length.ts'
import { roundToNm } from '../units/round.ts'
import { type HalfRead, halfRead } from './drawing/half-read.ts'
import { outermost } from './drawing/outermost.ts'
import { ownIds } from './drawing/own-ids.ts'
import { type LaidShapes, type Plan, planOf, planShapes, type Scale } from './drawing/plan.ts'
import { sketches, sketchesWidth } from './drawing/sketches.ts'
import type { Subject } from './drawing/subject.ts'
import { extent } from './drawing/vector.ts'
import type { Scene, Shape } from './scene.ts'
import { runOf } from './scene-of.ts'

/** On a screen the plan has less room than on paper, and its lettering is read from further off. */
const ACROSS = 58

/** A screen can be zoomed into: no lettering needs to be larger to be read. */
const MOST: Nm = 9 * NM_PER_INCH

/** In parts of the plain lettering's height. */
const MARGIN = 1.5

const APART: Nm = 5 * NM_PER_FOOT

/**
 * The plan without a title block, for a screen that it is seen on while the job is still being written:
 * rooms that are half read stand beside it. `kept` are the shapes of floors to be drawn as they were.
 */
export function planScene(subject: Subject, kept: LaidShapes | null = null): Scene {
  const half = subject.rooms
    .filter(({ status }) => status === 'unfinished' || status === 'broken')
    .flatMap(({ room }) => halfRead(room) ?? [])
  const plan = planOf(subject, scaleFor(subject.rooms, half))
  const shapes = planShapes(plan, kept)
  const corner = {
    x: extent(shapes.flatMap(outermost)).high.x + (plan.rooms.length === 0 ? 0 : APART),
    y: extent(plan.rooms.flatMap((room) => room.outline)).high.y,
  }
  const em = emBeside(plan, shapes, half)
  const all = ownIds([...shapes, ...sketches(half, { units: plan.units, em, corner })])
  const drawn = extent(all.flatMap(outermost))
  const margin = roundToNm(plan.em * MARGIN)
  return {
    title: subject.title,
    low: { x: drawn.low.x - margin, y: drawn.low.y - margin },
    high: { x: drawn.high.x + margin, y: drawn.high.y + margin },
    em: plan.em,
    run: runOf(subject),
    shapes: all,
  }
}

/** Beside rooms that are measured the others take their lettering, so that it stays while they grow. */
function scaleFor(rooms: readonly SurveyedRoom[], half: readonly HalfRead[]): Scale {
  const isMeasured = rooms.some(({ outline }) => outline.length > 2)
  return { across: ACROSS, beside: isMeasured ? 0 : sketchesWidth(half), most: MOST }
}

/** Large enough for the whole sheet: beside one small room the plan's own may be too small for it. */
function emBeside(plan: Plan, shapes: readonly Shape[], half: readonly HalfRead[]): Nm {
  const { low, high } = extent(shapes.flatMap(outermost))
  const wide = high.x - low.x + sketchesWidth(half)
  return Math.max(plan.em, Math.min(2 * MOST, roundToNm(wide / ACROSS)))
}

/** The shapes of laid floors among those of a plan. */
export function laidShapes(shapes: readonly Shape[]): LaidShapes {
  return {
    under: shapes.filter(({ kind }) => kind === 'piece' || kind === 'seam' || kind === 'joint'),
    over: shapes.filter(
      ({ kind }) => kind === 'transition' || kind === 'working line' || kind === 'breach',
    ),
    labels: shapes.filter((shape) => shape.kind === 'rip label'),
  }
}
