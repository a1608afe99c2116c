import {
  chmodSync,
  copyFileSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { basename, join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { expectGolden } from '../golden.ts'
import { filesBelow, HOME } from '../house/sources.ts'
import { parseCommandTest, printCommandTest, runCommandTest } from './clitest.ts'

const BUNDLE = join(HOME, 'dist/floorscribe.mjs')

/** A folder that anyone may read, with the program as it is shipped and the Node it runs on. */
let stage = ''

beforeAll(() => {
  expect(existsSync(BUNDLE), 'dist/floorscribe.mjs is missing: npm run build').toBe(true)
  stage = mkdtempSync(join(tmpdir(), 'floorscribe-cli-'))
  mkdirSync(join(stage, 'bin'))
  copyFileSync(BUNDLE, join(stage, 'bin/floorscribe'))
  cpSync(join(HOME, 'examples'), join(stage, 'examples'), { recursive: true })
  layNode()
  layPlainly()
  chmodSync(stage, 0o755)
})
afterAll(() => rmSync(stage, { recursive: true, force: true }))

/** Root's own Node may lie where no one else can reach it. */
function layNode(): void {
  const node = join(stage, 'bin/node')
  if (process.getuid?.() === 0) copyFileSync(process.execPath, node)
  else symlinkSync(process.execPath, node)
}

/** `plainly COMMAND` runs it as a person without special rights, whoever runs the tests. */
function layPlainly(): void {
  const asNobody = 'setpriv --reuid=65534 --regid=65534 --clear-groups'
  const prefix = process.getuid?.() === 0 ? asNobody : 'env'
  writeFileSync(join(stage, 'bin/plainly'), `#!/bin/sh\nexec ${prefix} "$@"\n`, { mode: 0o755 })
}

const environment = () => ({
  PATH: `${join(stage, 'bin')}:/usr/local/bin:/usr/bin:/bin`,
  EXAMPLES: join(stage, 'examples'),
  HOME: stage,
  LC_ALL: 'C',
  TZ: 'UTC',
})

const files = filesBelow('test/cli').filter((path) => path.endsWith('.clitest'))

describe('the command line, as people type it', () => {
  test.each(files)('%s', { timeout: 60_000 }, (path) => {
    const folder = mkdtempSync(join(stage, `${basename(path, '.clitest')}-`))
    chmodSync(folder, 0o777)
    const asked = parseCommandTest(readFileSync(join(HOME, path), 'utf8'))
    const answered = runCommandTest(asked, folder, environment())
    expectGolden(join(HOME, path), printCommandTest(answered))
  })

  test('every one of them runs something', () => {
    expect(files.length).toBeGreaterThan(20)
    const runs = (path: string) =>
      parseCommandTest(readFileSync(join(HOME, path), 'utf8')).steps.some(
        ({ kind }) => kind === 'run',
      )
    expect(files.filter((path) => !runs(path))).toEqual([])
  })
})
