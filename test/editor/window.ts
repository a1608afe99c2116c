import type { Frame, Locator, Page } from 'playwright-core'
import { until } from './suite/wait.ts'

/** The editor's window, worked by keys and mouse alone. */
export interface EditorWindow {
  readonly page: Page
  /** Whatever is open in the middle: lines of text with the hints behind them. */
  readonly lines: Locator
  readonly goToLine: (line: number, column?: number) => Promise<void>
  /** Starts a command by its title; it may ask on, so that nothing is waited for. */
  readonly command: (title: string) => Promise<void>
  /** Waits until a file's text is there. */
  readonly ready: () => Promise<void>
  /** All that the status bar says. */
  readonly status: () => Promise<string>
  /** A line as it is shown, with the hints behind it; '' while it is out of sight. */
  readonly lineText: (line: number) => Promise<string>
  /** Puts the focus in the text, wherever it was. */
  readonly toText: () => Promise<void>
  /** The line that the text's cursor is on, whatever has the focus. */
  readonly cursorLine: () => Promise<number>
  /** The page of the plan, two frames deep; waits until something is drawn in it. */
  readonly plan: () => Promise<Frame>
}

/** What takes the keys in an editor, in its newer and its older form. */
const TYPED_INTO = '.monaco-editor .native-edit-context, .monaco-editor textarea.inputarea'

/** Opens an address of the editor and waits until the file's text is there. */
export async function openWindow(page: Page, address: string): Promise<EditorWindow> {
  const lines = page.locator('.monaco-editor .view-line')
  const ready = async () => {
    await lines.first().waitFor({ timeout: 60_000 })
    await dismiss(page)
  }
  await page.goto(address)
  await ready()
  return {
    page,
    lines,
    ready,
    status: async () => (await page.locator('.statusbar').textContent()) ?? '',
    lineText: (line) => lineText(page, line),
    goToLine: (line, column = 1) => pick(page, 'Control+g', `${line}:${column}`),
    command: (title) => pick(page, 'F1', title),
    toText: () => page.locator(TYPED_INTO).first().focus(),
    cursorLine: async () => {
      const number = page.locator('.monaco-editor .line-numbers.active-line-number').first()
      return Number(await number.textContent())
    },
    plan: () => planIn(page),
  }
}

/** What asks about trust and the like before a person has done anything. */
async function dismiss(page: Page): Promise<void> {
  const close = page.locator('.notifications-toasts .codicon-close, .banner .codicon-close')
  for (const button of await close.all()) await button.click({ timeout: 2000 }).catch(() => {})
}

/** A line is found beside its number: the lines of the page come in no order. */
async function lineText(page: Page, line: number): Promise<string> {
  const text = await page.evaluate((wanted) => {
    const number = [...document.querySelectorAll('.margin-view-overlays .line-numbers')].find(
      (one) => one.textContent === String(wanted),
    )
    const top = number?.getBoundingClientRect().top
    const found = [...document.querySelectorAll('.view-lines .view-line')].find(
      (one) => Math.abs(one.getBoundingClientRect().top - (top ?? Number.NaN)) < 4,
    )
    return found?.textContent ?? ''
  }, line)
  return text.replaceAll('\u00a0', ' ')
}

async function pick(page: Page, key: string, text: string): Promise<void> {
  await page.keyboard.press(key)
  const input = page.locator('.quick-input-widget input[type=text]').first()
  await input.waitFor({ state: 'visible' })
  await page.keyboard.type(text)
  await page.waitForTimeout(250)
  await page.keyboard.press('Enter')
  await page.waitForTimeout(100)
}

async function planIn(page: Page): Promise<Frame> {
  return until('the plan is drawn', async () => {
    for (const frame of page.frames()) {
      const drawn = await frame
        .locator('svg .piece')
        .count()
        .catch(() => 0)
      if (drawn > 0) return frame
    }
    return null
  })
}
