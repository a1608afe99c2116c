import { parsePhrases } from '../../language/grammar.ts'
import { lengthOfName } from '../../language/match.ts'
import { tokenize } from '../../language/tokens.ts'

/** A name as a line takes it: in quotes where it would not be read as one name without them. */
export function writtenName(name: string): string {
  return isPlainName(name) ? name : `"${name}"`
}

function isPlainName(name: string): boolean {
  const tokens = tokenize(name, 'phrases').filter(({ tokenType }) => tokenType.name !== 'blank')
  if (tokens.some(({ tokenType }) => NO_NAME.includes(tokenType.name))) return false
  const [items, more] = parsePhrases(tokens)
  return items !== undefined && more === undefined && lengthOfName(items, 0) === items.length
}

const NO_NAME: readonly string[] = ['open quote', 'stuck hash', 'comment']
