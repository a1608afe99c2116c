import type { Message } from '../facts/message.ts'
import type { Accept } from './job.ts'

/**
 * Marks the warnings that an `accept` line settles: same code, and inside the block that accepts it
 * (an accept of the job settles it everywhere).
 */
export function settle(
  messages: readonly Message[],
  accepts: readonly Accept[],
): readonly Message[] {
  if (accepts.length === 0) return messages
  return messages.map((message) => {
    if (message.weight !== 'warning') return message
    const accepted = accepts.some(
      (accept) => accept.code === message.code && covers(accept, message),
    )
    return accepted ? { ...message, accepted } : message
  })
}

function covers({ scope }: Accept, { span }: Message): boolean {
  if (scope === null) return true
  return scope.file === span.file && scope.start <= span.start && span.end <= scope.end
}
