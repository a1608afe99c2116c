import type { Insert } from '../features/writing/insert.ts'

/** A text with places to fill in, in the protocol's own notation; names may hold signs of it. */
export function snippet(insert: Insert): string {
  let stop = 0
  return insert
    .map((part) => {
      if (part.kind === 'text') return part.text.replace(/[\\$}]/g, '\\$&')
      stop += 1
      const { text, choices } = part
      if (choices.length > 0) return `\${${stop}|${choices.map(choice).join(',')}|}`
      return `\${${stop}:${text.replace(/[\\$}]/g, '\\$&')}}`
    })
    .join('')
}

/** Whether the tab key has anywhere to go. */
export function hasStops(insert: Insert): boolean {
  return insert.some(({ kind }) => kind === 'stop')
}

function choice(text: string): string {
  return text.replace(/[\\$},|]/g, '\\$&')
}
