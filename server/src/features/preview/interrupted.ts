import { allLines } from '../../job/lines.ts'
import type { Block } from '../../language/tree.ts'
import type { Measured } from '../../report/compiled.ts'
import type { View } from '../view.ts'
import type { Picture } from './picture.ts'

/**
 * Whether the text cannot be read just now and something that was drawn would vanish for it: a room, or
 * a floor's planks. What is taken out of the text on purpose, or still to be read, is no interruption.
 */
export function isInterrupted(view: View, last: Picture): boolean {
  return losesRoom(view.measured, last) || losesFloor(view, last)
}

function losesRoom({ survey, trees }: Measured, last: Picture): boolean {
  const drawn = last.scene.shapes.flatMap(({ kind, id }) => (kind === 'room' ? [id] : []))
  const now = new Map(survey.rooms.map((room) => [`room ${room.room.name.key}`, room]))
  const blocks = trees.flatMap((tree) => tree.blocks)
  return drawn.some((id) => {
    const room = now.get(id)
    if (room === undefined) return blocks.some(({ broken }) => broken)
    if (room.status === 'measured') return false
    return room.room.broken || blocks.some((block) => isOf(block, room.room.name.key))
  })
}

/** A room's block with a line that cannot be read. */
function isOf(block: Block, key: string): boolean {
  return block.word === 'room' && block.name?.key === key && hasBrokenLine(block)
}

function losesFloor({ measured, counted }: View, last: Picture): boolean {
  const blocks = measured.trees.flatMap((tree) => tree.blocks)
  const stands = new Set(
    counted === null
      ? measured.job.floors.flatMap((floor) => (floor.broken ? [] : [floor.name.text]))
      : counted.floors.map(({ published }) => published.floor),
  )
  const isLost = last.floors.some(({ id }) => !stands.has(id))
  return isLost && blocks.some((block) => block.word !== 'room' && hasBrokenLine(block))
}

function hasBrokenLine(block: Block): boolean {
  return block.broken || allLines(block.under).some((line) => line.broken)
}
