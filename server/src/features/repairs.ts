import type { Message } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'
import { at } from './place/at.ts'
import { acceptRepairs } from './repairs/accept.ts'
import { closingRepairs } from './repairs/closing.ts'
import { commaRepairs } from './repairs/comma.ts'
import { lengthRepairs } from './repairs/length.ts'
import { newRoomRepairs } from './repairs/new-room.ts'
import { ontoWallRepairs } from './repairs/onto-wall.ts'
import type { Asked, Repair } from './repairs/repair.ts'
import { sureRepairs } from './repairs/sure.ts'
import type { View } from './view.ts'

export type { Repair, RepairKind } from './repairs/repair.ts'

/** What more may be done about a message than what comes with it, by its code. */
const MORE: ReadonlyMap<string, (asked: Asked) => readonly Repair[]> = new Map([
  ['length-two-ways', lengthRepairs],
  ['inch-mark-missing', lengthRepairs],
  ['comma-in-number', lengthRepairs],
  ['inches-past-twelve', lengthRepairs],
  ['feet-after-inches', lengthRepairs],
  ['fraction-too-large', lengthRepairs],
  ['closing-error', closingRepairs],
  ['opening-does-not-fit', ontoWallRepairs],
  ['name-unknown', newRoomRepairs],
  ['comma-astray', commaRepairs],
])

/**
 * What may be done about the messages that a stretch of the file touches: sure repairs first, then choices,
 * then what settles a warning. `messages` are those that are shown; else those of the view.
 */
export function repairs(
  view: View,
  { start, end }: { readonly start: number; readonly end: number },
  messages: readonly Message[] = (view.counted ?? view.measured).messages,
): readonly Repair[] {
  const touches = (place: Span): boolean =>
    place.file === view.file && place.start <= end && start <= place.end
  const asked = messages.flatMap((message): readonly Asked[] => {
    const place = placesOf(message, view).find(touches)
    return place === undefined ? [] : [{ view, message, place }]
  })
  return [
    ...asked.flatMap(sureRepairs),
    ...asked.flatMap((one) => MORE.get(one.message.code)?.(one) ?? []),
    ...asked.flatMap(acceptRepairs),
  ]
}

/** Slips that are alike are said once, with the places of the others. */
const SAID_ONCE: readonly string[] = ['length-two-ways', 'inch-mark-missing', 'name-unknown']

function placesOf({ span, code, related }: Message, { tree, file }: View): readonly Span[] {
  if (!SAID_ONCE.includes(code)) return [span]
  const others = related.filter((one) => one.span.file === file).map((one) => one.span)
  // A name that is near to the unknown one is shown where it is given: nothing is wrong there.
  return [span, ...others.filter(({ start }) => at(tree, start).name?.gives !== true)]
}
