import { same, sameThings } from './same.ts'

/** What so many runs one after the other did not ask for is dropped; an undo finds its own until then. */
const RUNS = 3

/** What one stage worked out in earlier runs, by a key that stands for all that it was worked out from. */
export class Shelf<Key, Value> {
  private runs: Map<Key, Value>[] = [new Map()]

  /** Ends a run. */
  turn(): void {
    this.runs = [new Map(), ...this.runs.slice(0, RUNS - 1)]
  }

  get(key: Key): Value | undefined {
    for (const run of this.runs) {
      const value = run.get(key)
      if (value === undefined) continue
      this.runs[0]!.set(key, value)
      return value
    }
    return undefined
  }

  drop(key: Key): void {
    for (const run of this.runs) run.delete(key)
  }

  set(key: Key, value: Value): Value {
    this.runs[0]!.set(key, value)
    return value
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
