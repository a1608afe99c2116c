import { SnippetString } from 'vscode'
import type { Insert } from '../../server/src/features/writing/insert.ts'

/** A text with places to fill in, as the editor walks through them. */
export function snippet(insert: Insert): SnippetString {
  const made = new SnippetString()
  for (const part of insert) {
    if (part.kind === 'text') made.appendText(part.text)
    else if (part.choices.length > 0) made.appendChoice([...part.choices])
    else made.appendPlaceholder(part.text)
  }
  return made
}

/** The same without the line end that it closes with. */
export function withoutLineEnd(insert: Insert): Insert {
  const last = insert[insert.length - 1]
  if (last?.kind !== 'text') return insert
  return [...insert.slice(0, -1), { kind: 'text', text: last.text.replace(/\n$/, '') }]
}
