import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, afterEach, beforeAll, test } from 'vitest'
import { launchBrowser } from '../browser/launch.ts'
import { type Hosted, ROOT, startHosted } from './hosted.ts'
import { until } from './suite/wait.ts'
import { type EditorWindow, openWindow } from './window.ts'
import { newWorkspace, SETTINGS, type Workspace } from './workspace.ts'

/** The editor is fetched in it where it is not there yet. */
const TIMEOUT = { timeout: 900_000 }
const PICTURES = join(ROOT, 'dist/pictures')
const EXAMPLE = 'upper-floor.floor'
const BOXES = 'river larch 44 boxes'

let hosted: Hosted
let browser: Browser
let page: Page
let workspace: Workspace
let window: EditorWindow

beforeAll(async () => {
  hosted = await startHosted()
  browser = await launchBrowser()
  workspace = newWorkspace()
  page = await browser.newPage({ viewport: { width: 1500, height: 900 } })
  const file = workspace.path(EXAMPLE)
  window = await openWindow(page, hosted.address({ folder: workspace.folder, file }))
  await counted()
  await window.command('View: Hide Secondary Side Bar')
}, TIMEOUT.timeout)

afterAll(async () => {
  await browser.close()
  hosted.stop()
  workspace.remove()
})

/** What was on the screen when a journey came to nothing. */
afterEach(async ({ task }) => {
  if (task.result?.state !== 'fail') return
  const name = task.name.replaceAll(/\W+/g, '-').slice(0, 40)
  await page.screenshot({ path: join(PICTURES, `failed-${name}.png`) })
})

async function counted(): Promise<void> {
  await until('the boxes are counted', async () => (await window.status()).includes(BOXES))
}

const squiggle = () => page.locator('.squiggly-error').first()

/** Each journey leaves the text as it found it. */
async function takeBack(): Promise<void> {
  await page.keyboard.press('Escape')
  await window.command('File: Revert File')
  await counted()
  await squiggle().waitFor({ state: 'detached' })
}

/** The number, from 1, of the first line that begins so, looked for from another one on. */
function lineOf(start: string, under = ''): number {
  const lines = readFileSync(workspace.path(EXAMPLE), 'utf8').split('\n')
  const from = lines.findIndex((line) => line.startsWith(under))
  return lines.findIndex((line, index) => index >= from && line.trimStart().startsWith(start)) + 1
}

test(
  'a wrong length, key by key, is said on its wall and in the boxes; undone, both go',
  TIMEOUT,
  async () => {
    const line = lineOf('north', 'room west room')
    await window.goToLine(line, 15)
    await page.keyboard.press('Delete')
    await page.keyboard.press('Delete')
    await page.keyboard.type('24', { delay: 60 })
    await squiggle().waitFor()
    await until('the count is no more final', async () => !(await window.status()).includes(BOXES))
    await page.keyboard.press('F8')
    await page.getByText('west room misses closing by').first().waitFor()
    await until('the cursor is at it', async () => (await window.cursorLine()) === line)
    await page.keyboard.press('Escape')
    await until('all is undone', async () => {
      await page.keyboard.press('Control+z')
      return (await window.lineText(line)).includes(`14' 0"`)
    })
    await counted()
    await squiggle().waitFor({ state: 'detached' })
  },
)

test(
  'a wall of the plan leads to its line, and the line that the cursor is on lights up',
  TIMEOUT,
  async () => {
    await window.command('Floorscribe: Show the Plan Beside')
    const plan = await window.plan()
    await window.goToLine(lineOf('east', 'room den'), 3)
    // What stands out is drawn once more, over everything else.
    const wall = plan.locator('[data-id="den: wall 1"] path:not(.felt)').first()
    const line = await wall.getAttribute('d')
    await plan.locator(`.lit path[d="${line}"]`).waitFor({ state: 'attached' })
    await plan.locator('[data-id="library: wall 2"]').first().dispatchEvent('click')
    // The page keeps the focus, as after a click of the mouse: the text is shown, and asked only then.
    await window.toText()
    const wanted = lineOf('south', 'room library')
    await until('the text is at that wall', async () => (await window.cursorLine()) === wanted)
    // The page keeps the focus that the click gave it.
    await window.toText()
  },
)

test('a piece of the plan leads to its floor', TIMEOUT, async () => {
  const plan = await window.plan()
  await plan.locator('[data-id="upstairs: piece 200"]').first().dispatchEvent('click')
  const wanted = lineOf('floor upstairs')
  await until('the text is at the floor', async () => (await window.cursorLine()) === wanted)
  await window.toText()
})

