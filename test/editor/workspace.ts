import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { ROOT } from './hosted.ts'

export interface Workspace {
  readonly folder: string
  /** The absolute path of a file in it. */
  readonly path: (name: string) => string
  readonly remove: () => void
}

/** Quiet enough to look at the job, and the same on every machine. */
export const SETTINGS = {
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'chat.commandCenter.enabled': false,
  'editor.minimap.enabled': false,
  'editor.fontSize': 13,
  'files.autoSave': 'off',
  'workbench.startupEditor': 'none',
  'breadcrumbs.enabled': false,
}

/** A new folder with the jobs of `examples/`, so that a test may write in them. */
export function newWorkspace(settings: Readonly<Record<string, unknown>> = {}): Workspace {
  const folder = mkdtempSync(join(tmpdir(), 'floorscribe-jobs-'))
  cpSync(join(ROOT, 'examples'), folder, {
    recursive: true,
    filter: (path) => !path.includes('expected'),
  })
  mkdirSync(join(folder, '.vscode'))
  writeFileSync(
    join(folder, '.vscode/settings.json'),
    JSON.stringify({ ...SETTINGS, ...settings }, null, 2),
  )
  return {
    folder,
    path: (name) => join(folder, name),
    remove: () => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }),
  }
}
