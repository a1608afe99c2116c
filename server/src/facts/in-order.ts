import type { Message } from './message.ts'

/** A message and where it stands: the place of its file among all files, and its offset there. */
interface Placed {
  readonly one: Message
  readonly file: number
  readonly start: number
}

/**
 * Messages by file in the order of the list, then by place, then by code; one that is said twice is kept
 * once. What is in no file of the list counts with the first.
 */
export function inOrder(
  messages: readonly Message[],
  files: readonly string[],
): readonly Message[] {
  const rank = new Map(files.map((file, index) => [file, index]))
  const placed = messages.map((one): Placed => {
    const { file, start } = one.span
    return { one, file: rank.get(file) ?? 0, start }
  })
  placed.sort(compare)
  const ordered: Message[] = []
  for (let first = 0; first < placed.length; ) {
    let end = first + 1
    while (end < placed.length && compare(placed[first]!, placed[end]!) === 0) end += 1
    if (end === first + 1) ordered.push(placed[first]!.one)
    else ordered.push(...saidOnce(placed.slice(first, end)))
    first = end
  }
  return ordered
}

function compare(a: Placed, b: Placed): number {
  return a.file - b.file || a.start - b.start || order(a.one.code, b.one.code)
}

function order(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}

/** Of messages at one place that say the same the last, where the first of them stood. */
function saidOnce(placed: readonly Placed[]): Iterable<Message> {
  return new Map(placed.map(({ one }) => [`${one.span.file}\n${one.text}`, one])).values()
}
