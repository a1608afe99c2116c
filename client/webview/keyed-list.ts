import { type ListChange, listChange } from '../../server/src/features/preview/list-change.ts'

interface Keyed {
  readonly id: string
}

/** How one item of a list is shown. */
export interface Shown<T, N extends Element> {
  /** An empty element for any item. */
  readonly make: () => N
  /** Makes it show the item, whatever it showed before. */
  readonly fill: (element: N, item: T) => void
}

/**
 * Children of an element, one for each item of a list and in its order. A change touches the elements of
 * the items that it names and no other; an element stays the same one as long as its item is there, so
 * that focus and pointer stay on it.
 */
export class KeyedList<T extends Keyed, N extends Element> {
  private readonly known = new Map<string, { item: T; readonly element: N }>()
  readonly parent: Element
  private readonly shown: Shown<T, N>

  constructor(parent: Element, shown: Shown<T, N>) {
    this.parent = parent
    this.shown = shown
  }

  item(id: string): T | null {
    return this.known.get(id)?.item ?? null
  }

  element(id: string): N | null {
    return this.known.get(id)?.element ?? null
  }

  /** In no particular order. */
  items(): readonly T[] {
    return [...this.known.values()].map(({ item }) => item)
  }

  get size(): number {
    return this.known.size
  }

  /** In the order of the list. Cost: the whole list. */
  inOrder(): readonly T[] {
    const shown = [...this.known.values()]
    const items = new Map(shown.map(({ item, element }) => [element as Element, item]))
    return [...this.parent.children].flatMap((child) => items.get(child) ?? [])
  }

  replace(items: readonly T[]): void {
    this.change(listChange(this.inOrder(), items))
  }

  change({ gone, put }: ListChange<T>): void {
    for (const id of gone) {
      this.known.get(id)?.element.remove()
      this.known.delete(id)
    }
    for (const { item, after } of put) {
      const element = this.show(item)
      if (after === 'stays') {
        if (element.parentNode === null) this.parent.append(element)
        continue
      }
      const before = after.id === null ? null : this.element(after.id)
      if (before === null) this.parent.prepend(element)
      else before.after(element)
    }
  }

  /** Shows every item anew, where something that all of them share is another now. */
  refill(): void {
    for (const { item, element } of this.known.values()) this.shown.fill(element, item)
  }

  private show(item: T): N {
    const known = this.known.get(item.id)
    if (known !== undefined) {
      known.item = item
      this.shown.fill(known.element, item)
      return known.element
    }
    const element = this.shown.make()
    this.known.set(item.id, { item, element })
    this.shown.fill(element, item)
    return element
  }
}
