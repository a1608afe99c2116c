import type { Core } from './core.ts'
import { answer } from './in-browser.ts'
import { serveOrders } from './worker.ts'

declare function importScripts(url: string): void
/** What core.js leaves behind. */
declare const FloorscribeCore: Core

serveOrders((order) =>
  answer('classic worker', order, async () => {
    importScripts('/core.js')
    return FloorscribeCore
  }),
)
