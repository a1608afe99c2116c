import { defineConfig } from 'vitest/config'

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['test/**/*.test.ts'],
    passWithNoTests: false,
    allowOnly: false,
    testTimeout: 60_000,
    reporters: ['default', new URL('tally.ts', import.meta.url).pathname],
  },
})
