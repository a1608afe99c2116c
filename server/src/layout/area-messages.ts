import { type Message, message } from '../facts/message.ts'
import type { Floor } from '../job/job.ts'
import { keyOf } from '../language/name.ts'
import type { SurveyedRoom } from '../survey/survey.ts'
import type { UnitStyle } from '../units/length.ts'
import { samplesIn } from '../units/samples.ts'
import type { AreaParts } from './area-parts.ts'
import type { RimEdge } from './floor-area.ts'

/** What is to be said of a floor's area: rooms without a shape, rooms that nothing joins, open edges. */
export function floorMessages(
  floor: Floor,
  parts: AreaParts,
  rim: readonly RimEdge[],
  units: UnitStyle,
): Message[] {
  return [
    // What keeps a broken room from its shape is an error of its own.
    ...parts.missing
      .filter(({ room }) => room.status !== 'broken')
      .map(({ name, room }) =>
        message('incomplete', 'room-without-shape', name.span, withoutShape(floor, room)),
      ),
    ...emptyFloor(floor, parts, rim),
    ...roomsApart(floor, parts, units),
    ...edgesWithoutKind(floor, parts),
    ...wallsWithoutKind(floor, parts, rim),
  ]
}

function withoutShape(floor: Floor, { room, status }: SurveyedRoom): string {
  const name = room.name.text
  const left = `Floor ${floor.name.text} is not complete without it.`
  return status === 'not measured'
    ? `${name} is not measured: no walls are written below "room ${name}". ${left}`
    : `${name} has no shape yet: a reading is still to come. ${left}`
}

/** A list without rooms, or with a name that cannot be used, is asked for where it is read. */
function emptyFloor(floor: Floor, parts: AreaParts, rim: readonly RimEdge[]): Message[] {
  const isListed = floor.rooms.length > 0 && !floor.broken && parts.missing.length === 0
  if (rim.length > 0 || !isListed) return []
  const text =
    `Floor ${floor.name.text} has no area left: what stands in its rooms takes all of them. ` +
    'Look at the sizes of the stairwells, islands and hearths.'
  return [message('error', 'floor-without-area', floor.name.span, text)]
}

/** Rooms that no opening of this floor joins to the first one: likely a door not written yet. */
function roomsApart(floor: Floor, parts: AreaParts, units: UnitStyle): Message[] {
  const keys = new Set(parts.rooms.map(({ name }) => keyOf(name)))
  const shaped = floor.rooms.filter(({ key }) => keys.has(key))
  const first = shaped[0]
  if (!first) return []
  const reached = reachedFrom(first.key, parts.joins)
  return shaped
    .filter(({ key }) => !reached.has(key))
    .map((name) =>
      message(
        'note',
        'rooms-apart',
        name.span,
        `No opening joins ${name.text} to ${first.text} within floor ${floor.name.text}, so it is laid ` +
          'as an area of its own. If there is one, write it under its wall: ' +
          `${samplesIn('door 30", 1\' 2" from left', units)}, to ${first.text}.`,
      ),
    )
}

function reachedFrom(start: string, joins: AreaParts['joins']): ReadonlySet<string> {
  const bothWays = joins.flatMap(([a, b]) => [[a, b] as const, [b, a] as const])
  const joined = Map.groupBy(bothWays, ([from]) => from)
  const reached = new Set([start])
  for (const key of reached) for (const [, next] of joined.get(key) ?? []) reached.add(next)
  return reached
}

/** Places where the floor ends with nothing said of how. */
function edgesWithoutKind(floor: Floor, parts: AreaParts): Message[] {
  return parts.transitions
    .filter(({ kind }) => kind === null)
    .map(({ label, span }) => {
      const trim = label.endsWith(' to stair') ? 'stair nosing' : 't moulding'
      const text =
        `Nothing says what floor ${floor.name.text} meets at ${label}. ` +
        `Write it in the floor: edge ${label}, with ${trim}.`
      return message('note', 'edge-without-kind', span ?? floor.name.span, text)
    })
}

/** How many walls a sentence names. */
const NAMED = 3

function wallsWithoutKind(floor: Floor, parts: AreaParts, rim: readonly RimEdge[]): Message[] {
  const endings = new Set(parts.transitions.map(({ label }) => label))
  const walls = rim.filter(({ kind, label }) => kind === null && !endings.has(label))
  const labels = [...new Set(walls.map(({ label }) => label))]
  if (labels.length === 0) return []
  const more = labels.length > NAMED ? ` and ${labels.length - NAMED} more` : ''
  const text =
    `Nothing says what becomes of the base at ${labels.slice(0, NAMED).join(', ')}${more}: floor ` +
    `${floor.name.text} keeps the product's gap there. A line in the room says it: base off and back.`
  return [message('note', 'base-not-said', floor.name.span, text)]
}
