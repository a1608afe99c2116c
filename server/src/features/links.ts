import { WARNING_CODES } from '../facts/codes.ts'
import type { Span } from '../facts/span.ts'
import { resolveInclude } from '../job/include-path.ts'
import type { Tree } from '../language/tree.ts'

/** Where a stretch of the text leads to. */
export interface Link {
  readonly span: Span
  readonly to: /** A file, as the job calls it. */
    | { readonly kind: 'file'; readonly path: string }
    /** A heading of the reference page: the code of a message. */
    | { readonly kind: 'reference'; readonly heading: string }
}

/** The includes of a file and the warnings that it accepts, in written order. */
export function links(tree: Tree, root: string): readonly Link[] {
  return tree.blocks.flatMap((block) => {
    if (block.word === 'include') return includeLink(tree, block.text, block.textSpan, root)
    return block.under.flatMap((line) => (line.word === 'accept' ? codeLink(line.phrases) : []))
  })
}

function includeLink(tree: Tree, text: string, span: Span, root: string): readonly Link[] {
  const found = text === '' ? null : resolveInclude(text, tree.file, root)
  return found?.kind === 'path' ? [{ span, to: { kind: 'file', path: found.path } }] : []
}

function codeLink(phrases: Tree['blocks'][number]['phrases']): readonly Link[] {
  const name = phrases.find(({ form }) => form === 'NAME')?.names[0]
  if (name === undefined) return []
  const heading = name.key.replaceAll(' ', '-')
  return WARNING_CODES.includes(heading)
    ? [{ span: name.span, to: { kind: 'reference', heading } }]
    : []
}
