import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { tmpdir } from 'node:os'
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
export function findBrowser(environment = process.env): string {
  const named = environment.CHROMIUM ?? ''
  if (named !== '') {
    if (existsSync(named)) return named
    throw new Error(`CHROMIUM names ${named}, and there is no such file.`)
  }
  const found = installed(environment) ?? (installByApt() ? installed(environment) : null)
  if (found !== null) return found
  throw new Error(
    'This test needs a browser: install Chromium, Chrome or Edge, or name its program in the ' +
      'environment variable CHROMIUM. (As root on Debian the test installs the package "chromium" by itself.)',
  )
}

function installed(environment: NodeJS.ProcessEnv): string | null {
  const folders = (environment.PATH ?? '').split(delimiter).filter((folder) => folder !== '')
  const onPath = [...folders, '/usr/bin', '/snap/bin'].flatMap((folder) =>
    COMMANDS.map((command) => join(folder, command)),
  )
  const { ProgramFiles, LOCALAPPDATA } = environment
  const programs = [ProgramFiles, environment['ProgramFiles(x86)'], LOCALAPPDATA].flatMap(
    (folder) => (folder === undefined ? [] : WINDOWS.map((path) => `${folder}\\${path}`)),
  )
  return [...onPath, ...MAC, ...programs].find((path) => existsSync(path)) ?? null
}

/** Whether apt says that it installed one. Suites that run beside each other wait for the first. */
function installByApt(): boolean {
  if (process.getuid?.() !== 0 || !existsSync('/usr/bin/apt-get')) return false
  console.log('No browser is installed: apt-get installs the package "chromium" …')
  const lock = join(tmpdir(), 'floorscribe-apt.lock')
  const install = 'apt-get update && apt-get install -y chromium'
  const { status } = spawnSync('flock', [lock, 'sh', '-c', install], {
    stdio: ['ignore', 'ignore', 'inherit'],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  })
  return status === 0
}
