import type { Room } from '../../job/job.ts'
import { counted } from '../../job/sentence.ts'
import { isSurelyMisread } from '../../survey/closing.ts'
import type { Closing, SurveyedRoom } from '../../survey/survey.ts'
import { measuresOf } from '../../takeoff/amount.ts'
import { closetAreas, roomArea } from '../../takeoff/areas.ts'
import { printLength } from '../../units/print.ts'
import type { Asked } from './asked.ts'
import {
  derivationParts,
  formula,
  type HoverPart,
  source,
  step,
  steps,
  text,
  textIf,
  title,
} from './parts.ts'
import { ALLOWED_MISS, SPREAD_SOURCE } from './spread-rule.ts'

/** A room: its area down to the readings, how it closes, its closets and the floor that it is laid in. */
export function roomParts(asked: Asked, room: Room): readonly HoverPart[] {
  const surveyed = asked.index.surveyed.get(room.name.key)
  const floor = asked.index.laidIn.get(room.name.key)
  return [
    ...(surveyed === undefined ? [title(room.name.text)] : shapeParts(asked, surveyed)),
    ...textIf(floor !== undefined, `Laid in floor ${floor?.name.text}.`),
  ]
}

function shapeParts(asked: Asked, surveyed: SurveyedRoom): readonly HoverPart[] {
  const { room, status, closing } = surveyed
  if (status !== 'measured' || (closing !== null && isSurelyMisread(closing))) {
    return [title(room.name.text), text(withoutShape(surveyed)), ...closingParts(asked, closing)]
  }
  const measures = measuresOf(asked.units)
  const closets = closetAreas(surveyed, measures)
  return [
    ...derivationParts(roomArea(surveyed, measures).derivation),
    ...closingParts(asked, closing),
    ...steps(
      closets.map(({ derivation: { label, value, inputs } }) =>
        step(`${label}: ${value}`, inputs[0]?.span ?? null),
      ),
    ),
  ]
}

function withoutShape({ room, status }: SurveyedRoom): string {
  switch (status) {
    case 'not measured':
      return 'Not measured: it has no walls yet.'
    case 'unfinished': {
      const left = room.walls.filter(({ reading }) => reading.nm === null).length
      return left === 0
        ? 'Unfinished: it has no figures yet.'
        : `Unfinished: ${counted(left, 'wall')} still to read, so it has no figures yet.`
    }
    case 'broken':
      return 'It has no figures until what is wrong with it is mended.'
    case 'measured':
      return 'Its readings contradict each other, so it has no figures before they agree.'
  }
}

/** How the walls close as they were walked, against what the tape allows, and how that is spread. */
function closingParts({ units }: Asked, closing: Closing | null): readonly HoverPart[] {
  if (closing === null) return []
  const length = (nm: number) => printLength(nm, units)
  const perimeter = `Perimeter ${length(closing.perimeter)}.`
  if (closing.rule === 'distances') {
    return [
      text(
        `${perimeter} Its shape is solved from distances: its further readings tell how well they agree.`,
      ),
    ]
  }
  const allowed = `${length(closing.allowedEast)} east, ${length(closing.allowedNorth)} north`
  if (closing.length === 0) return [text(`${perimeter} It closes exactly; allowed ${allowed}.`)]
  const ratio = closing.ratio === null ? '' : ` (1 : ${closing.ratio})`
  return [
    text(
      `${perimeter} Closing error ${length(closing.east)} east, ${length(closing.north)} north${ratio}; ` +
        `allowed ${allowed}${closing.within ? '' : ': exceeded'}.`,
    ),
    formula(ALLOWED_MISS),
    text(`It is spread by the ${closing.rule} rule.`),
    source(SPREAD_SOURCE),
  ]
}
