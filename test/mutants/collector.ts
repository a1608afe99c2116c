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

  #add(name: string, run: () => unknown): void {
    const suite = this.#suite
    this.tests.push({ id: `${suite}#${this.tests.length + 1} ${name}`, suite, run })
  }
}

function withEach(declare: Declare) {
  const each =
    (table: readonly unknown[]) =>
    (name: string, body: Body): void => {
      for (const row of table) {
        const values = (Array.isArray(row) ? row : [row]) as never[]
        declare(name, () => body(...values))
      }
    }
  return Object.assign(declare, { each })
}
