import type { Disposable } from 'vscode'

/** Tells whoever listens, in the order in which they came. */
export class Signal<T> {
  readonly #listeners = new Set<(value: T) => unknown>()

  readonly on = (listener: (value: T) => unknown): Disposable => {
    this.#listeners.add(listener)
    return { dispose: () => this.#listeners.delete(listener) }
  }

  fire(value: T): void {
    for (const listener of this.#listeners) listener(value)
  }
}
