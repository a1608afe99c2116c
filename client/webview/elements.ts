import type { Element as Drawn } from '../../server/src/report/svg/element.ts'
import { visible } from '../../server/src/report/visible.ts'

const SVG = 'http://www.w3.org/2000/svg'

/** Attributes of the page's own elements; null leaves one out. */
type Attributes = Readonly<Record<string, string | null>>

/** An element of the page. Text among its children is always text: nothing of it is read as markup. */
export function h<K extends keyof HTMLElementTagNameMap>(
  name: K,
  attributes: Attributes = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(name)
  for (const [key, value] of Object.entries(attributes))
    if (value !== null) element.setAttribute(key, value)
  element.append(...children.map((child) => (typeof child === 'string' ? visible(child) : child)))
  return element
}

export function svg<K extends keyof SVGElementTagNameMap>(
  name: K,
  attributes: Attributes = {},
): SVGElementTagNameMap[K] {
  const element = document.createElementNS(SVG, name)
  for (const [key, value] of Object.entries(attributes))
    if (value !== null) element.setAttribute(key, value)
  return element
}

/** What the drawing's renderer made, as elements of the page. Names and attributes' names are ours. */
export function made({ name, attributes, children }: Drawn): SVGElement {
  const element = document.createElementNS(SVG, name) as SVGElement
  for (const [key, value] of attributes) element.setAttribute(key, value)
  for (const child of children)
    element.appendChild(
      typeof child === 'string' ? document.createTextNode(visible(child)) : made(child),
    )
  return element
}
