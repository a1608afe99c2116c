import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { downloadAndUnzipVSCode, SilentReporter } from '@vscode/test-electron'
import { ROOT } from './hosted.ts'

/** Where there is a screen for its window. */
export function hasScreen(environment = process.env): boolean {
  if (process.platform !== 'linux') return true
  return (environment.DISPLAY ?? environment.WAYLAND_DISPLAY ?? '') !== ''
}

/** The user's own editor, where its command is on the PATH. */
export function installedEditor(): string | null {
  const shell = process.platform === 'win32'
  return spawnSync('code', ['--version'], { shell }).status === 0 ? 'code' : null
}

/** The program of a downloaded VS Code; null where its download site does not answer. */
export async function downloadedEditor(): Promise<string | null> {
  try {
    return await downloadAndUnzipVSCode({
      cachePath: join(ROOT, '.cache/vscode'),
      reporter: new SilentReporter(),
      timeout: 15_000,
    })
  } catch {
    return null
  }
}
