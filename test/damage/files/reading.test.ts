import {
  appendFileSync,
  chmodSync,
  mkdirSync,
  mkdtempSync,
  rmSync,
  symlinkSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { compile } from '../../../server/src/compile.ts'
import { gather } from '../../../server/src/host/gather.ts'
import type { Host } from '../../../server/src/host/host.ts'
import { LARGEST_TEXT } from '../../../server/src/host/host.ts'
import { NODE_HOST } from '../../../server/src/host/node.ts'
import type { Compiled } from '../../../server/src/report/compiled.ts'
import { comeBetween, fault } from './faults.ts'

let home = ''
const at = (name: string) => join(home, name)

beforeAll(() => {
  home = mkdtempSync(join(tmpdir(), 'floorscribe-damage-'))
  chmodSync(home, 0o755)
})
afterAll(() => rmSync(home, { recursive: true, force: true }))

/** Compiles a job of the folder as the command line does, and gives what is said of its files. */
async function saidOf(text: string, host: Host = NODE_HOST): Promise<readonly string[]> {
  const root = { folder: home, name: 'job.floor', text }
  const { messages } = await gather<Compiled>(host, root, compile)
  return messages
    .filter(({ weight }) => weight === 'error')
    .map((one) => `${one.code}: ${one.text}`)
}

/** A host that reads the folder, counts, and does something before each reading. */
function watched(before: (path: string) => void = () => {}): Host & { readonly asked: string[] } {
  const asked: string[] = []
  const readBelow: Host['readBelow'] = async (folder, path, limit) => {
    asked.push(path)
    before(path)
    return NODE_HOST.readBelow(folder, path, limit)
  }
  return { ...NODE_HOST, readBelow, asked }
}

const READS = 'An include names a file below the job, such as prices/spring.floor.'
const MISSING = 'Until it is read, what this job takes from it is missing.'

/** What no include may lead to: refused by its name alone, and nothing is read. */
const REFUSED: readonly (readonly [typed: string, says: string])[] = [
  ['../prices.floor', `"../prices.floor" leads out of the job's folder by "..". ${READS}`],
  [
    'a/../../prices.floor',
    `"a/../../prices.floor" leads out of the job's folder by "..". ${READS}`,
  ],
  ['/etc/passwd', `"/etc/passwd" is a full path. ${READS}`],
  ['C:/prices.floor', `"C:/prices.floor" is a full path. ${READS}`],
  [
    'https://example.com/prices.floor',
    `"https://example.com/prices.floor" is an address. ${READS}`,
  ],
  ['file:///etc/prices.floor', `"file:///etc/prices.floor" is an address. ${READS}`],
  [
    'CON.floor',
    `"CON.floor" holds the name CON.floor, which some systems keep for a device. ${READS}`,
  ],
  [
    'lists/NUL.floor',
    `"lists/NUL.floor" holds the name NUL.floor, which some systems keep for a device. ${READS}`,
  ],
  [
    'com7.floor',
    `"com7.floor" holds the name com7.floor, which some systems keep for a device. ${READS}`,
  ],
  [
    'LPT1.floor',
    `"LPT1.floor" holds the name LPT1.floor, which some systems keep for a device. ${READS}`,
  ],
  ['/dev/zero', `"/dev/zero" is a full path. ${READS}`],
  ['prices.txt', `"prices.txt" does not end in .floor. ${READS}`],
]

describe('includes', () => {
  test.each(REFUSED)('%s is refused, and nothing is read', async (typed, says) => {
    const host = watched()
    expect(await saidOf(`job x\ninclude ${typed}\n`, host)).toEqual([`include-refused: ${says}`])
    expect(host.asked).toEqual([])
  })

  test('a link out of the folder is refused, and what it leads to is not read', async () => {
    const outside = mkdtempSync(join(tmpdir(), 'floorscribe-outside-'))
    writeFileSync(join(outside, 'secret.floor'), 'room secret\n')
    symlinkSync(join(outside, 'secret.floor'), at('link.floor'))
    symlinkSync(outside, at('linked'))
    const says = (name: string) =>
      `include-not-read: "${name}" is a link that leads out of the job's folder, so it was not read; put the file itself below that folder. ${MISSING}`
    const said = await saidOf('job x\ninclude link.floor\ninclude linked/secret.floor\n')
    expect(said).toEqual([says('link.floor'), says('linked/secret.floor')])
    rmSync(outside, { recursive: true })
  })

  test('a circle shows its chain, and a diamond is read once', async () => {
    const files = {
      'a.floor': 'include b.floor\n',
      'b.floor': 'include c.floor\n',
      'c.floor': 'include a.floor\n',
    }
    const diamond = {
      'left.floor': 'include base.floor\n',
      'right.floor': 'include base.floor\n',
      'base.floor': '',
    }
    for (const [name, text] of Object.entries({ ...files, ...diamond }))
      writeFileSync(at(name), text)
    expect(await saidOf('job x\ninclude a.floor\n')).toEqual([
      'include-circle: These files include each other in a circle: a.floor includes b.floor, which includes c.floor, which includes a.floor. Leave one of these include lines out.',
    ])
    const host = watched()
    expect(await saidOf('job x\ninclude left.floor\ninclude right.floor\n', host)).toEqual([])
    expect(host.asked).toEqual(['left.floor', 'right.floor', 'base.floor'])
  })

  test('a folder, a pipe and a file that is not UTF-8 have their own sentence each', async () => {
    mkdirSync(at('folder.floor'))
    writeFileSync(at('latin.floor'), Buffer.from([0x72, 0x6f, 0x6f, 0x6d, 0x20, 0xe9, 0x0a]))
    writeFileSync(at('nul.floor'.replace('nul', 'zero')), 'room a\u0000\n')
    expect(
      await saidOf('job x\ninclude folder.floor\ninclude latin.floor\ninclude zero.floor\n'),
    ).toEqual([
      `include-not-read: "folder.floor" is a folder; a file is needed here. ${MISSING}`,
      `include-not-read: "latin.floor" is not written in UTF-8: byte E9 at line 1, column 6 fits no character. Save it as UTF-8. ${MISSING}`,
      'character-not-text: A sign that is no text stands here (U+0000). Take it out; if there are many, the file may be no text at all.',
    ])
  })

  test('a file that vanishes before its turn is missing, and the rest goes on', async () => {
    writeFileSync(at('first.floor'), 'room first\n')
    writeFileSync(at('second.floor'), 'room second\n')
    const host = watched((path) => {
      if (path === 'first.floor') unlinkSync(at('second.floor'))
    })
    expect(await saidOf('job x\ninclude first.floor\ninclude second.floor\n', host)).toEqual([
      `include-not-read: There is no file "second.floor". ${MISSING}`,
    ])
  })
})

const CHANGING = `include-not-read: "busy.floor" kept changing while it was read; run again when it is whole. ${MISSING}`

describe('a file that changes while it is read', () => {
  const path = () => at('busy.floor')

  /** Somebody adds to the file before it is looked at again, so many times. */
  function addedTo(times: number): () => void {
    let looks = 0
    return comeBetween((step, file) => {
      if (step !== 'stat' || !file.endsWith('busy.floor')) return
      looks += 1
      if (looks > 1 && looks <= times + 1) appendFileSync(path(), '# more\n')
    })
  }

  test('once: it is read again', async () => {
    writeFileSync(path(), 'room a\n')
    const undo = addedTo(1)
    const read = await NODE_HOST.read(path(), LARGEST_TEXT)
    undo()
    expect(read).toEqual({ kind: 'read', bytes: Buffer.from('room a\n# more\n') })
  })

  test('all the time: it is refused, with its own sentence', async () => {
    writeFileSync(path(), 'room a\n')
    const undo = addedTo(Infinity)
    const said = await saidOf('job x\ninclude busy.floor\n')
    undo()
    expect(said).toEqual([CHANGING])
  })

  test('a disk that reports a fault in the middle is told', async () => {
    writeFileSync(path(), 'room a\n')
    const undo = comeBetween((step, file) => {
      if (step === 'read' && file.endsWith('busy.floor')) throw fault('EIO')
    })
    const said = await saidOf('job x\ninclude busy.floor\n')
    undo()
    expect(said).toEqual([
      `include-not-read: "busy.floor" could not be read: the disk reported a fault. ${MISSING}`,
    ])
  })

  test('whatever was read is one state of it, whole', async () => {
    const path = at('states.floor')
    const state = (i: number) => `${`${i % 10}`.repeat(70_000)}\n`
    for (let i = 0; i < 30; i++) {
      writeFileSync(path, state(i))
      const reading = NODE_HOST.read(path, LARGEST_TEXT)
      if (i % 3 === 0) appendFileSync(path, state(i))
      const read = await reading
      if (read.kind !== 'read') continue
      const text = Buffer.from(read.bytes).toString()
      expect([state(i), state(i) + state(i)]).toContain(text)
    }
  })
})
