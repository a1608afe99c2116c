/** A promise that a text broke. */
export interface Fault {
  /** In words that make a file's name: shrinking keeps to a text that breaks the same one. */
  readonly promise: string
  readonly detail: string
}

/** What is thrown inside a check once a promise is broken. */
export class Broken extends Error implements Fault {
  readonly promise: string
  readonly detail: string

  constructor(promise: string, detail: string) {
    super(`${promise}: ${detail}`)
    this.promise = promise
    this.detail = detail
  }
}

/** Breaks off when a promise does not hold. */
export function hold(kept: boolean, promise: string, detail: () => string): void {
  if (!kept) throw new Broken(promise, detail())
}

/** What a stage gives; that it throws is a fault named for the stage. */
export function unthrown<T>(stage: string, run: () => T): T {
  try {
    return run()
  } catch (error) {
    const said = error instanceof Error ? (error.stack ?? error.message) : String(error)
    throw new Broken(`${stage} throws`, said.split('\n').slice(0, 6).join(' '))
  }
}

/** The fault that a check breaks off with, or null. */
export function faultOf(check: () => void): Fault | null {
  try {
    check()
    return null
  } catch (error) {
    if (error instanceof Broken) return error
    throw error
  }
}
