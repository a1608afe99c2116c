import { at } from '../place/at.ts'
import { writtenName } from '../writing/written-name.ts'
import { endingOf } from './ending.ts'
import { type Asked, type Repair, repair } from './repair.ts'

/** For a room that there is not: the line that is enough while it is not measured. */
export function newRoomRepairs(asked: Asked): readonly Repair[] {
  const { view, place } = asked
  const { name, block } = at(view.tree, place.start)
  // A floor lists rooms that are measured; a door may lead to any.
  if (name?.kind !== 'room' || block?.word !== 'room') return []
  const { text } = view.tree
  const line = `room ${writtenName(name.name.text)}`
  const end = text.length
  const ending = endingOf(view.tree)
  const gap = /[\r\n]$/.test(text) ? ending : `${ending}${ending}`
  const span = { file: view.file, start: end, end }
  return [
    repair(asked, 'choice', `Add the line: ${line}`, [{ span, text: `${gap}${line}${ending}` }]),
  ]
}
