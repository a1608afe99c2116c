// Takes the README's picture of the editor, with the example open and its plan beside it.
import { fileURLToPath } from 'node:url'
import { launchBrowser } from '../browser/launch.ts'
import { startHosted } from './hosted.ts'
import { until } from './suite/wait.ts'
import { openWindow } from './window.ts'
import { newWorkspace } from './workspace.ts'

const PICTURE = fileURLToPath(new URL('../../client/media/editor.png', import.meta.url))
/** Where the cursor stands: the north wall of the west room, lit in the plan. */
const LINE = 25

const hosted = await startHosted()
const browser = await launchBrowser()
const workspace = newWorkspace({ 'workbench.activityBar.location': 'hidden' })
try {
  const page = await browser.newPage({ viewport: { width: 1360, height: 860 } })
  const file = workspace.path('upper-floor.floor')
  const window = await openWindow(page, hosted.address({ folder: workspace.folder, file }))
  await window.command('View: Hide Secondary Side Bar')
  await window.command('View: Toggle Primary Side Bar Visibility')
  await window.command('Floorscribe: Show the Plan Beside')
  const plan = await window.plan()
  await until('the boxes are counted', async () => /\d boxes/.test(await window.status()))
  await window.goToLine(LINE, 15)
  await until('the wall lights up', async () => (await plan.locator('.lit').count()) > 0)
  await page.waitForTimeout(1000)
  await page.screenshot({ path: PICTURE })
  console.log(PICTURE)
} finally {
  await browser.close()
  hosted.stop()
  workspace.remove()
}
