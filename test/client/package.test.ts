import { existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { MOST_BYTES, makePackage, sizeTable } from '../../client/build/package.ts'
import type { ZipEntry } from '../../client/build/zip-entries.ts'
import { HOME } from '../house/sources.ts'

/** The package as `npm run package` makes it. */
let folder = ''
let vsix = ''
let entries: readonly ZipEntry[] = []

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'floorscribe-vsix-'))
  vsix = join(folder, 'floorscribe.vsix')
  entries = makePackage(vsix)
}, 180_000)
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const manifest = JSON.parse(readFileSync(join(HOME, 'package.json'), 'utf8'))
const paths = () => entries.map(({ path }) => path)

describe('the extension in one file', () => {
  test('is small enough', () => {
    expect(statSync(vsix).size).toBeLessThan(MOST_BYTES)
  })

  test('holds what it runs and shows, its papers, and nothing else', () => {
    const folders =
      /^(extension\/(?:client\/walkthrough|dist\/schema|dist\/server|examples|syntaxes))\/.*/
    const kinds = new Set(paths().map((path) => path.replace(folders, '$1')))
    expect([...kinds].sort()).toEqual([
      '[Content_Types].xml',
      'extension.vsixmanifest',
      'extension/LICENSE.txt',
      'extension/changelog.md',
      'extension/client/media/file.svg',
      'extension/client/media/icon.png',
      'extension/client/walkthrough',
      'extension/dist/THIRD-PARTY.txt',
      'extension/dist/extension-web.cjs',
      'extension/dist/extension.cjs',
      'extension/dist/floorscribe.mjs',
      'extension/dist/page.css',
      'extension/dist/page.js',
      'extension/dist/schema',
      'extension/dist/server',
      'extension/dist/server-web.js',
      'extension/examples',
      'extension/package.json',
      'extension/readme.md',
      'extension/server/LANGUAGE.md',
      'extension/syntaxes',
    ])
  })

  test('holds every file that its manifest names', () => {
    const named = [
      ...JSON.stringify(manifest.contributes).matchAll(/"(?:\.\/)?((?:client|syntaxes)\/[^"]+)"/g),
    ]
    const files = [
      manifest.main,
      manifest.browser,
      manifest.icon,
      ...named.map(([, path]) => path!),
    ]
    expect(files.length).toBeGreaterThan(10)
    const missing = files
      .map((path: string) => `extension/${path.replace(/^\.\//, '')}`)
      .filter((path) => !paths().includes(path))
    expect(missing).toEqual([])
  })

  test('its table of sizes adds up to its largest parts', () => {
    const table = sizeTable(entries, statSync(vsix).size)
    expect(table).toMatch(/^extension\/dist\/server\S* +\d+ kB +\d+ kB\n/)
    expect(table).toContain('\nthe package')
  })
})

describe('the manifest', () => {
  const commands = manifest.contributes.commands.map(({ command }: { command: string }) => command)
  const settings = manifest.contributes.configuration.properties

  test('runs anywhere: on Node and in a browser, in folders of strangers and on no disk', () => {
    expect(manifest.capabilities).toEqual({
      untrustedWorkspaces: { supported: true },
      virtualWorkspaces: true,
    })
    expect(manifest.activationEvents).not.toContain('*')
    expect(existsSync(join(HOME, manifest.main)) && existsSync(join(HOME, manifest.browser))).toBe(
      true,
    )
  })

  test('every command in a menu, on a key or in the walkthrough is one of its own', () => {
    const text = JSON.stringify([
      manifest.contributes.menus,
      manifest.contributes.keybindings,
      manifest.contributes.walkthroughs,
    ])
    const used = [...text.matchAll(/(?:"command":"|command:|onCommand:)(floorscribe\.\w+)/g)]
    expect(used.length).toBeGreaterThan(10)
    expect(used.map(([, id]) => id).filter((id) => !commands.includes(id))).toEqual([])
  })

  test('its commands are those that the extension knows', () => {
    const bundle = readFileSync(join(HOME, 'dist/extension.cjs'), 'utf8')
    expect(commands.filter((id: string) => !bundle.includes(`"${id}"`))).toEqual([])
  })

  test('its settings are few, and each is explained', () => {
    const all = Object.entries<{ description?: string; markdownDescription?: string }>(settings)
    expect(all.length).toBeLessThan(25)
    const mute = all.filter(
      ([, one]) =>
        !(one.description ?? one.markdownDescription)?.endsWith('.') &&
        !(one.markdownDescription ?? '').endsWith(')'),
    )
    expect(mute.map(([name]) => name)).toEqual([])
  })

  test.each([
    [
      `bedroom.floor:7:3: error word-unknown: No line starts so.`,
      ['bedroom.floor', '7', '3', 'error', 'word-unknown', 'No line starts so.'],
    ],
    [
      `a:b/c d.floor:2:1: incomplete job-unfinished: No floor: yet.`,
      ['a:b/c d.floor', '2', '1', 'incomplete', 'job-unfinished', 'No floor: yet.'],
    ],
    ['  bedroom.floor:5:3: the reading that it is held against', null],
    ['bedroom.floor: 2 errors, 1 note', null],
  ])('the editor reads the line %s of "check"', (line, parts) => {
    const [{ pattern }] = manifest.contributes.problemMatchers
    expect(new RegExp(pattern.regexp).exec(line)?.slice(1) ?? null).toEqual(parts)
    expect([
      pattern.file,
      pattern.line,
      pattern.column,
      pattern.severity,
      pattern.code,
      pattern.message,
    ]).toEqual([1, 2, 3, 4, 5, 6])
  })
})
