import { execFileSync } from 'node:child_process'
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { HOME } from '../house/sources.ts'

/** A folder of a stranger's, with nothing in it but the package as npm would bring it. */
let away = ''
let packed: readonly string[] = []

beforeAll(() => {
  away = mkdtempSync(join(tmpdir(), 'floorscribe-away-'))
  const told = npm(['pack', '--json', '--ignore-scripts', '--pack-destination', away], HOME)
  // npm 11 answers with a list, npm 12 with an object by package name.
  const [pack] = Object.values<{
    readonly filename: string
    readonly files: readonly { path: string }[]
  }>(JSON.parse(told))
  packed = pack!.files.map(({ path }) => path).sort()
  writeFileSync(join(away, 'package.json'), '{ "private": true }')
  npm(['install', '--offline', '--no-audit', '--no-fund', `./${pack!.filename}`], away)
  cpSync(join(away, 'node_modules/floorscribe/examples'), join(away, 'jobs'), { recursive: true })
}, 120_000)
afterAll(() => rmSync(away, { recursive: true, force: true }))

function npm(args: readonly string[], cwd: string): string {
  return run('npm', args, cwd).out
}

/** The Node that runs the tests goes first, so that what is installed runs on it too. */
function run(command: string, args: readonly string[], cwd: string) {
  const env = { ...process.env, PATH: `${dirname(process.execPath)}:${process.env.PATH}` }
  try {
    return {
      code: 0,
      out: execFileSync(command, args, { cwd, env, encoding: 'utf8', stdio: 'pipe' }),
    }
  } catch (error) {
    const { status, stdout, stderr } = error as { status: number; stdout: string; stderr: string }
    if (command === 'npm') throw new Error(`npm ${args.join(' ')}: ${stderr}`)
    return { code: status, out: stdout }
  }
}

describe('the package, where there is no clone', () => {
  test('holds the bundles, what they show and read, and the papers, and no source', () => {
    const folders =
      /^(client\/media|client\/walkthrough|dist\/schema|dist\/server|examples|syntaxes)\/.*/
    const kinds = new Set(packed.map((path) => path.replace(folders, '$1')))
    expect([...kinds].sort()).toEqual([
      'CHANGELOG.md',
      'LICENSE',
      'README.md',
      'client/media',
      'client/walkthrough',
      'dist/THIRD-PARTY.txt',
      'dist/extension-web.cjs',
      'dist/extension.cjs',
      'dist/floorscribe.mjs',
      'dist/page.css',
      'dist/page.js',
      'dist/schema',
      'dist/server',
      'dist/server-web.js',
      'examples',
      'package.json',
      'server/LANGUAGE.md',
      'syntaxes',
    ])
  })

  test('brings no other package', () => {
    const brought = readdirSync(join(away, 'node_modules')).filter((name) => !name.startsWith('.'))
    expect(brought).toEqual(['floorscribe'])
  })

  test('names the licence of each package in the bundle', () => {
    const papers = readFileSync(join(away, 'node_modules/floorscribe/dist/THIRD-PARTY.txt'), 'utf8')
    for (const name of ['chevrotain', 'commander', 'picocolors'])
      expect(papers).toContain(`\n${name} `)
  })

  test('runs as it is', () => {
    const from = (cwd: string) =>
      run('npx', ['--no-install', 'floorscribe', 'estimate', 'upper-floor.floor'], cwd)
    expect(from(join(away, 'jobs'))).toEqual(
      run(
        process.execPath,
        [join(HOME, 'dist/floorscribe.mjs'), 'estimate', 'upper-floor.floor'],
        join(HOME, 'examples'),
      ),
    )
    expect(from(join(away, 'jobs')).out.length).toBeGreaterThan(200)
  })
})
