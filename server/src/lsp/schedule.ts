import type { Surroundings } from './surroundings.ts'

/** As long as one slice of work may last: a hover waits no longer for its turn. */
const SLICE_MS = 5

/** Work that is done in steps, and can be left at any of them. */
export interface Steps {
  /** Does the next step; false when there is nothing to do for now. */
  step(): boolean
}

/** Does work in slices, so that whatever comes in between is answered first. The newest goes first. */
export class Schedule {
  readonly #surroundings: Surroundings
  #due: Steps[] = []
  #isTurning = false

  constructor(surroundings: Surroundings) {
    this.#surroundings = surroundings
  }

  add(work: Steps): void {
    this.drop(work)
    this.#due.push(work)
    if (this.#isTurning) return
    this.#isTurning = true
    this.#surroundings.soon(() => this.#turn())
  }

  drop(work: Steps): void {
    this.#due = this.#due.filter((one) => one !== work)
  }

  #turn(): void {
    const end = this.#surroundings.now() + SLICE_MS
    do {
      const work = this.#due.at(-1)
      if (work !== undefined && !work.step()) this.drop(work)
    } while (this.#due.length > 0 && this.#surroundings.now() < end)
    this.#isTurning = this.#due.length > 0
    if (this.#isTurning) this.#surroundings.soon(() => this.#turn())
  }
}
