import { WARNING_CODES } from '../../facts/codes.ts'
import type { Block, Tree } from '../../language/tree.ts'
import { blockEnd } from '../place/block-end.ts'
import { blockAt } from '../place/entries.ts'
import { homeOf } from '../place/line-scope.ts'
import { lineStart } from '../writing/line-start.ts'
import { endingOf } from './ending.ts'
import { type Asked, type Repair, repair } from './repair.ts'

/** For a warning that was looked at: the line that settles it, in the block where it stands or for the job. */
export function acceptRepairs(asked: Asked): readonly Repair[] {
  const { view, message, place } = asked
  const { weight, code, accepted } = message
  if (weight !== 'warning' || accepted || !WARNING_CODES.includes(code)) return []
  const block = acceptingBlock(view.tree, place.start)
  if (block === null) return []
  const name = code.replaceAll('-', ' ')
  const end = blockEnd(view.tree, block)
  const span = { file: view.file, start: end, end }
  const text = `${endingOf(view.tree)}${lineStart(2, 'accept')}${name}`
  const where = block.word === 'job' ? 'the job' : `${block.word} ${block.name?.text ?? ''}`.trim()
  return [
    repair(asked, 'accept', `It is right as it stands: accept ${name} in ${where}`, [
      { span, text },
    ]),
  ]
}

function acceptingBlock(tree: Tree, offset: number): Block | null {
  const block = blockAt(tree, offset)
  if (block !== null && homeOf(block) !== null) return block
  return tree.blocks.find(({ word }) => word === 'job') ?? null
}
