import { readFile, writeFile } from 'node:fs/promises'
import { Script } from 'node:vm'
import type { MutantCoverage } from '@stryker-mutator/api/core'
import {
  type DryRunResult,
  DryRunStatus,
  type MutantRunOptions,
  type MutantRunResult,
  MutantRunStatus,
  type TestResult,
  type TestRunner,
  TestStatus,
} from '@stryker-mutator/api/test-runner'
import { type Bundle, bundled } from './bundle.ts'
import { Collector, type Test } from './collector.ts'
import { suitesOf } from './suites.ts'

/** What the instrumented source reads and writes, under `globalThis.__stryker__`. */
interface Switchboard {
  activeMutant: string | undefined
  currentTestId: string | undefined
  hitCount: number | undefined
  hitLimit: number | undefined
  mutantCoverage: MutantCoverage | undefined
}

const BLANK_BOARD: Readonly<Switchboard> = {
  activeMutant: undefined,
  currentTestId: undefined,
  hitCount: undefined,
  hitLimit: undefined,
  mutantCoverage: undefined,
}

/** A test, or the loading of its suite, and how many milliseconds it may take. */
interface Timed extends Pick<Test, 'id' | 'run'> {
  readonly limit: number
}

const world = globalThis as { __stryker__?: Switchboard; watchedWork?: () => unknown }

/**
 * Runs the suites of one folder for one mutant after another inside one process. The source and the tests
 * are bundled and compiled once, and evaluated afresh for every mutant, so that nothing is left over
 * from the one before: some 10 ms, where a run by Vitest's own workers costs some 300. What a suite does
 * while it is loaded counts for each of its tests. A mutant that does not end is cut off in place.
 */
class InProcess implements TestRunner {
  readonly #folder = process.env.FLOORSCRIBE_MUTANTS ?? ''
  readonly #board: Switchboard = { ...BLANK_BOARD }
  #bundle: Bundle | undefined
  #limits: ReadonlyMap<string, number> | undefined

  constructor() {
    world.__stryker__ = this.#board
  }

  capabilities() {
    return { reloadEnvironment: true }
  }

  async init(): Promise<void> {
    this.#bundle = await bundled(suitesOf(this.#folder), 'bare')
  }

  /** Twice round: once for the time that each test takes, once to see which mutants it reaches. */
  async dryRun(): Promise<DryRunResult> {
    const { tests, limits } = await this.#timed()
    await writeFile(LIMITS, JSON.stringify([...limits]))
    const mutantCoverage = { static: {}, perTest: await this.#reached() }
    return { status: DryRunStatus.Complete, tests, mutantCoverage }
  }

  async mutantRun(options: MutantRunOptions): Promise<MutantRunResult> {
    const { activeMutant, hitLimit, testFilter = [] } = options
    this.#limits ??= new Map(JSON.parse(await readFile(LIMITS, 'utf8')))
    this.#set({ activeMutant: activeMutant.id, hitLimit, hitCount: 0 })
    let nrOfTests = 0
    for await (const { id, run, limit } of this.#wanted(testFilter)) {
      nrOfTests += 1
      const failureMessage = await failureOf(run, limit)
      if (failureMessage === undefined) continue
      if (failureMessage === OUT_OF_TIME || this.#isOverLimit())
        return { status: MutantRunStatus.Timeout }
      return { status: MutantRunStatus.Killed, killedBy: [id], failureMessage, nrOfTests }
    }
    return { status: MutantRunStatus.Survived, nrOfTests }
  }

  /** The tests asked for; a suite that does not even load counts as its first test failed. */
  async *#wanted(ids: readonly string[]): AsyncGenerator<Timed> {
    const wanted = new Set(ids)
    for (const suite of this.#bundle!.suites) {
      const first = ids.find((id) => id.startsWith(`${suite}#`))
      if (first === undefined) continue
      let tests: readonly Test[] = []
      const run = () => {
        tests = load(this.#bundle!, suite)
      }
      yield { id: first, run, limit: this.#limits!.get(suite)! }
      for (const { id, run } of tests)
        if (wanted.has(id)) yield { id, run, limit: this.#limits!.get(id)! }
    }
  }

  async #timed() {
    const tests: TestResult[] = []
    const limits = new Map<string, number>()
    this.#set({})
    for (const suite of this.#bundle!.suites) {
      const from = performance.now()
      const loaded = load(this.#bundle!, suite)
      limits.set(suite, limitOf(performance.now() - from))
      for (const test of loaded) {
        const result = await resultOf(test)
        tests.push(result)
        limits.set(test.id, limitOf(result.timeSpentMs))
      }
    }
    return { tests, limits }
  }

  async #reached(): Promise<MutantCoverage['perTest']> {
    const perTest: MutantCoverage['perTest'] = {}
    const bundle = await bundled(suitesOf(this.#folder), 'counting')
    for (const suite of bundle.suites) {
      const mutantCoverage: MutantCoverage = { static: {}, perTest: {} }
      this.#set({ mutantCoverage })
      for (const { id, run } of load(bundle, suite)) {
        this.#board.currentTestId = id
        await run()
        perTest[id] = sumOf(mutantCoverage.static, mutantCoverage.perTest[id] ?? {})
      }
    }
    return perTest
  }

  #set(board: Partial<Switchboard>): void {
    Object.assign(this.#board, BLANK_BOARD, board)
  }

  #isOverLimit(): boolean {
    const { hitCount = 0, hitLimit = Number.POSITIVE_INFINITY } = this.#board
    return hitCount > hitLimit
  }
}

function load(bundle: Bundle, suite: string): readonly Test[] {
  const collector = new Collector(suite)
  bundle.evaluate(suite, collector)
  return collector.tests
}

async function resultOf({ id, suite: fileName, run }: Test): Promise<TestResult> {
  const from = performance.now()
  const failureMessage = await failureOf(run, LONGEST_TEST)
  const timeSpentMs = performance.now() - from
  const result = { id, name: id, fileName, timeSpentMs }
  return failureMessage === undefined
    ? { ...result, status: TestStatus.Success }
    : { ...result, status: TestStatus.Failed, failureMessage }
}

const LONGEST_TEST = 60_000

/** How long each suite and test may take with a mutant: kept beside the copy of the source. */
const LIMITS = 'mutant-limits.json'
const limitOf = (milliseconds: number): number => 2000 + 5 * Math.ceil(milliseconds)

const OUT_OF_TIME = 'out of time'
const WATCHED = new Script('watchedWork()')

/**
 * Why the work fails, if it does; the part of it that waits for nothing is cut off after `timeout` ms. On
 * a machine that is busy with other things it gets longer, until it had `enough` ms to itself.
 */
async function failureOf(
  work: () => unknown,
  timeout: number,
  enough = timeout / 10,
): Promise<string | undefined> {
  const before = process.cpuUsage()
  world.watchedWork = work
  try {
    await WATCHED.runInThisContext({ timeout })
    return undefined
  } catch (error) {
    const { code } = error as { code?: string }
    if (code !== 'ERR_SCRIPT_EXECUTION_TIMEOUT') return String(error)
    const had = process.cpuUsage(before).user / 1000
    return had < enough ? failureOf(work, 4 * timeout, enough) : OUT_OF_TIME
  }
}

type Counts = Record<string, number>

function sumOf(one: Counts, other: Counts): Counts {
  const sum = { ...one }
  for (const [id, hits] of Object.entries(other)) sum[id] = (sum[id] ?? 0) + hits
  return sum
}

export const strykerPlugins = [
  { kind: 'TestRunner', name: 'in-process', factory: () => new InProcess() },
]
