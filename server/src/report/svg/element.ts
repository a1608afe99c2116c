import { visible } from '../visible.ts'

/** One element of a drawing. Children that are text are always text: nothing of them is read as markup. */
export interface Element {
  readonly name: string
  readonly attributes: readonly (readonly [string, string])[]
  readonly children: readonly (Element | string)[]
}

/** What may stand as an attribute; null leaves it out. */
export type Attributes = Readonly<Record<string, string | null>>

/**
 * Builds an element. `name` and the attributes' names are ours, never a user's; attribute order is
 * the written order.
 */
export function h(
  name: string,
  attributes: Attributes,
  ...children: readonly (Element | string)[]
): Element {
  const given = Object.entries(attributes).filter(
    (pair): pair is [string, string] => pair[1] !== null,
  )
  return { name, attributes: given, children }
}

/** Elements that hold text keep it on one line, so that no blanks are added to it. */
const HOLDS_TEXT = new Set(['text', 'title', 'tspan', 'desc'])

/** The element as text, two blanks a level, one element a line. */
export function markup(element: Element, indent = ''): string {
  const attributes = element.attributes
    .map(([name, value]) => ` ${name}="${escaped(value)}"`)
    .join('')
  const open = `${indent}<${element.name}${attributes}`
  if (element.children.length === 0) return `${open}/>`
  if (HOLDS_TEXT.has(element.name)) return `${open}>${inline(element.children)}</${element.name}>`
  const inside = element.children.map((child) =>
    typeof child === 'string' ? `${indent}  ${escaped(child)}` : markup(child, `${indent}  `),
  )
  return `${open}>\n${inside.join('\n')}\n${indent}</${element.name}>`
}

function inline(children: readonly (Element | string)[]): string {
  return children
    .map((child) => (typeof child === 'string' ? escaped(child) : markup(child)))
    .join('')
}

const ENTITIES: ReadonlyMap<string, string> = new Map([
  ['&', '&amp;'],
  ['<', '&lt;'],
  ['>', '&gt;'],
  ['"', '&quot;'],
  ["'", '&#39;'],
])

function escaped(text: string): string {
  return visible(text).replace(/[&<>"']/g, (character) => ENTITIES.get(character) ?? character)
}
