import type { Message } from '../facts/message.ts'
import type { Span } from '../facts/span.ts'
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
  const byCode = Map.groupBy(accepts, (accept) => accept.code)
  const covers = new Map([...byCode].map(([code, of]) => [code, coverOf(of)]))
  return messages.map((message) => {
    if (message.weight !== 'warning') return message
    const accepted = covers.get(message.code)?.(message.span) ?? false
    return accepted ? { ...message, accepted } : message
  })
}

/** Whether a place lies in a block that one of these accepts stands in. */
function coverOf(accepts: readonly Accept[]): (place: Span) => boolean {
  const scopes = accepts.flatMap(({ scope }) => (scope === null ? [] : [scope]))
  if (scopes.length < accepts.length) return () => true
  // Blocks do not overlap: of those of a file only the last that begins before a place can hold it.
  const byFile = Map.groupBy(scopes, ({ file }) => file)
  for (const blocks of byFile.values()) blocks.sort((a, b) => a.start - b.start)
  return (place) => {
    const block = lastFrom(byFile.get(place.file) ?? [], place.start)
    return block !== undefined && place.end <= block.end
  }
}

function lastFrom(blocks: readonly Span[], start: number): Span | undefined {
  let low = 0
  let high = blocks.length
  while (low < high) {
    const middle = (low + high) >>> 1
    if (blocks[middle]!.start <= start) low = middle + 1
    else high = middle
  }
  return blocks[low - 1]
}
