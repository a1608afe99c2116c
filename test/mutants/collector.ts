import { expect } from 'vitest'

export interface Test {
  readonly id: string
  readonly suite: string
  readonly run: () => unknown
}

type Body = (...values: never[]) => unknown
type Declare = (name: string, body: Body) => void

/**
 * Stands in for Vitest's own `describe`, `test` and hooks: it lists the tests of one suite in the order
 * written, each with a name that no other test has. `expect` is Vitest's.
 */
export class Collector {
  readonly tests: Test[] = []
  readonly #suite: string
  readonly #names = new Map<string, number>()

  constructor(suite: string) {
    this.#suite = suite
  }

  /** What `import … from 'vitest'` gives to a suite. */
  get vitest() {
    const test = withEach((name, body) => this.#add(name, body as () => unknown))
    const describe = withEach((_, body) => void (body as () => unknown)())
    return { expect, test, it: test, describe, ...this.#hooks }
  }

  /** A hook before all is a test that comes first and must pass; one after all is of no use here. */
  get #hooks() {
    return { beforeAll: (body: () => unknown) => this.#add('before all', body), afterAll: () => {} }
  }

  /** By its name and not by its place: another test before it does not make it another one. */
  #add(name: string, run: () => unknown): void {
    const suite = this.#suite
    const alike = this.#names.get(name) ?? 0
    this.#names.set(name, alike + 1)
    this.tests.push({ id: `${suite}#${name}${alike === 0 ? '' : ` (${alike + 1})`}`, suite, run })
  }
}

function withEach(declare: Declare) {
  const each =
    (table: readonly unknown[]) =>
    (name: string, body: Body): void => {
      for (const row of table) {
        const values = (Array.isArray(row) ? row : [row]) as never[]
        declare(`${name}: ${shown(values[0])}`, () => body(...values))
      }
    }
  return Object.assign(declare, { each })
}

/** Enough of a row to tell it from the others as a rule. */
function shown(value: unknown): string {
  return typeof value === 'string' || typeof value === 'number' ? `${value}` : typeof value
}
