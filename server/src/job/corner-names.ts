import { message } from '../facts/message.ts'
import type { Name } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import { unknownName } from './names.ts'
import { isUnsettled, type Outline } from './outline.ts'
import { allOf, numberWord, said } from './sentence.ts'
import { isWay } from './ways.ts'

/** A message shows so many of the corners that it speaks of. */
const MOST_RELATED = 8

/**
 * The corner that a name means: its own name, else the two ways that meet there (`north-west`) while
 * the room has just one such corner. Null, with a message, when none or several are meant; null
 * without one while a line of the room is broken.
 */
export function cornerNamed(room: Outline, name: Name, binding: Binding): number | null {
  const own = room.corners.find((corner) => corner.name.key === name.key)
  if (own !== undefined) return own.corner
  const found = isWay(name.key) ? cornersBetween(room, name.key.split('-')) : []
  if (found.length === 1) return found[0]!
  const key = `corner ${room.name.key}: ${name.key}`
  if (isUnsettled(room)) return null
  binding.sayOnce(key, name.span, () =>
    found.length > 1 ? several(room, name, found, binding) : unknownCorner(room, name, binding),
  )
  return null
}

/** Corners whose two walls face the two ways, in either order. */
function cornersBetween(room: Outline, ways: readonly string[]): readonly number[] {
  return room.walls.flatMap((_, corner) => {
    const words = wordsAround(room, corner)
    const fits = ways.length === 2 && ways.every((way) => words.includes(way))
    return fits ? [corner] : []
  })
}

function wordsAround(room: Outline, corner: number): readonly string[] {
  return [room.lines.at(corner - 1)!.word, room.lines[corner]!.word]
}

function several(room: Outline, name: Name, corners: readonly number[], binding: Binding) {
  const places = corners.map((corner) => {
    const named = room.corners.find((other) => other.corner === corner)
    const [before, after] = [room.walls.at(corner - 1)!, room.walls[corner]!]
    const where = `between ${binding.place(before.span, name.span)} and ${binding.place(after.span, name.span)}`
    return named === undefined ? where : `${named.name.text} (${where})`
  })
  const text =
    `${numberWord(corners.length)} corners of ${room.name.text} are ${name.key}: ${allOf(places)}. ` +
    'Name the one that is meant by a line between its walls, such as "corner throat", and write that name.'
  const related = corners.slice(0, MOST_RELATED).map((corner) => ({
    span: room.walls[corner]!.span,
    text: `One is where this wall begins.`,
  }))
  return message('error', 'corner-not-clear', name.span, text, { related })
}

function unknownCorner(room: Outline, name: Name, binding: Binding) {
  const help =
    'A corner is called by the ways of its two walls, such as north-west, or by a line "corner NAME" between them.'
  return unknownName(
    { kind: `corner of ${said(room.name.text)}`, name, known: room.corners, help },
    binding,
  )
}
