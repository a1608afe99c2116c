import type { Reporter, TestCase, TestModule } from 'vitest/node'

/**
 * Closes a run with one plain line, `N passed, N failed`, and fails it when a test was skipped or left
 * for later: a suite that does not run must not look like one that passes.
 */
export default class Tally implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const tests = modules.flatMap((module) => [...module.children.allTests()])
    const count = (state: string) => tests.filter((test) => test.result().state === state).length
    const broken = modules.filter((module) => module.state() === 'failed' && !hasFailed(module))
    const skipped = tests.filter((test) => test.result().state === 'skipped')
    for (const test of skipped) console.log(`skipped, which counts as failed: ${nameOf(test)}`)
    const failed = count('failed') + broken.length + unhandled.length + skipped.length
    if (failed > 0 || tests.length === 0) process.exitCode = 1
    console.log(`\n${count('passed')} passed, ${failed} failed`)
  }
}

/** A module can fail without a failed test: it does not load, or a hook throws. */
function hasFailed(module: TestModule): boolean {
  return [...module.children.allTests()].some((test) => test.result().state === 'failed')
}

function nameOf(test: TestCase): string {
  return `${test.module.relativeModuleId}: ${test.fullName}`
}
