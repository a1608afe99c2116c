import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import type { Page } from 'playwright-core'
import { fetchEditor } from './fetch.ts'

export const ROOT = fileURLToPath(new URL('../../', import.meta.url))

/** Where the extension runs: a process of the machine, or a worker of the page. */
export type ExtensionHost = 'node' | 'web'

/** A VS Code server that runs, and what to open in a browser. */
export interface Hosted {
  readonly port: number
  /** Its page with a folder open and the extension of this repository loaded. */
  readonly address: (open: {
    readonly folder: string
    readonly file?: string
    readonly host?: ExtensionHost
    /** A suite that runs inside the editor. */
    readonly suite?: string
  }) => string
  readonly stop: () => void
}

/** Starts the editor's server for this machine alone, with settings of its own in a new folder. */
export async function startHosted(): Promise<Hosted> {
  const editor = fetchEditor()
  const data = mkdtempSync(join(tmpdir(), 'floorscribe-editor-'))
  const port = await freePort()
  const server = spawn(
    process.execPath,
    [
      join(editor, 'out/server-main.js'),
      ...['--host', '127.0.0.1', '--port', String(port)],
      ...['--server-data-dir', data, '--telemetry-level', 'off'],
      '--without-connection-token',
      '--accept-server-license-terms',
      // Without it the page does not load an extension that is still being developed.
      '--enable-smoke-test-driver',
    ],
    { stdio: ['ignore', 'pipe', 'pipe'], detached: process.platform !== 'win32' },
  )
  const end = () => stop(server)
  process.once('exit', end)
  await listening(server)
  return {
    port,
    address: (open) => addressOf(port, open),
    stop: () => {
      process.off('exit', end)
      end()
      rmSync(data, { recursive: true, force: true, maxRetries: 5 })
    },
  }
}

function addressOf(port: number, open: Parameters<Hosted['address']>[0]): string {
  const remote = (path: string) => `vscode-remote://127.0.0.1:${port}${path}`
  const payload = [
    ['skipWelcome', 'true'],
    ['extensionDevelopmentPath', remote(ROOT.replace(/\/$/, ''))],
    ...(open.host === 'web' ? [['extensionDevelopmentKind', 'web']] : []),
    ...(open.file === undefined ? [] : [['openFile', remote(open.file)]]),
    ...(open.suite === undefined ? [] : [['extensionTestsPath', remote(open.suite)]]),
  ]
  const query = new URLSearchParams({ folder: open.folder, payload: JSON.stringify(payload) })
  return `http://127.0.0.1:${port}/?${query}`
}

/** What a suite that runs inside the editor comes to: its exit code, and all that it said. */
export async function suiteEnd(
  page: Page,
  address: string,
): Promise<{ readonly code: number; readonly said: readonly string[] }> {
  const said: string[] = []
  await page.exposeFunction('codeAutomationLog', (kind: string, words: readonly unknown[]) => {
    said.push([kind, ...words].join(' '))
  })
  const ended = new Promise<number>((resolve) => {
    void page
      .exposeFunction('codeAutomationExit', (code: number) => resolve(code))
      .then(() => page.goto(address))
  })
  return { code: await ended, said }
}

async function freePort(): Promise<number> {
  const probe = createServer().listen(0, '127.0.0.1')
  await once(probe, 'listening')
  const address = probe.address()
  probe.close()
  await once(probe, 'close')
  if (address === null || typeof address === 'string') throw new Error('no port is free')
  return address.port
}

/** Until it says that it listens; what it said instead, where it ends before. */
async function listening(server: ChildProcess): Promise<void> {
  let said = ''
  const hear = (text: Buffer) => {
    said += text
  }
  server.stdout?.on('data', hear)
  server.stderr?.on('data', hear)
  while (!said.includes('Extension host agent listening')) {
    const ended = await Promise.race([
      once(server, 'exit').then(() => true),
      once(server.stdout!, 'data').then(() => false),
    ])
    if (ended) throw new Error(`The editor did not start:\n${said}`)
  }
}

/** With all that it started: extension hosts, watchers, terminals. */
function stop(server: ChildProcess): void {
  try {
    if (process.platform === 'win32') server.kill()
    else process.kill(-server.pid!, 'SIGKILL')
  } catch {
    // It ended by itself.
  }
}
