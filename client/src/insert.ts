import { SnippetString } from 'vscode'
import type { Insert } from '../../server/src/features/insert.ts'

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
