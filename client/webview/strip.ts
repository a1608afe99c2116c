import type { StripItem } from '../../server/src/features/preview/picture.ts'
import { h } from './elements.ts'
import type { Shown } from './keyed-list.ts'

/** One thing told over the drawing; a button where it is about something that can be shown. */
export function stripItem(choose: (item: StripItem) => void): Shown<StripItem, HTMLLIElement> {
  return {
    make: () => h('li'),
    fill: (element, item) => {
      const said = [
        h('span', { class: 'label' }, item.label),
        ' ',
        h('strong', { class: 'amount' }, item.text),
      ]
      element.className = `item ${item.about.replaceAll(' ', '-')} ${item.weight}`
      const old = element.firstElementChild
      if (item.shapes.length === 0) return element.replaceChildren(h('span', {}, ...said))
      const button = old instanceof HTMLButtonElement ? old : h('button', { type: 'button' })
      button.replaceChildren(...said)
      button.onclick = () => choose(item)
      if (button !== old) element.replaceChildren(button)
    },
  }
}
