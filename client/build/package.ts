import { execFileSync } from 'node:child_process'
import { mkdirSync, readFileSync, statSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { type ZipEntry, zipEntries } from './zip-entries.ts'

/** The whole extension in one file is no larger than this. */
export const MOST_BYTES = 1_500_000

const HOME = join(import.meta.dirname, '../..')

/** Makes the package from what lies in `dist`; gives what it holds. Needs no network. */
export function makePackage(vsix: string): readonly ZipEntry[] {
  mkdirSync(dirname(vsix), { recursive: true })
  const program = join(HOME, 'node_modules/@vscode/vsce/vsce')
  execFileSync(
    process.execPath,
    [
      ...[program, 'package', '--out', vsix],
      // All that it needs is in its bundles; the page about it links to what comes along.
      ...['--no-dependencies', '--no-rewrite-relative-links', '--allow-missing-repository'],
    ],
    { cwd: HOME, stdio: ['ignore', 'pipe', 'inherit'] },
  )
  return zipEntries(readFileSync(vsix))
}

/** A line for each file of more than a kilobyte or so, the rest as one, and the whole. */
export function sizeTable(entries: readonly ZipEntry[], bytes: number): string {
  const large = entries.filter(({ packedBytes }) => packedBytes >= 1_500)
  const rest = entries.filter(({ packedBytes }) => packedBytes < 1_500)
  const sum = (of: readonly ZipEntry[], key: 'bytes' | 'packedBytes') =>
    of.reduce((total, entry) => total + entry[key], 0)
  const rows = [
    ...large
      .toSorted((a, b) => b.packedBytes - a.packedBytes)
      .map(({ path, bytes, packedBytes }) => [path, bytes, packedBytes] as const),
    [`${rest.length} smaller files`, sum(rest, 'bytes'), sum(rest, 'packedBytes')] as const,
    ['the package', sum(entries, 'bytes'), bytes] as const,
    ['at most', 0, MOST_BYTES] as const,
  ]
  return rows
    .map(([name, whole, packed]) => `${name.padEnd(44)}${cell(whole)}${cell(packed)}\n`)
    .join('')
}

function cell(bytes: number): string {
  const text = bytes === 0 ? '' : `${Math.ceil(bytes / 1000)} kB`
  return text.padStart(10)
}

if (import.meta.main) {
  const { name, version } = JSON.parse(readFileSync(join(HOME, 'package.json'), 'utf8'))
  const vsix = join(HOME, `dist/${name}-${version}.vsix`)
  const entries = makePackage(vsix)
  const { size } = statSync(vsix)
  process.stdout.write(sizeTable(entries, size))
  process.stdout.write(`\n${relative(process.cwd(), vsix)}\n`)
  if (size > MOST_BYTES) throw new Error(`The package is larger than ${MOST_BYTES} bytes.`)
}
