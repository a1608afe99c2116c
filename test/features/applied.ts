import type { Edit } from '../../server/src/features/view.ts'

/** Texts by file after edits, which may not lie over each other. */
export function applied(
  texts: ReadonlyMap<string, string>,
  edits: readonly Edit[],
): ReadonlyMap<string, string> {
  const byFile = Map.groupBy(edits, ({ span }) => span.file)
  for (const file of byFile.keys()) {
    if (!texts.has(file)) throw new Error(`an edit of ${file}, which there is not`)
  }
  return new Map([...texts].map(([file, text]) => [file, editedText(text, byFile.get(file) ?? [])]))
}

function editedText(text: string, edits: readonly Edit[]): string {
  let written = ''
  let from = 0
  for (const { span, text: put } of [...edits].sort((a, b) => a.span.start - b.span.start)) {
    if (span.start < from) throw new Error('edits lie over each other')
    written += text.slice(from, span.start) + put
    from = span.end
  }
  return written + text.slice(from)
}
