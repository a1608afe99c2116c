import type { Derivation } from '../facts/derivation.ts'
import type { Region } from '../geometry/point.ts'
import { area2 } from '../geometry/ring.ts'
import type { SurveyedRoom } from '../survey/survey.ts'
import { areaOf, type Measures } from './amount.ts'
import { given, quantity } from './quantity.ts'
import type { Quantity } from './takeoff.ts'

/** Twice the area of a region in square nanometres, exactly: holes run clockwise and count negative. */
export function doubledAreaOf(region: Region): bigint {
  return region.reduce((sum, ring) => sum + area2(ring), 0n)
}

/** The floor of one room wall to wall, alcoves and curves included, down to its readings. */
export function roomArea(room: SurveyedRoom, measures: Measures): Quantity {
  const text = room.room.name.text
  return quantity(
    { key: 'room area', label: `floor area of ${text}`, unit: measures.area },
    areaOf(area2(room.outline), measures),
    {
      formula: `half the sum of cross products of the corners; closing error spread by the ${ruleOf(room)}`,
      inputs: readingsOf(room),
      room: text,
    },
  )
}

/** A closet's floor, behind its opening. */
export function closetAreas(room: SurveyedRoom, measures: Measures): readonly Quantity[] {
  return room.closets.map((closet) =>
    quantity(
      { key: 'room area', label: `floor area of ${closet.name}`, unit: measures.area },
      areaOf(area2(closet.outline), measures),
      {
        formula: 'inside width × depth',
        inputs: [given('closet', closet.name, { span: room.room.recesses[closet.recess]!.span })],
        room: closet.name,
      },
    ),
  )
}

function ruleOf(room: SurveyedRoom): string {
  const rule = room.closing?.rule ?? 'compass'
  return rule === 'distances' ? 'distances that fix its shape' : `${rule} rule`
}

function readingsOf(room: SurveyedRoom): readonly Derivation[] {
  return room.room.walls.map((wall) =>
    given(wall.label, wall.reading.text, { span: wall.reading.span }),
  )
}
