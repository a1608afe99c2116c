import { spawnSync } from 'node:child_process'
import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { HOME } from '../house/sources.ts'

/** The oldest Node that what is shipped promises to run on. */
const OLDEST = '22.23.3'
const FOLDER = join(HOME, '.cache/node-22')
const PROGRAM = join(FOLDER, 'node_modules/node/bin/node')

/**
 * The program of Node 22, fetched once. It cannot be a package of the project's own: its command would
 * stand before Node 24's. Throws a sentence when it is not to be had.
 */
export function node22(): string {
  if (!runs()) fetchNode22()
  if (runs()) return PROGRAM
  throw new Error(
    `This test needs Node ${OLDEST}: "npm install --prefix .cache/node-22 node@${OLDEST}" did not ` +
      `bring it. Is there a network, and may npm run the install script of the package "node"?`,
  )
}

function runs(): boolean {
  return spawnSync(PROGRAM, ['--version'], { encoding: 'utf8' }).stdout?.trim() === `v${OLDEST}`
}

function fetchNode22(): void {
  console.log(`Node ${OLDEST} is fetched into .cache/node-22 …`)
  rmSync(FOLDER, { recursive: true, force: true })
  mkdirSync(FOLDER, { recursive: true })
  writeFileSync(
    join(FOLDER, 'package.json'),
    JSON.stringify({ private: true, allowScripts: { node: true } }),
  )
  spawnSync('npm', ['install', '--prefix', FOLDER, '--no-save', `node@${OLDEST}`], {
    cwd: FOLDER,
    stdio: ['ignore', 'ignore', 'inherit'],
  })
}
