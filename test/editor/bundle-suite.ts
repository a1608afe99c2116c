import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { build } from 'esbuild'
import { ROOT } from './hosted.ts'

/** Makes the suite that runs inside the editor, in a process as in a worker; the path of its module. */
export async function bundleSuite(): Promise<string> {
  const folder = join(ROOT, '.cache/editor-suite')
  mkdirSync(folder, { recursive: true })
  // The extension's own package.json would have it read as a module of the other kind.
  writeFileSync(join(folder, 'package.json'), '{"type":"commonjs"}\n')
  const outfile = join(folder, 'index.js')
  await build({
    entryPoints: [join(ROOT, 'test/editor/suite/run.ts')],
    outfile,
    bundle: true,
    format: 'cjs',
    // Its output then tells what it exports, also to a host that imports it.
    platform: 'node',
    external: ['vscode'],
    logLevel: 'warning',
  })
  return outfile
}
