import { describe, expect, test } from 'vitest'
import { gather } from '../../server/src/host/gather.ts'
import type { FileRead, Host } from '../../server/src/host/host.ts'

/** A host whose folder is a map; it counts what is asked of it. */
function folderOf(files: Record<string, string | FileRead>) {
  const asked: string[] = []
  const host: Host = {
    read: async () => ({ kind: 'missing' }),
    readInput: async () => ({ kind: 'missing' }),
    replace: async () => ({ kind: 'failed', reason: 'nothing is written here' }),
    readBelow: async (folder, path) => {
      asked.push(`${folder}|${path}`)
      const file = new Map(Object.entries(files)).get(path)
      if (file === undefined) return { kind: 'missing' }
      return typeof file === 'string' ? { kind: 'read', bytes: Buffer.from(file) } : file
    },
  }
  return { host, asked }
}

interface Named {
  readonly texts: readonly string[]
  readonly absent: readonly (readonly [string, string])[]
}

/** Each line of a text is the name of another text; the result is what there is of each. */
function compileNames(
  texts: ReadonlyMap<string, string>,
  _root: string,
  absent: ReadonlyMap<string, string>,
): Named | { readonly missing: readonly string[] } {
  const named = [...texts.values()]
    .flatMap((text) => text.split('\n'))
    .filter((name) => name !== '')
  const missing = [...new Set(named)].filter((name) => !texts.has(name) && !absent.has(name))
  return missing.length > 0 ? { missing } : { texts: [...texts.keys()], absent: [...absent] }
}

const root = (text: string) => ({ folder: '/jobs', name: 'job.floor', text })

describe('gathering the texts of a job', () => {
  test('a job without includes asks for nothing', async () => {
    const { host, asked } = folderOf({})
    expect(await gather<Named>(host, root(''), compileNames)).toEqual({
      texts: ['job.floor'],
      absent: [],
    })
    expect(asked).toEqual([])
  })

  test('each text is fetched once, however many name it', async () => {
    const { host, asked } = folderOf({ a: 'shared\n', b: 'shared\na\n', shared: 'job.floor\n' })
    const { texts } = await gather<Named>(host, root('a\nb\n'), compileNames)
    expect(texts).toEqual(['job.floor', 'a', 'b', 'shared'])
    expect(asked).toEqual(['/jobs|a', '/jobs|b', '/jobs|shared'])
  })

  test('what cannot be read is handed over with its sentence, and the rest goes on', async () => {
    const { host } = folderOf({
      folder: { kind: 'folder' },
      latin: { kind: 'read', bytes: Buffer.of(0x61, 0x0a, 0xe9) },
      good: '',
    })
    const { texts, absent } = await gather<Named>(
      host,
      root('gone\nfolder\nlatin\ngood'),
      compileNames,
    )
    expect(texts).toEqual(['job.floor', 'good'])
    expect(absent).toEqual([
      ['gone', 'There is no file "gone".'],
      ['folder', '"folder" is a folder; a file is needed here.'],
      [
        'latin',
        '"latin" is not written in UTF-8: byte E9 at line 2, column 1 fits no character. Save it as UTF-8.',
      ],
    ])
  })

  test('a job of endless includes ends', async () => {
    const host: Host = {
      ...folderOf({}).host,
      readBelow: async (_folder, path) => ({ kind: 'read', bytes: Buffer.from(`${path}+`) }),
    }
    const { texts, absent } = await gather<Named>(host, root('a'), compileNames)
    expect(texts.length).toBe(1000)
    expect(absent[0]?.[1]).toMatch(/was not read: this job includes more than 1000 files\.$/)
  })

  test('names that a plain object knows are names like others', async () => {
    const { host } = folderOf({ constructor: '__proto__\n' })
    const { texts, absent } = await gather<Named>(host, root('constructor'), compileNames)
    expect(texts).toEqual(['job.floor', 'constructor'])
    expect(absent).toEqual([['__proto__', 'There is no file "__proto__".']])
  })

  test('a compile that asks again for what it was given is stopped', async () => {
    const { host } = folderOf({ a: '' })
    await expect(gather(host, root(''), () => ({ missing: ['a'] }) as never)).rejects.toThrow(
      'compile asks for texts that it has',
    )
  })
})
