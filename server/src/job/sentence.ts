/** How the messages of this folder put names and numbers into a sentence. */

/** A name, in quotes where a blank would let it run into its neighbours. */
export function said(name: string): string {
  return name.includes(' ') ? `"${name}"` : name
}

/** "a", "a or b", "a, b or c". */
export function oneOf(parts: readonly string[]): string {
  return listed(parts, 'or')
}

/** "a", "a and b", "a, b and c". */
export function allOf(parts: readonly string[]): string {
  return listed(parts, 'and')
}

/** A sentence lists so many things; of a longer list it tells how many more there are. */
const MOST_LISTED = 12

function listed(parts: readonly string[], last: string): string {
  const more = parts.length - MOST_LISTED
  if (more > 1) return `${parts.slice(0, MOST_LISTED).join(', ')} ${last} ${more} more`
  if (parts.length < 2) return parts.join('')
  return `${parts.slice(0, -1).join(', ')} ${last} ${parts[parts.length - 1]}`
}

const NUMBERS = ['No', 'One', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine']

/** A small number as the first word of a sentence. */
export function numberWord(n: number): string {
  return NUMBERS[n] ?? `${n}`
}

/** "1 box", "2 boxes". */
export function counted(n: number, one: string, many = `${one}s`): string {
  return `${n} ${n === 1 ? one : many}`
}
