import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { HOME } from '../house/sources.ts'

/** The oldest Node that what is shipped promises to run on. */
const NODE_22 = '22.23.3'
const QUICKJS = [
  'quickjs-emscripten-core@0.32.0',
  '@jitl/quickjs-ng-wasmfile-release-sync@0.32.0',
] as const

/**
 * The program of Node 22, fetched once. It cannot be a package of the project's own: its command would
 * stand before Node 24's.
 */
export function node22(): string {
  const folder = cached('node-22')
  const program = join(folder, 'node_modules/node/bin/node')
  const isThere = () =>
    spawnSync(program, ['--version'], { encoding: 'utf8' }).stdout?.trim() === `v${NODE_22}`
  fetchInto(folder, [`node@${NODE_22}`], isThere)
  return program
}

/** The folder that QuickJS, as WebAssembly, is installed in; fetched once. */
export function quickJs(): string {
  const folder = cached('quickjs-0.32.0')
  const parts = QUICKJS.map((part) => join(folder, 'node_modules', part.replace(/@[\d.]+$/, '')))
  fetchInto(folder, QUICKJS, () => parts.every((part) => existsSync(join(part, 'package.json'))))
  return folder
}

function cached(name: string): string {
  return join(HOME, '.cache', name)
}

/** Installs packages in a folder of their own unless they are there; throws a sentence if that fails. */
function fetchInto(folder: string, packages: readonly string[], isThere: () => boolean): void {
  if (isThere()) return
  console.log(`fetching ${packages.join(' and ')} …`)
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(folder, { recursive: true })
  const allowed = { private: true, allowScripts: { node: true } }
  writeFileSync(join(folder, 'package.json'), JSON.stringify(allowed))
  const words = ['install', '--prefix', folder, '--no-save', ...packages]
  spawnSync('npm', words, { cwd: folder, stdio: ['ignore', 'ignore', 'inherit'] })
  if (isThere()) return
  throw new Error(
    `This test needs ${packages.join(' and ')}, and "npm ${words.join(' ')}" did not bring it. Is ` +
      'there a network, and may npm run the install script of the package "node"?',
  )
}
