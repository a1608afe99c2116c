import { INCLUDES } from './includes.ts'
import type { Law } from './law.ts'
import { NAMES } from './names.ts'
import { NOTATION } from './notation.ts'
import { OPENINGS } from './openings.ts'
import { ORDER } from './order.ts'
import { PLACE } from './place.ts'
import { PRODUCTS } from './products.ts'
import { PROMISES } from './promises.ts'
import { WRITING } from './writing.ts'

/** Every law, by what is changed. */
export const LAWS: ReadonlyMap<string, readonly Law[]> = new Map([
  ['How it is written', WRITING],
  ['Notation of lengths', NOTATION],
  ['Order', ORDER],
  ['Names', NAMES],
  ['Files', INCLUDES],
  ['Openings', OPENINGS],
  ['Place', PLACE],
  ['What is said and counts nothing', PROMISES],
  ['Products', PRODUCTS],
])

/** All laws as a page for people. */
export function tableOfLaws(): string {
  const parts = [...LAWS].map(([title, laws]) => {
    const rows = laws.map((law) => row([law.name, law.change, law.stays, law.compared]))
    return [`## ${title}`, '', row(HEAD), row(HEAD.map(() => '---')), ...rows].join('\n')
  })
  return `# The laws\n\n${parts.join('\n\n')}\n`
}

const HEAD = ['law', 'what is changed', 'what stays', 'compared']

function row(cells: readonly string[]): string {
  return `| ${cells.join(' | ')} |`
}
