import type { Entry, Name, Token, Tree } from '../../../server/src/language/tree.ts'
import { type Edit, entriesOf, measuresOf } from './edit.ts'

/** What a token of a line is to its reader. */
export type Role = 'blank' | 'our word' | 'name' | 'figure' | 'text' | 'comment' | 'sign'

/** One edit for each token that `change` gives another text for. */
export function tokenEdits(
  tree: Tree,
  change: (token: Token, role: Role, entry: Entry | null) => string | null,
): readonly Edit[] {
  const entries = new Map(entriesOf(tree).map((entry) => [entry.line.number, entry]))
  return tree.lines.flatMap((line) => {
    const entry = entries.get(line.number) ?? null
    return line.tokens.flatMap((token) => {
      const text = change(token, roleOf(token, entry), entry)
      return text === null || text === token.text ? [] : [{ span: token.span, text }]
    })
  })
}

function roleOf(token: Token, entry: Entry | null): Role {
  if (token.kind === 'comment' || token.kind === 'text') return token.kind
  if (entry === null) return token.kind === 'blank' ? 'blank' : 'sign'
  const isIn = ({ start, end }: Edit['span']) => start <= token.span.start && token.span.end <= end
  const { textSpan, text } = entry
  if (text !== '' && isIn(textSpan)) return 'text'
  if (namesOf(entry).some(({ span }) => isIn(span))) return 'name'
  if (measuresOf(entry).some(({ span }) => isIn(span))) return 'figure'
  if (token.kind === 'blank') return 'blank'
  return ['head', 'word', 'about', 'by'].includes(token.kind) ? 'our word' : 'sign'
}

/** The names in a line, a block's own among them. */
export function namesOf(entry: Entry): readonly Name[] {
  return entry.phrases.flatMap((phrase) => phrase.names)
}
