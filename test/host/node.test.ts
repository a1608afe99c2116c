import { execFileSync } from 'node:child_process'
import {
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { LARGEST_TEXT } from '../../server/src/host/host.ts'
import { NODE_HOST } from '../../server/src/host/node.ts'

/** `folder` holds the jobs; `home` is what lies around it. */
let home = ''
let folder = ''
const at = (name: string) => join(folder, name)

beforeAll(() => {
  home = mkdtempSync(join(tmpdir(), 'floorscribe-host-'))
  folder = join(home, 'jobs')
  mkdirSync(folder)
  writeFileSync(at('job.floor'), 'room bunk\n')
  mkdirSync(at('sub'))
})
afterAll(() => rmSync(home, { recursive: true, force: true }))

describe('reading a file', () => {
  test('whole, as bytes', async () => {
    expect(await NODE_HOST.read(at('job.floor'), LARGEST_TEXT)).toEqual({
      kind: 'read',
      bytes: Buffer.from('room bunk\n'),
    })
  })

  test('of exactly 5 MB, and one byte more', async () => {
    writeFileSync(at('most'), Buffer.alloc(LARGEST_TEXT))
    writeFileSync(at('more'), Buffer.alloc(LARGEST_TEXT + 1))
    expect((await NODE_HOST.read(at('most'), LARGEST_TEXT)).kind).toBe('read')
    expect((await NODE_HOST.read(at('more'), LARGEST_TEXT)).kind).toBe('too big')
  })

  test('that is none: nothing waits and nothing is guessed', async () => {
    execFileSync('mkfifo', [at('pipe')])
    symlinkSync('ring', at('ring'))
    const listener = createServer().listen(at('socket'))
    await new Promise((resolve) => listener.once('listening', resolve))
    const kinds = new Map<string, string>()
    for (const path of ['gone', 'job.floor/x', 'sub', 'pipe', 'ring', 'socket']
      .map(at)
      .concat('/dev/zero'))
      kinds.set(path.replace(`${folder}/`, ''), (await NODE_HOST.read(path, LARGEST_TEXT)).kind)
    listener.close()
    expect(Object.fromEntries(kinds)).toEqual({
      gone: 'missing',
      'job.floor/x': 'missing',
      sub: 'folder',
      pipe: 'pipe',
      ring: 'circular link',
      socket: 'socket',
      '/dev/zero': 'device',
    })
  })

  test('with a name that no disk takes', async () => {
    expect(await NODE_HOST.read(at('x'.repeat(300)), LARGEST_TEXT)).toEqual({
      kind: 'failed',
      reason: 'its name is too long',
    })
  })
})

describe('reading below a folder', () => {
  test('follows links that stay inside and refuses those that lead out', async () => {
    const outside = join(home, 'outside')
    mkdirSync(outside)
    writeFileSync(join(outside, 'prices.floor'), 'secret')
    symlinkSync(at('job.floor'), at('sub/inside'))
    symlinkSync(join(outside, 'prices.floor'), at('sub/out'))
    symlinkSync(outside, at('beside'))
    const kinds = []
    for (const path of [
      'job.floor',
      'sub/inside',
      'sub/out',
      'beside/prices.floor',
      '../outside/prices.floor',
      'gone',
    ])
      kinds.push((await NODE_HOST.readBelow(folder, path, LARGEST_TEXT)).kind)
    expect(kinds).toEqual(['read', 'read', 'outside', 'outside', 'outside', 'missing'])
  })

  test('a folder that only begins with the same letters is outside', async () => {
    mkdirSync(`${folder}-too`)
    writeFileSync(`${folder}-too/x`, '')
    symlinkSync(`${folder}-too/x`, at('neighbour'))
    expect((await NODE_HOST.readBelow(folder, 'neighbour', LARGEST_TEXT)).kind).toBe('outside')
  })

  test('the folder may itself be reached by a link', async () => {
    symlinkSync(folder, at('home'))
    expect((await NODE_HOST.readBelow(at('home'), 'job.floor', LARGEST_TEXT)).kind).toBe('read')
  })
})

describe('replacing a file', () => {
  const litter = () => readdirSync(folder).filter((name) => name.endsWith('.part'))

  test('writes a new one, and leaves nothing beside it', async () => {
    expect(await NODE_HOST.replace(at('new'), Buffer.from('one'))).toEqual({ kind: 'replaced' })
    expect(readFileSync(at('new'), 'utf8')).toBe('one')
    expect(litter()).toEqual([])
  })

  test('keeps what the old one may be used for', async () => {
    writeFileSync(at('tool'), 'old', { mode: 0o750 })
    await NODE_HOST.replace(at('tool'), Buffer.from('new'))
    expect(statSync(at('tool')).mode & 0o777).toBe(0o750)
    expect(readFileSync(at('tool'), 'utf8')).toBe('new')
  })

  test('writes through a link, which goes on pointing there', async () => {
    writeFileSync(at('sub/real'), 'old')
    symlinkSync('sub/real', at('link'))
    await NODE_HOST.replace(at('link'), Buffer.from('new'))
    expect(readFileSync(at('sub/real'), 'utf8')).toBe('new')
    expect(readFileSync(at('link'), 'utf8')).toBe('new')
  })

  test.each([
    ['sub', 'it is a folder'],
    ['none/there', 'its folder does not exist'],
    ['job.floor/there', 'its folder is a file'],
    ['/dev/full', 'it is no file on a disk'],
  ])('%s: no, since %s', async (path, reason) => {
    const target = path.startsWith('/') ? path : at(path)
    expect(await NODE_HOST.replace(target, Buffer.from('x'))).toEqual({ kind: 'failed', reason })
    expect(litter()).toEqual([])
  })

  test('fifty at once leave one of the fifty, whole', async () => {
    const texts = Array.from({ length: 50 }, (_, i) => `${i} `.repeat(20_000))
    await Promise.all(texts.map((text) => NODE_HOST.replace(at('busy'), Buffer.from(text))))
    expect(texts).toContain(readFileSync(at('busy'), 'utf8'))
    expect(litter()).toEqual([])
  })
})
