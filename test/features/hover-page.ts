import type { Hover } from '../../server/src/features/hover.ts'
import { hover } from '../../server/src/features/hover.ts'
import { textAt } from '../../server/src/features/place/text-at.ts'
import type { View } from '../../server/src/features/view.ts'
import { placeIn } from '../../server/src/report/place.ts'

/** An explanation as plain lines: the kind of each part and its text; readings with their line. */
export function hoverLines(view: View, { parts }: Hover): readonly string[] {
  return parts.flatMap((part) => {
    if (part.kind !== 'steps') return [`${part.kind}: ${part.text}`]
    return part.lines.map(({ depth, text, span }) => {
      const tree = view.measured.trees.find(({ file }) => file === span?.file)
      const where = span === null || tree === undefined ? '' : ` @${placeIn(tree, span.start).line}`
      return `  ${'  '.repeat(depth)}- ${text}${where}`
    })
  })
}

/** Every explanation of a file, each once, in the order of the text: what is explained, and how. */
export function hoverPage(view: View): string {
  const seen = new Set<number>()
  const lines: string[] = []
  for (let offset = 0; offset <= view.tree.text.length; offset++) {
    const found = hover(view, offset)
    const key = found === null ? -1 : found.span.start * 100_000 + found.span.end
    if (found === null || seen.has(key)) continue
    seen.add(key)
    const { line, column } = placeIn(view.tree, found.span.start)
    lines.push(`${line}:${column} [${textAt(view.measured, found.span)}]`)
    lines.push(...hoverLines(view, found).map((said) => `    ${said}`))
  }
  return `${lines.join('\n')}\n`
}
