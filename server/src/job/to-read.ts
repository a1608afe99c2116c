import { message } from '../facts/message.ts'
import type { Binding } from './binding.ts'
import type { Reading, Room } from './job.ts'
import { allOf } from './sentence.ts'

/** A reading and what it is a reading of, in words. */
interface Named {
  readonly what: string
  readonly reading: Reading
}

/**
 * Lists what a room still waits for: one message for all readings to be taken, one for all to be
 * taken again, so that a room just begun shows two lines and not twenty.
 */
export function sayWhatToRead(room: Room, binding: Binding): void {
  const doubtful = readingsOf(room).filter(({ reading }) => reading.doubtful)
  const open = doubtful.filter(({ reading }) => reading.nm === null)
  const again = doubtful.filter(({ reading }) => reading.nm !== null)
  say('readings-to-take', `Still to be read in ${room.name.text}`, open, binding)
  say('readings-to-take-again', `To be read again in ${room.name.text}`, again, binding)
}

function say(code: string, head: string, open: readonly Named[], binding: Binding): void {
  const [first, ...others] = open
  if (first === undefined) return
  const names = [...new Set(open.map(({ what }) => what))]
  const related = others.map(({ what, reading }) => ({ span: reading.span, text: `${what}.` }))
  const text = `${head}: ${allOf(names)}.`
  binding.say(message('incomplete', code, first.reading.span, text, { related }))
}

function readingsOf(room: Room): readonly Named[] {
  return [
    ...room.walls.filter((wall) => !wall.broken).flatMap(ofWall),
    ...[...room.openings, ...room.recesses].flatMap(ofPlace),
    ...room.recesses.flatMap((recess) => [
      ...named(`depth of the ${recess.label}`, recess.deep),
      ...named(`inside width of the ${recess.label}`, recess.inside),
      ...named(`left return of the ${recess.label}`, recess.leftReturn),
      ...named(`right return of the ${recess.label}`, recess.rightReturn),
    ]),
    ...room.obstacles.flatMap((obstacle) => [
      ...[obstacle.round, obstacle.eastWest, obstacle.northSouth].flatMap((reading) =>
        named(`size of the ${obstacle.label}`, reading),
      ),
      ...obstacle.from.flatMap(({ distance }) => named(`place of the ${obstacle.label}`, distance)),
    ]),
    ...room.checks.flatMap((check) =>
      check.kind === 'square' ? [] : named(checkNamed(check.kind), check.reading),
    ),
  ]
}

function ofWall(wall: Room['walls'][number]): readonly Named[] {
  const parts = wall.parts.flatMap(({ reading }) => named(`parts of ${wall.label}`, reading))
  return [...named(wall.label, wall.reading), ...parts]
}

function ofPlace(thing: {
  readonly kind: string
  readonly label: string
  readonly place: Room['openings'][number]['place']
}): readonly Named[] {
  // An open side and a thing in parts are as wide as readings that are listed by themselves.
  if (thing.place === null || thing.kind === 'open side') return []
  return [
    ...named(`width of the ${thing.label}`, thing.place.width),
    ...named(`place of the ${thing.label}`, thing.place.distance),
  ]
}

function named(what: string, reading: Reading | null): readonly Named[] {
  if (reading === null) return []
  return [reading, ...reading.again].map((one) => ({ what, reading: one }))
}

function checkNamed(kind: 'diagonal' | 'across' | 'corner tie' | 'room tie'): string {
  return kind === 'diagonal' ? 'a diagonal' : kind === 'across' ? 'a width across' : 'a tie'
}
