import { execFileSync } from 'node:child_process'
import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** A release of the editor as a package: its server, whose window is a page in a browser. */
const EDITOR = 'code-server@4.139.1'
const CACHE = fileURLToPath(new URL('../../.cache/', import.meta.url))
/** Those of its native parts that a run needs. */
const NATIVE = ['@vscode/spdlog', 'node-pty', '@parcel/watcher', '@vscode/native-watchdog']

/**
 * The folder of a VS Code server, fetched on the first call: about two minutes, 0.6 GB, and a compiler
 * for its native parts. What was fetched in part is thrown away, so that a run cut off leaves no half
 * of it. Throws what npm said where the registry does not answer.
 */
export function fetchEditor(): string {
  const folder = join(CACHE, EDITOR.replace('@', '-'))
  const server = join(folder, 'node_modules/code-server/lib/vscode')
  if (existsSync(join(folder, 'whole'))) return server
  console.log(`The editor is fetched into ${folder} …`)
  const part = `${folder}-part-${process.pid}`
  rmSync(part, { recursive: true, force: true })
  mkdirSync(part, { recursive: true })
  writeFileSync(join(part, 'package.json'), '{"private":true}\n')
  npm(part, 'install', EDITOR, '--ignore-scripts')
  const inside = join(part, 'node_modules/code-server/lib/vscode')
  npm(inside, 'install', '--omit=dev', '--ignore-scripts')
  npm(inside, 'rebuild', ...NATIVE)
  writeFileSync(join(part, 'whole'), '')
  rmSync(folder, { recursive: true, force: true })
  renameSync(part, folder)
  return server
}

/** Its native parts are built for the Node that they will run in: the one that runs this. */
function npm(cwd: string, ...args: readonly string[]): void {
  const path = [dirname(process.execPath), process.env.PATH].join(
    process.platform === 'win32' ? ';' : ':',
  )
  execFileSync('npm', [...args, '--no-audit', '--no-fund'], {
    cwd,
    stdio: ['ignore', 'ignore', 'inherit'],
    env: { ...process.env, PATH: path },
    shell: process.platform === 'win32',
  })
}
