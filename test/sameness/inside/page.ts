import { inBrowser } from './in-browser.ts'

/** The test calls it from outside. */
Object.assign(globalThis, { inBrowser })
