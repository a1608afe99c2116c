import type { SurveyedRoom } from '../../survey/survey.ts'
import { areaText } from '../area-text.ts'
import type { Compiled } from '../compiled.ts'

/** Each room's closing and corners, and the loops; lengths in whole nanometres. */
export function surveyJson({ survey, job }: Compiled): object {
  return {
    unit: 'nm',
    rooms: survey.rooms.map((room) => ({
      room: room.room.name.text,
      status: room.status,
      closing: room.closing,
      area: room.status === 'measured' ? areaText([room.outline], job.units) : null,
      corners: room.corners.map(({ x, y }) => [x, y]),
      checks: room.checks.map((one) => checkOf(one)),
    })),
    loops: survey.loops.map(({ span: _, ...loop }) => loop),
  }
}

function checkOf({ check, computed, difference, allowed, fixes }: SurveyedRoom['checks'][number]) {
  const read = 'reading' in check ? check.reading.text : null
  return { kind: check.kind, read, computed, difference, allowed, fixes }
}
