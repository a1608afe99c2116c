import { availableParallelism } from 'node:os'
import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['test/**/*.test.ts'],
    passWithNoTests: false,
    allowOnly: false,
    testTimeout: 60_000,
    // The core keeps nothing between two jobs, and no test changes the process that it runs in: files
    // share what they import, which halves the time of a run.
    isolate: false,
    maxConcurrency: availableParallelism(),
    reporters: ['default', new URL('tally.ts', import.meta.url).pathname],
  },
})
