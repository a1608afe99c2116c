/**
 * A text to be put in, with the places that the tab key walks through. Whoever writes it for an editor
 * escapes what its own notation needs; nothing here is notation.
 */
export type InsertPart =
  | { readonly kind: 'text'; readonly text: string }
  /** A place to be filled in: `text` stands there until then. */
  | { readonly kind: 'stop'; readonly text: string; readonly choices: readonly string[] }

export type Insert = readonly InsertPart[]

export function text(text: string): InsertPart {
  return { kind: 'text', text }
}

export function stop(text: string, choices: readonly string[] = []): InsertPart {
  return { kind: 'stop', text, choices }
}

/** A reading that is still to be taken. */
export const READING: InsertPart = stop('?')

/** What stands in the text before any of it is filled in. */
export function plainText(insert: Insert): string {
  return insert.map((part) => part.text).join('')
}

/** Neighbouring texts made one. */
export function joined(parts: Insert): Insert {
  const whole: InsertPart[] = []
  for (const part of parts) {
    const before = whole[whole.length - 1]
    if (part.kind === 'text' && before?.kind === 'text') {
      whole[whole.length - 1] = text(`${before.text}${part.text}`)
    } else if (part.text !== '' || part.kind === 'stop') whole.push(part)
  }
  return whole
}
