import { afterAll, beforeAll, expect, test } from 'vitest'
import { launchBrowser } from '../browser/launch.ts'
import { bundleSuite } from './bundle-suite.ts'
import { type Hosted, startHosted, suiteEnd } from './hosted.ts'
import { newWorkspace } from './workspace.ts'

/** The editor is fetched in it where it is not there yet. */
const TIMEOUT = 900_000

let hosted: Hosted
let suite: string
beforeAll(async () => {
  hosted = await startHosted()
  suite = await bundleSuite()
}, TIMEOUT)
afterAll(() => hosted.stop())

test.each(['node', 'web'] as const)(
  'a job is written, mended and counted in the editor (extension host: %s)',
  async (host) => {
    const workspace = newWorkspace()
    const browser = await launchBrowser()
    try {
      const page = await browser.newPage()
      const address = hosted.address({ folder: workspace.folder, host, suite })
      const { code, said } = await suiteEnd(page, address)
      const told = said.filter((line) => /FAILED|done:/.test(line))
      expect({ code, told: told.filter((line) => line.includes('FAILED')) }).toEqual({
        code: 0,
        told: [],
      })
      expect(told.length).toBeGreaterThan(5)
    } finally {
      await browser.close()
      workspace.remove()
    }
  },
  TIMEOUT,
)
