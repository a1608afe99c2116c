import { build } from 'esbuild'
import type { Browser, BrowserContextOptions, Page } from 'playwright-core'
import { pageHtml } from '../../client/webview/html.ts'
import { asFromPage, type FromPage, type ToPage } from '../../client/webview/messages.ts'
import { launchBrowser } from '../browser/launch.ts'
import { type Served, serve } from '../browser/serve.ts'
import { THEMES, type Theme } from './themes.ts'

const NONCE = 'bm90IGEgc2VjcmV0'

/** The page as the editor shows it, in a browser without a window. */
export interface Stage {
  readonly page: Page
  /** What the page has said so far. */
  readonly heard: () => Promise<readonly FromPage[]>
  readonly say: (message: ToPage) => Promise<void>
  /** Says something that may be no message at all. */
  readonly sayAnything: (message: unknown) => Promise<void>
  /** Everything that the page asked for beside itself, and what its policy or a script complained of. */
  readonly trouble: () => readonly string[]
}

export interface StageOptions extends BrowserContextOptions {
  readonly theme?: Theme
  /** What the editor kept of the page from before. */
  readonly kept?: unknown
}

export interface Theatre {
  readonly stage: (options?: StageOptions) => Promise<Stage>
  readonly close: () => Promise<void>
}

export async function openTheatre(): Promise<Theatre> {
  const [served, browser] = await Promise.all([servePage(), launchBrowser()])
  return {
    stage: (options = {}) => openStage(browser, served, options),
    close: async () => {
      await browser.close()
      served.close()
    },
  }
}

/** The page's script as it is shipped, and its style sheet. */
export async function bundled(): Promise<{ readonly script: string; readonly style: string }> {
  const { outputFiles } = await build({
    entryPoints: ['client/webview/page.ts', 'client/webview/page.css'],
    bundle: true,
    minify: true,
    format: 'esm',
    outdir: 'dist',
    write: false,
  })
  const text = (end: string): string => outputFiles.find(({ path }) => path.endsWith(end))!.text
  return { script: text('.js'), style: text('.css') }
}

async function servePage(): Promise<Served> {
  const { script, style } = await bundled()
  const html = pageHtml({ nonce: NONCE, scriptUri: 'page.js', styleUri: 'page.css' })
  return serve(
    new Map([
      ['page.html', html],
      ['page.js', script],
      ['page.css', style],
      ['favicon.ico', ''],
    ]),
  )
}

async function openStage(
  browser: Browser,
  { url }: Served,
  { theme = THEMES[0]!, kept, ...options }: StageOptions,
): Promise<Stage> {
  const context = await browser.newContext({ viewport: { width: 760, height: 900 }, ...options })
  const page = await context.newPage()
  const trouble: string[] = []
  page.on('request', (request) => {
    const name = request.url().slice(url.length)
    if (!['page.html', 'page.js', 'page.css', 'favicon.ico'].includes(name))
      trouble.push(`asked for ${request.url()}`)
  })
  page.on('pageerror', (error) => trouble.push(`threw ${error.message}`))
  page.on('console', (message) => trouble.push(`complained: ${message.text()}`))
  page.on('dialog', (dialog) => {
    trouble.push(`asked ${dialog.message()}`)
    void dialog.dismiss()
  })
  page.on('framenavigated', (frame) => {
    if (frame.url() !== `${url}page.html`) trouble.push(`went to ${frame.url()}`)
  })
  await page.addInitScript(editorSide, { theme, kept })
  await page.goto(`${url}page.html`)
  await page.waitForFunction(() => said().length > 0)
  return {
    page,
    heard: async () => (await page.evaluate(() => said())).map(known),
    say: (message) => page.evaluate((one) => window.postMessage(one, '*'), message),
    sayAnything: (message) => page.evaluate((one) => window.postMessage(one, '*'), message),
    trouble: () => trouble,
  }
}

/** Every message is checked as the extension checks it. */
function known(message: unknown): FromPage {
  const one = asFromPage(message)
  if (one === null) throw new Error(`The page said ${JSON.stringify(message)}.`)
  return one
}

declare function said(): unknown[]

/** What the editor gives a page: its colours, its interface, and here an ear. Runs in the page. */
function editorSide({ theme, kept }: { theme: Theme; kept: unknown }): void {
  const heard: unknown[] = []
  let state = kept
  Object.assign(globalThis, {
    said: () => heard,
    acquireVsCodeApi: () => ({
      postMessage: (message: unknown) => heard.push(message),
      setState: (value: unknown) => {
        state = value
      },
      getState: () => state,
    }),
  })
  document.addEventListener('DOMContentLoaded', () => {
    document.body.className = theme.classes
    for (const [name, value] of Object.entries(theme.colours))
      document.documentElement.style.setProperty(`--vscode-${name}`, value)
    document.documentElement.style.setProperty('--vscode-font-size', '13px')
    document.documentElement.style.setProperty('--vscode-font-family', 'sans-serif')
  })
}