test('a room is renamed wherever it is named', TIMEOUT, async () => {
  await window.goToLine(lineOf('room den'), 7)
  await page.keyboard.press('F2')
  const box = page.locator('.rename-box input:focus')
  await box.waitFor()
  await page.keyboard.press('Control+a')
  await page.keyboard.type('study')
  await page.keyboard.press('Enter')
  await box.waitFor({ state: 'detached' })
  const line = lineOf(`opening   4'`, 'room hall')
  await window.goToLine(line)
  await until('the hall says it', async () => (await window.lineText(line)).includes('to study'))
  await counted()
  await takeBack()
})

test('a name nearly right is put right by its repair', TIMEOUT, async () => {
  const line = lineOf('rooms', 'floor upstairs')
  await window.goToLine(line)
  await page.keyboard.press('End')
  await page.keyboard.press('Backspace')
  await squiggle().waitFor()
  await page.keyboard.press('ArrowLeft')
  const repair = page.locator('.action-widget .monaco-list-row').first()
  await until('a repair is offered', async () => {
    await page.keyboard.press('Control+.')
    return repair.waitFor({ timeout: 2000 }).then(
      () => true,
      () => false,
    )
  })
  await page.keyboard.press('Enter')
  await until('the name is whole', async () => /library$/.test(await window.lineText(line)))
  await takeBack()
})

test('blanks and marks are put in order', TIMEOUT, async () => {
  const line = lineOf('west', 'room den')
  await window.goToLine(line)
  await page.keyboard.press('End')
  await page.keyboard.type('   ')
  await window.command('Format Document')
  await until('the blanks are gone', async () => /13' 6"$/.test(await window.lineText(line)))
  await takeBack()
})

/** From left, walls as they are read off the tape. */
const READ = [`12' 4"`, `10' 8 1/4"`, `12' 4 1/4"`, `10' 8"`]

test('a job with a whole room is written by the keyboard alone, and counted', TIMEOUT, async () => {
  const { keyboard } = page
  await window.command('Floorscribe: New Job')
  const asked = page.locator('.quick-input-widget')
  await asked.getByText('What is the job called?').waitFor()
  await keyboard.type('Otter Lodge')
  await keyboard.press('Enter')
  await asked.getByText('feet and inches').waitFor()
  await keyboard.press('Enter')
  await asked.getByText('Nowhere yet').waitFor()
  await keyboard.press('Enter')
  await page.locator('.view-line').getByText('Otter Lodge').first().waitFor()
  // Walls, base, and four lines of the product stand before the readings.
  for (let stop = 0; stop < 6; stop += 1) await keyboard.press('Tab')
  for (const [wall, reading] of READ.entries()) {
    if (wall > 0) await keyboard.press('Tab')
    await keyboard.type(reading, { delay: 20 })
  }
  await until('its boxes are counted', async () => /plank \d+ boxes/.test(await window.status()))
  for (const reading of READ)
    await page.locator('.view-line').getByText(reading.replaceAll(' ', '\u00a0')).first().waitFor()
  await page
    .locator('.view-line')
    .getByText(/131\.\d\u00a0sq\u00a0ft/)
    .first()
    .waitFor()
  await page.screenshot({ path: join(PICTURES, 'editor-room.png') })
  await keyboard.press('Escape')
  await window.command('File: Revert and Close Editor')
})

const THEMES = [
  ['light', 'Default Light Modern', 'vs'],
  ['dark', 'Default Dark Modern', 'vs-dark'],
  ['contrast-dark', 'Default High Contrast', 'hc-black'],
  ['contrast-light', 'Default High Contrast Light', 'hc-light'],
] as const

test.each(THEMES)('a picture of the editor is taken: %s', TIMEOUT, async (name, theme, kind) => {
  const settings = { ...SETTINGS, 'workbench.colorTheme': theme }
  writeFileSync(workspace.path('.vscode/settings.json'), JSON.stringify(settings))
  await page.locator(`.monaco-workbench.${kind}`).waitFor()
  const plan = await window.plan()
  await window.goToLine(lineOf('north', 'room west room'), 15)
  await until('the wall lights up', async () => (await plan.locator('.lit').count()) > 0)
  await page.waitForTimeout(500)
  mkdirSync(PICTURES, { recursive: true })
  await page.screenshot({ path: join(PICTURES, `editor-${name}.png`) })
})
