import { same, sameThings } from './same.ts'

/** What so many runs one after the other did not ask for is dropped; an undo finds its own until then. */
const RUNS = 3

/** What one stage worked out in earlier runs, by a key that stands for all that it was worked out from. */
export class Shelf<Key, Value> {
  private readonly entries = new Map<Key, { readonly value: Value; used: number }>()
  private run = 0

  /** Ends a run. Going over all entries costs as much as a stage, so it is done every few runs. */
  turn(): void {
    this.run += 1
    if (this.run % RUNS !== 0) return
    for (const [key, { used }] of this.entries) if (used < this.run - RUNS) this.entries.delete(key)
  }

  get(key: Key): Value | undefined {
    const entry = this.entries.get(key)
    if (entry === undefined) return undefined
    entry.used = this.run
    return entry.value
  }

  set(key: Key, value: Value): Value {
    this.entries.set(key, { value, used: this.run })
    return value
  }

  drop(key: Key): void {
    this.entries.delete(key)
  }
}

/** The value of an earlier run where it is made of the same, so that later steps know it for the same. */
export function asBefore<Key, Value>(
  shelf: Shelf<Key, Value> | undefined,
  key: Key,
  value: Value,
): Value {
  const before = shelf?.get(key)
  if (before !== undefined && same(before, value)) return before
  return shelf?.set(key, value) ?? value
}

/** What was made in an earlier run, and what it was made from. */
export interface Made<Value> {
  readonly given: readonly unknown[]
  readonly value: Value
}

/** Made, or taken as it was made before for this key where it is given the very same things. */
export function madeAgain<Key, Value>(
  shelf: Shelf<Key, Made<Value>> | undefined,
  key: Key,
  given: readonly unknown[],
  make: () => Value,
): Value {
  if (shelf === undefined) return make()
  const before = shelf.get(key)
  if (before !== undefined && sameThings(before.given, given)) return before.value
  return shelf.set(key, { given, value: make() }).value
}
