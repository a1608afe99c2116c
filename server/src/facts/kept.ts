/** A shelf is cleared of what so many runs one after the other did not ask for: an undo finds its own. */
const RUNS = 3

/**
 * What one stage worked out in earlier runs, by a key that stands for all that it was worked out from.
 * What the last runs did not ask for is dropped, so that it never holds more than a few versions.
 */
export class Shelf<Key, Value> {
  private runs: Map<Key, Value>[] = [new Map()]

  /** Begins a run. */
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

  set(key: Key, value: Value): Value {
    this.runs[0]!.set(key, value)
    return value
  }
}
