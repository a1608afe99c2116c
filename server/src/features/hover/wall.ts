import type { Ring } from '../../geometry/point.ts'
import type { Room, Wall } from '../../job/job.ts'
import { isSurelyMisread } from '../../survey/closing.ts'
import { wallWords } from '../../survey/labels.ts'
import type { SurveyedRoom } from '../../survey/survey.ts'
import { printLength } from '../../units/print.ts'
import { wallsMade } from '../figures/wall-made.ts'
import type { Asked } from './asked.ts'
import { fineLength, signedLength } from './how-read.ts'
import {
  formula,
  type HoverPart,
  type Step,
  source,
  step,
  steps,
  stepsFor,
  text,
  textIf,
  title,
} from './parts.ts'
import { SPREAD_FORMULAS, SPREAD_SOURCE } from './spread-rule.ts'

/** A wall: its reading, what the shape makes of it, what the floor meets there and what stands in it. */
export function wallParts(asked: Asked, room: Room, wall: Wall): readonly HoverPart[] {
  return [
    title(`${wallWords(room, wall.index)} of ${room.name.text}: ${wall.reading.text}`),
    ...shapeParts(asked, room, wall),
    ...edgeParts(asked, room, wall),
    ...standingIn(room, wall),
  ]
}

/** What the shape makes of a wall after the closing error is spread, and its share of that. */
export function shapeParts({ index, units }: Asked, room: Room, wall: Wall): readonly HoverPart[] {
  const surveyed = index.surveyed.get(room.name.key)
  const made = surveyed === undefined ? undefined : wallsMade(surveyed)[wall.index]
  if (surveyed === undefined || made === undefined) {
    return [text(`${room.name.text} has no shape yet, so nothing is made of this reading.`)]
  }
  if (surveyed.closing !== null && isSurelyMisread(surveyed.closing)) {
    return [
      text(
        `The readings of ${room.name.text} contradict each other: nothing is made of them before they agree.`,
      ),
    ]
  }
  const { share, plane, grown } = made
  return [
    text(`The shape makes it ${printLength(made.made, units)}.`),
    ...textIf(
      plane !== 0,
      `Brought to what the other walls were read to: ${signedLength(plane, units)}.`,
    ),
    ...shareParts(surveyed, wall, share, units),
    ...textIf(
      grown !== 0,
      `The floor's edge lies the base's thickness from what the tape touched: ${signedLength(grown, units)} at its ends.`,
    ),
  ]
}

function shareParts(
  surveyed: SurveyedRoom,
  wall: Wall,
  share: number,
  units: Asked['units'],
): readonly HoverPart[] {
  const { closing } = surveyed
  if (closing === null) return []
  if (closing.rule === 'distances') {
    const off = signedLength(share, units)
    const met = /[1-9]/.test(off) ? `changes this reading by ${off}` : 'meets this reading'
    return [text(`The shape is solved from distances and ${met}.`)]
  }
  if (closing.length === 0) return [text('The room closes exactly: nothing is spread.')]
  return [
    text(
      `Its share of the closing error: ${signedLength(share, units)}, by the ${closing.rule} rule.`,
    ),
    formula(SPREAD_FORMULAS[closing.rule]),
    ...steps(sharers(surveyed, wall, units)),
    source(SPREAD_SOURCE),
  ]
}

/** The closing error, and the walls that it is spread over: those along the wall, or all of them. */
function sharers(surveyed: SurveyedRoom, wall: Wall, units: Asked['units']): readonly Step[] {
  const { room, corners } = surveyed
  const { rule, east, north } = surveyed.closing!
  const made = wallsMade(surveyed)
  const eastward = runsEast(corners, wall.index)
  const parts = [
    ...(rule === 'transit' && !eastward ? [] : [`${printLength(east, units)} east`]),
    ...(rule === 'transit' && eastward ? [] : [`${printLength(north, units)} north`]),
  ]
  const walls = room.walls.filter(
    ({ index }) => rule !== 'transit' || runsEast(corners, index) === eastward,
  )
  const shares = stepsFor(walls, ({ index, reading }) => {
    const share = signedLength(made[index]!.share, units)
    return step(`${wallWords(room, index)}: ${reading.text}, ${share}`, reading.span)
  })
  return [
    step(`closing error: ${parts.join(', ')}`),
    ...shares.map((one) => ({ ...one, depth: 1 })),
  ]
}

/** Whether a wall of a right-angled room lies along east-west. */
function runsEast(corners: Ring, wall: number): boolean {
  const [from, to] = [corners[wall]!, corners[(wall + 1) % corners.length]!]
  return Math.abs(to.x - from.x) > Math.abs(to.y - from.y)
}

function edgeParts({ units }: Asked, room: Room, wall: Wall): readonly HoverPart[] {
  const { edge, openTo, stair, bow } = wall
  const fate = room.base?.fate ?? null
  const meets = edge.kind ?? (fate === null ? null : fate === 'none' ? 'no base' : `base ${fate}`)
  return [
    ...textIf(openTo !== null, `There is no wall here: it is open to ${openTo?.text}.`),
    ...textIf(stair !== null, `A stair begins here, ${stair}.`),
    ...textIf(
      bow !== null,
      `It bows ${(bow?.rise ?? 0) < 0 ? 'into' : 'out of'} the room by ${fineLength(Math.abs(bow?.rise ?? 0), units)}.`,
    ),
    ...textIf(
      openTo === null && stair === null && meets !== null,
      `The floor meets: ${meets}${edge.kind === null ? ', as the base line says' : ''}.`,
    ),
    ...textIf(edge.gap !== null, `Gap here: ${printLength(edge.gap ?? 0, units)}.`),
  ]
}

/** Openings, closets and hearths that stand in it, as they were read. */
function standingIn(room: Room, wall: Wall): readonly HoverPart[] {
  const things = [...room.openings, ...room.recesses].filter(
    ({ place, kind }) => place?.wall === wall.index && kind !== 'open side',
  )
  return steps(
    things.map(({ label, place, span }) =>
      step(`${label}: ${place!.width.text}, ${place!.distance.text} from ${place!.from}`, span),
    ),
  )
}
