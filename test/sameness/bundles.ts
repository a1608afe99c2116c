import { fileURLToPath } from 'node:url'
import { type BuildOptions, build } from 'esbuild'

const INSIDE = fileURLToPath(new URL('./inside/', import.meta.url))

/** The core for no platform, so that an import of one of Node's own modules does not bundle. */
const CORE: BuildOptions = { platform: 'neutral', mainFields: ['module', 'main'] }
const NODE: BuildOptions = { platform: 'node', format: 'esm' }

/** What runs in the environments, by the name of its file: the core, and what starts it in each. */
const BUNDLES: ReadonlyMap<string, BuildOptions & { readonly from: string }> = new Map([
  ['core.mjs', { ...CORE, from: 'core.ts', format: 'esm', minify: true }],
  ['core.js', { ...CORE, from: 'core.ts', format: 'iife', globalName: 'FloorscribeCore' }],
  ['gossip.mjs', { from: 'gossip.ts', format: 'esm' }],
  ['in-node.mjs', { ...NODE, from: 'in-node.ts' }],
  ['ask-core.mjs', { ...NODE, from: 'ask-core.ts' }],
  ['ask-commands.mjs', { ...NODE, from: 'ask-commands.ts' }],
  ['ask-quickjs.mjs', { ...NODE, from: 'ask-quickjs.ts' }],
  ['page.js', { from: 'page.ts', format: 'esm' }],
  ['module-worker.js', { from: 'module-worker.ts', format: 'esm' }],
  ['classic-worker.js', { from: 'classic-worker.ts', format: 'iife' }],
])

export async function bundles(): Promise<ReadonlyMap<string, string>> {
  return new Map(
    await Promise.all([...BUNDLES].map(([name, { from, ...how }]) => bundle(name, from, how))),
  )
}

async function bundle(name: string, from: string, how: BuildOptions): Promise<[string, string]> {
  const { outputFiles } = await build({
    ...how,
    entryPoints: [INSIDE + from],
    bundle: true,
    write: false,
    target: 'es2024',
    charset: 'utf8',
    logLevel: 'warning',
  })
  return [name, outputFiles![0]!.text]
}
