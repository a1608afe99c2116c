import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'

const COMMANDS = [
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'microsoft-edge',
]
const MAC = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge',
]
const WINDOWS = [
  'Chromium\\Application\\chrome.exe',
  'Google\\Chrome\\Application\\chrome.exe',
  'Microsoft\\Edge\\Application\\msedge.exe',
]

/**
 * The program of a browser of the Chromium family: what CHROMIUM names, else one that is installed,
 * else, as root where there is apt, one that is installed now. Throws a sentence where none is to be had.
 */
export function findBrowser(): string {
  const named = process.env.CHROMIUM ?? ''
  if (named !== '') {
    if (existsSync(named)) return named
    throw new Error(`CHROMIUM names ${named}, and there is no such file.`)
  }
  const found = installed() ?? (installByApt() ? installed() : null)
  if (found !== null) return found
  throw new Error(
    'This test needs a browser: install Chromium, Chrome or Edge, or name its program in the ' +
      'environment variable CHROMIUM. (As root on Debian the test installs the package "chromium" by itself.)',
  )
}

function installed(): string | null {
  const folders = (process.env.PATH ?? '').split(delimiter).filter((folder) => folder !== '')
  const onPath = [...folders, '/usr/bin', '/snap/bin'].flatMap((folder) =>
    COMMANDS.map((command) => join(folder, command)),
  )
  const { ProgramFiles, LOCALAPPDATA } = process.env
  const programs = [ProgramFiles, process.env['ProgramFiles(x86)'], LOCALAPPDATA].flatMap(
    (folder) => (folder === undefined ? [] : WINDOWS.map((path) => `${folder}\\${path}`)),
  )
  return [...onPath, ...MAC, ...programs].find((path) => existsSync(path)) ?? null
}

/** Whether apt says that it installed one; it waits while another apt is at work. */
function installByApt(): boolean {
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return false
  console.log('No browser is installed: apt-get installs the package "chromium" …')
  const apt = (...words: string[]) =>
    spawnSync('apt-get', ['-o', 'DPkg::Lock::Timeout=600', ...words], {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    }).status === 0
  return apt('update') && apt('install', '-y', '--no-install-recommends', 'chromium')
}
