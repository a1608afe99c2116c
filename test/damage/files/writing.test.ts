import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { replace } from '../../../server/src/host/node-replace.ts'
import { comeBetween, fault } from './faults.ts'

let home = ''
const at = (name: string) => join(home, name)

beforeAll(() => {
  home = mkdtempSync(join(tmpdir(), 'floorscribe-damage-'))
})
beforeEach(() => {
  rmSync(home, { recursive: true, force: true })
  mkdirSync(home)
  writeFileSync(at('plan.svg'), 'old')
})
afterAll(() => rmSync(home, { recursive: true, force: true }))

const NEW = Buffer.from('new')

/** Replaces a file on a disk that says no at one step, once. */
async function replaceWith(path: string, step: string, code: string) {
  let said = false
  const undo = comeBetween((name) => {
    if (name !== step || said) return
    said = true
    throw fault(code)
  })
  const replaced = await replace(path, NEW)
  undo()
  return replaced
}

/** Each thing that a disk does not do, wherever it happens: the reason, the old file intact, no litter. */
const FAULTS = ['open', 'writeFile', 'sync', 'close', 'rename'].flatMap((step) =>
  [
    ['EIO', 'the disk reported a fault'],
    ['ENOSPC', 'the disk is full'],
    ['EDQUOT', 'your share of the disk is full'],
    ['EROFS', 'the disk is read-only'],
    ['EACCES', 'you have no permission for it'],
    ['ETXTBSY', 'another program is using it'],
    ['EWHATEVER', 'the system said EWHATEVER'],
  ].map(([code, reason]) => [step, code!, reason!] as const),
)

describe('a disk that says no', () => {
  test.each(FAULTS)('at %s, with %s: %s', async (step, code, reason) => {
    expect(await replaceWith(at('plan.svg'), step, code)).toEqual({ kind: 'failed', reason })
    expect(readFileSync(at('plan.svg'), 'utf8')).toBe('old')
    expect(readdirSync(home)).toEqual(['plan.svg'])
  })

  test.each(FAULTS)('at %s, with %s: where nothing was, nothing is', async (step, code) => {
    expect((await replaceWith(at('other.svg'), step, code)).kind).toBe('failed')
    expect(readdirSync(home)).toEqual(['plan.svg'])
  })
})

describe('targets that are none', () => {
  test('a folder, a device, a missing folder, a name too long, a link in a ring', async () => {
    mkdirSync(at('folder'))
    symlinkSync('ring', at('ring'))
    const said = async (path: string) => {
      const replaced = await replace(path, NEW)
      return replaced.kind === 'failed' ? replaced.reason : replaced.kind
    }
    expect(await said(at('folder'))).toBe('it is a folder')
    expect(await said('/dev/full')).toBe('it is no file on a disk')
    expect(await said('/dev/zero')).toBe('it is no file on a disk')
    expect(await said(at('none/plan.svg'))).toBe('its folder does not exist')
    expect(await said(at('plan.svg/plan.svg'))).toBe('its folder is a file')
    expect(await said(at('x'.repeat(300)))).toBe('its name is too long')
    expect(await said(at('ring'))).toBe('it is a link that leads back to itself')
    expect(readdirSync(home).sort()).toEqual(['folder', 'plan.svg', 'ring'])
  })

  test('a file that only its owner may read stays so', async () => {
    chmodSync(at('plan.svg'), 0o600)
    expect(await replace(at('plan.svg'), NEW)).toEqual({ kind: 'replaced' })
    expect(readFileSync(at('plan.svg'), 'utf8')).toBe('new')
    expect(existsSync(at('.part'))).toBe(false)
  })
})

test('two exports at once, and twenty: one of them stands, whole, and nothing beside it', async () => {
  const texts = Array.from({ length: 20 }, (_, i) => `${i}`.repeat(100_000))
  const done = await Promise.all(texts.map((text) => replace(at('plan.svg'), Buffer.from(text))))
  expect(done).toEqual(texts.map(() => ({ kind: 'replaced' })))
  expect(texts).toContain(readFileSync(at('plan.svg'), 'utf8'))
  expect(readdirSync(home)).toEqual(['plan.svg'])
})
