// Opens the example in a real VS Code with this extension loaded: `npm run editor`, or with a job's
// path behind `--`. The user's own VS Code, else a downloaded one, else one that is shown in a browser.
import { spawn } from 'node:child_process'
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join, resolve } from 'node:path'
import { downloadedEditor, hasScreen, installedEditor } from './desktop.ts'
import { ROOT, startHosted } from './hosted.ts'

const [named = join(ROOT, 'examples/upper-floor.floor')] = process.argv.slice(2)
const file = resolve(named)

const program = hasScreen() ? (installedEditor() ?? (await downloadedEditor())) : null
if (program === null) await openInBrowser()
else openInWindow(program)

function openInWindow(command: string): void {
  // A profile of its own: the user's settings and extensions stay out of it, and it out of them.
  const profile = mkdtempSync(join(tmpdir(), 'floorscribe-profile-'))
  const asRoot = process.getuid?.() === 0 ? ['--no-sandbox'] : []
  spawn(
    command,
    [
      `--extensionDevelopmentPath=${ROOT}`,
      ...['--user-data-dir', profile, ...asRoot],
      ...[dirname(file), '--goto', file],
    ],
    { stdio: 'ignore', detached: true, shell: process.platform === 'win32' },
  ).unref()
  console.log(`floorscribe: ${file} opens in a window of VS Code (${command}).`)
}

async function openInBrowser(): Promise<void> {
  const hosted = await startHosted()
  // Its server ends with this process.
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.once(signal, () => process.exit(0))
  console.log('floorscribe: VS Code runs here until Ctrl+C. Open this address in a browser:\n')
  console.log(`  ${hosted.address({ folder: dirname(file), file })}\n`)
}
