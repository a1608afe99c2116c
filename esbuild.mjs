// Makes everything that is shipped, in dist/. `node esbuild.mjs`; a new bundle is one more entry.
import { chmod, cp, glob, mkdir, readFile, rm, writeFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { build } from 'esbuild'

const COMMON = {
  bundle: true,
  minify: true,
  metafile: true,
  charset: 'utf8',
  legalComments: 'none',
  logLevel: 'warning',
}

/** The editor brings `vscode` itself; its loaders want CommonJS, `.cjs` where the package is a module. */
const EXTENSION = { format: 'cjs', external: ['vscode'] }

/** What an ES module has not, and packages ask for Node's own modules with. */
const REQUIRE =
  "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);"

/** One entry a bundle; `run` makes it a command that a shell can start. */
const BUNDLES = [
  {
    run: true,
    entryPoints: ['server/src/cli/main.ts'],
    outfile: 'dist/floorscribe.mjs',
    platform: 'node',
    format: 'esm',
    target: 'node22',
    banner: { js: '#!/usr/bin/env node' },
  },
  {
    ...EXTENSION,
    entryPoints: ['client/src/extension-node.ts'],
    outfile: 'dist/extension.cjs',
    platform: 'node',
    target: 'node22',
  },
  {
    ...EXTENSION,
    entryPoints: ['client/src/extension-web.ts'],
    outfile: 'dist/extension-web.cjs',
    platform: 'browser',
    target: 'es2024',
  },
  {
    // In parts: an editor has its first answer before the larger one is read.
    entryPoints: { main: 'server/src/lsp/main-node.ts' },
    outdir: 'dist/server',
    outExtension: { '.js': '.mjs' },
    chunkNames: '[name]',
    splitting: true,
    platform: 'node',
    format: 'esm',
    target: 'node22',
    banner: { js: REQUIRE },
  },
  {
    entryPoints: ['server/src/lsp/main-web.ts'],
    outfile: 'dist/server-web.js',
    platform: 'browser',
    format: 'iife',
    target: 'es2024',
  },
  {
    entryPoints: ['client/webview/page.ts', 'client/webview/page.css'],
    outdir: 'dist',
    platform: 'browser',
    format: 'iife',
    target: 'es2024',
  },
]

async function bundle({ run, ...options }) {
  const { metafile } = await build({ ...COMMON, ...options })
  if (run) await chmod(options.outfile, 0o755)
  return Object.keys(metafile.inputs)
}

/** Every JSON schema lies beside the code that writes to it; all are shipped in one folder. */
async function copySchemas() {
  await rm('dist/schema', { recursive: true, force: true })
  await mkdir('dist/schema', { recursive: true })
  for await (const file of glob('server/src/**/*.schema.json'))
    await cp(file, `dist/schema/${basename(file)}`)
}

/** The licences of what was bundled in, since they ask to go wherever it goes. */
async function writeLicences(inputs) {
  const folders = inputs.map((input) => input.match(/^.*node_modules\/(?:@[^/]+\/)?[^/]+/)?.[0])
  const parts = []
  for (const folder of [...new Set(folders)].filter(Boolean).sort()) {
    const { name, version, license } = JSON.parse(await readFile(`${folder}/package.json`, 'utf8'))
    const texts = await Array.fromAsync(glob(`${folder}/{LICENSE,LICENCE,license}*`))
    const text = texts.length > 0 ? await readFile(texts.sort()[0], 'utf8') : ''
    parts.push(`${name} ${version} (${license})\n\n${text.trim()}\n`)
  }
  await writeFile('dist/THIRD-PARTY.txt', parts.join(`\n${'-'.repeat(72)}\n\n`))
}

// Parts of an earlier build would be shipped with those of this one.
await rm('dist/server', { recursive: true, force: true })
const inputs = await Promise.all(BUNDLES.map(bundle))
await Promise.all([copySchemas(), writeLicences(inputs.flat())])
