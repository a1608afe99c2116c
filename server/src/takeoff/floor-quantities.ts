import type { Derivation } from '../facts/derivation.ts'
import { type Made, madeAgain, type Shelf } from '../facts/kept.ts'
import { COMMON_PRACTICE, FROM_THE_JOB } from '../facts/source.ts'
import type { Job } from '../job/job.ts'
import { keyOf } from '../language/name.ts'
import type { LaidFloor } from '../layout/lay.ts'
import { houseIndex } from '../survey/house-index.ts'
import type { Survey, SurveyedRoom } from '../survey/survey.ts'
import { printDecimal } from '../units/decimal.ts'
import { divide, multiply, ONE, ratio, subtract } from '../units/ratio.ts'
import { areaOf, measuresOf } from './amount.ts'
import { closetAreas, doubledAreaOf, roomArea } from './areas.ts'
import { wholeUnits } from './percentage-rule.ts'
import { plankArea } from './plank-area.ts'
import { given, quantity } from './quantity.ts'
import type { FloorTakeoff, Quantity } from './takeoff.ts'
import { trimRuns } from './trim-run.ts'

/** What one floor comes to: areas, planks, waste by layout and by percentage, trim. */
export function floorQuantities(
  job: Job,
  survey: Survey,
  laid: LaidFloor,
  kept?: Shelf<LaidFloor, Made<FloorTakeoff>>,
): FloorTakeoff {
  const rooms = roomsMeasured(survey, laid)
  const { value, span } = job.allowance
  const given = [job.units, value.n, value.d, span, ...rooms]
  return madeAgain(kept, laid, given, () => quantitiesOf(job, rooms, laid))
}

function quantitiesOf(job: Job, measured: readonly SurveyedRoom[], laid: LaidFloor): FloorTakeoff {
  const measures = measuresOf(job.units)
  const rooms = roomAreas(measured, laid, job)
  const floorArea = quantity(
    { key: 'floor area', label: 'floor area', unit: measures.area },
    areaOf(doubledAreaOf(laid.area.gross), measures),
    {
      formula: 'rooms + floor in the openings run through − obstacles',
      inputs: rooms.map((room) => room.derivation),
    },
  )
  const covered = quantity(
    { key: 'covered area', label: 'area covered by planks', unit: measures.area },
    areaOf(doubledAreaOf(laid.net), measures),
    { formula: 'floor area − gap along each edge', inputs: [floorArea.derivation] },
  )
  const planks = plankCount(laid)
  const waste = wasteByLayout(covered, planks, laid, job)
  const byPercentage = percentageRule(floorArea, planks, laid, job)
  return {
    floor: laid.floor.name.text,
    product: laid.product.name.text,
    quantities: [
      ...rooms,
      floorArea,
      covered,
      planks,
      waste,
      ...byPercentage,
      ...trimRuns(laid.area.rim, measures),
    ],
  }
}

/** The rooms of a floor, and those of its closets, in written order. */
function roomsMeasured(survey: Survey, laid: LaidFloor): readonly SurveyedRoom[] {
  const { rooms, withCloset } = houseIndex(survey)
  const concerned = laid.floor.rooms.flatMap(({ key }) => [
    ...(rooms.get(key) ?? []),
    ...(withCloset.get(key) ?? []),
  ])
  return [...new Set(concerned)]
    .sort((a, b) => a - b)
    .map((i) => survey.rooms[i]!)
    .filter((room) => room.status === 'measured')
}

function roomAreas(
  measured: readonly SurveyedRoom[],
  laid: LaidFloor,
  job: Job,
): readonly Quantity[] {
  const measures = measuresOf(job.units)
  const listed = new Set(laid.floor.rooms.map((room) => room.key))
  return measured.flatMap((room) => [
    ...(listed.has(room.room.name.key) ? [roomArea(room, measures)] : []),
    ...closetAreas(room, measures).filter((closet) => listed.has(keyOf(closet.room ?? ''))),
  ])
}

function plankCount(laid: LaidFloor): Quantity {
  const { planks, pieces, bound } = laid.published
  return quantity(
    { key: 'planks', label: 'planks by layout', unit: 'planks' },
    ratio(planks.length),
    {
      formula: 'planks that the layout cuts or lays whole',
      inputs: [
        given('pieces laid', `${pieces.length}`, { source: { kind: 'computed' } }),
        given('no layout needs fewer than', `${bound.planks} planks`, {
          source: { kind: 'computed' },
        }),
      ],
    },
  )
}

function wasteByLayout(covered: Quantity, planks: Quantity, laid: LaidFloor, job: Job): Quantity {
  const used = plankArea(laid, measuresOf(job.units))
  const value = multiply(ratio(100), subtract(divide(used.value, covered.value!), ONE))
  return quantity({ key: 'waste', label: 'waste by layout', unit: '%' }, value, {
    formula: 'area of the planks ÷ area covered − 1',
    inputs: [used.derivation, covered.derivation, planks.derivation],
  })
}

/** The rule that people use now, beside the layout, and which of the two is more. */
function percentageRule(
  floorArea: Quantity,
  planks: Quantity,
  laid: LaidFloor,
  job: Job,
): readonly Quantity[] {
  const measures = measuresOf(job.units)
  const percent = job.allowance
  const face = plankArea(laid, measures)
  const perPlank = divide(face.value, planks.value!)
  const count = wholeUnits(floorArea.value!, percent.value, perPlank)
  const inputs: Derivation[] = [
    floorArea.derivation,
    given('allowance', `${printDecimal(percent.value, 0)} %`, {
      source: percent.span === null ? COMMON_PRACTICE : FROM_THE_JOB,
      span: percent.span,
    }),
  ]
  const more =
    count > planks.value!.n
      ? `${count - planks.value!.n} more than the layout`
      : count < planks.value!.n
        ? `${planks.value!.n - count} fewer than the layout, which governs`
        : 'the same as the layout'
  return [
    quantity(
      { key: 'planks by percentage', label: 'planks by area plus percentage', unit: 'planks' },
      ratio(count),
      {
        formula: 'floor area × (1 + allowance) ÷ area of a plank',
        inputs,
        rule: `rounded up once; for comparison only, ${more}`,
        source: COMMON_PRACTICE,
      },
    ),
  ]
}
