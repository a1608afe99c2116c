import { WARNING_CODES } from '../../facts/codes.ts'
import type { Message } from '../../facts/message.ts'
import type { Span } from '../../facts/span.ts'
import type { Block } from '../../language/tree.ts'
import { blockEnd } from '../place/block-end.ts'
import type { View } from '../view.ts'
import type { NameChoice } from './name-choice.ts'

/**
 * The warnings that stand in the job and that a line of this block would settle. An accept line that is
 * still being typed holds its room up, and what was `said` of the job before it counts as well; where
 * nothing stands, every warning may be named.
 */
export function accepting(
  view: View,
  block: Block,
  said: readonly Message[],
): readonly NameChoice[] {
  const messages = [...(view.counted ?? view.measured).messages, ...said]
  const { file, start } = block.line.span
  const scope: Span = { file, start, end: blockEnd(view.tree, block) }
  const isHere = ({ span }: Message): boolean =>
    block.word === 'job' ||
    (span.file === scope.file && span.start >= scope.start && span.start <= scope.end)
  const open = messages.filter(
    (message) => message.weight === 'warning' && !message.accepted && isHere(message),
  )
  const byCode = new Map(open.map(({ code, text }) => [code, text]))
  if (byCode.size === 0) return WARNING_CODES.map((code) => choice(code, 'A warning.'))
  return [...byCode].map(([code, text]) => choice(code, text))
}

function choice(code: string, detail: string): NameChoice {
  return { name: code.replaceAll('-', ' '), kind: 'warning', detail }
}
