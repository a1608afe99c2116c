import { execFileSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { VERSION } from '../../server/src/cli/version.ts'
import { HOME, readServer } from './sources.ts'

const tracked = execFileSync('git', ['ls-files', '-z'], { cwd: HOME, encoding: 'utf8' })
  .split('\0')
  .filter((path) => path !== '' && existsSync(join(HOME, path)))
const read = (path: string) => readFileSync(join(HOME, path), 'utf8')
const pack = JSON.parse(read('package.json'))

describe('the house is in order', () => {
  test('the top holds what the map of the house names, and what a tool insists on', () => {
    const allowed = [
      '.ci',
      '.gitignore',
      '.npmrc',
      '.vscodeignore',
      'CHANGELOG.md',
      'DEVELOPERS.md',
      'LICENSE',
      'README.md',
      'biome.json',
      'client',
      'esbuild.mjs',
      'examples',
      'package-lock.json',
      'package.json',
      'server',
      'syntaxes',
      'test',
      'tsconfig.json',
    ]
    const top = [...new Set(tracked.map((path) => path.split('/')[0] ?? ''))]
    expect(top.filter((name) => !allowed.includes(name))).toEqual([])
  })

  test('a file is one idea: none passes 400 lines, and nine in ten stay under 200', () => {
    const sizes = readServer()
      // The vocabulary is one table: the language itself.
      .filter(({ path }) => path !== 'server/src/language/words.ts')
      .map(({ path, text }) => ({ path, lines: text.split('\n').length - 1 }))
      .sort((a, b) => a.lines - b.lines)
    expect(sizes.filter(({ lines }) => lines > 400)).toEqual([])
    expect(sizes[Math.floor(sizes.length * 0.9)]!.lines).toBeLessThan(200)
  })

  test('no test is left out, and none is the only one', () => {
    const left = /\b(?:test|it|describe|suite)(?:\.\w+)*\.(?:only|skip|todo|skipIf|runIf|fails)\b/
    const tests = tracked.filter((path) => path.startsWith('test/') && path.endsWith('.ts'))
    expect(tests.filter((path) => left.test(read(path)))).toEqual([])
    expect(left.test(['test', 'skip("later")'].join('.'))).toBe(true)
  })

  test('no file names a place on one machine', () => {
    const places = ['/work/', '/root/', '/home/', 'C:\\Users', 'registry.', 'localhost']
    const text = /\.(?:ts|mjs|json|md|floor|txt|yml|svg|clitest)$|^\.(?:npmrc|ci\/run)$/
    const hits = tracked
      .filter((path) => text.test(path) && path !== 'test/house/tidy.test.ts')
      .flatMap((path) =>
        places.filter((place) => read(path).includes(place)).map((p) => `${path}: ${p}`),
      )
    expect(hits).toEqual([])
  })
})

describe('the package', () => {
  test('brings everything in its bundle and needs no other package', () => {
    expect(pack.dependencies).toBeUndefined()
    expect(pack.peerDependencies).toBeUndefined()
    expect(pack.optionalDependencies).toBeUndefined()
  })

  test('every other package is pinned to one release', () => {
    const versions = Object.values<string>(pack.devDependencies)
    expect(versions.filter((version) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([])
  })

  test('and the program are of one release', () => {
    expect(VERSION).toBe(pack.version)
  })
})
