import { describe, expect, it } from 'vitest'
import { includesOf, notRead, reach } from '../../server/src/job/includes.ts'
import { parse } from '../../server/src/language/parse.ts'

function follow(files: Readonly<Record<string, string>>, root = 'job.floor') {
  const found = reach(
    Object.entries(files).map(([file, text]) => parse(file, text)),
    root,
  )
  return {
    files: found.trees.map(({ file }) => file),
    missing: found.missing.map(({ path }) => path),
    said: found.messages.map(({ code, text, span }) => `${span.file} ${code}: ${text}`),
  }
}

describe('which file an include line means', () => {
  const where = (typed: string, from = 'job.floor', root = 'job.floor') => {
    const found = includesOf(parse(from, `include ${typed}\n`), root)
    return found.includes[0]?.path ?? found.messages[0]?.text
  }
  const READS = 'An include names a file below the job, such as prices/spring.floor.'

  it.each([
    ['products.floor', 'products.floor'],
    ['prices/spring.floor', 'prices/spring.floor'],
    ['./prices/../products.floor', 'products.floor'],
    ['my prices.floor', 'my prices.floor'],
    ['Prices.FLOOR', 'Prices.FLOOR'],
    ['spring.floor  # the list', 'spring.floor'],
  ])('%s', (typed, path) => {
    expect(where(typed)).toBe(path)
  })

  it('is seen from the file that holds the line, and kept below the root', () => {
    expect(where('spring.floor', 'jobs/2027/prices/list.floor', 'jobs/2027/job.floor')).toBe(
      'jobs/2027/prices/spring.floor',
    )
    expect(where('../larch.floor', 'jobs/prices/list.floor', 'jobs/job.floor')).toBe(
      'jobs/larch.floor',
    )
    expect(where('../../larch.floor', 'jobs/prices/list.floor', 'jobs/job.floor')).toBe(
      `"../../larch.floor" leads out of the job's folder by "..". ${READS}`,
    )
  })

  it.each([
    ['../products.floor', `"../products.floor" leads out of the job's folder by "..". ${READS}`],
    ['a/../../b.floor', `"a/../../b.floor" leads out of the job's folder by "..". ${READS}`],
    ['/etc/products.floor', `"/etc/products.floor" is a full path. ${READS}`],
    ['C:/products.floor', `"C:/products.floor" is a full path. ${READS}`],
    ['c:products.floor', `"c:products.floor" is a full path. ${READS}`],
    ['https://example.com/a.floor', `"https://example.com/a.floor" is an address. ${READS}`],
    ['file:a.floor', `"file:a.floor" is an address. ${READS}`],
    ['a.floor:hidden.floor', `"a.floor:hidden.floor" is an address. ${READS}`],
    [
      'prices\\spring.floor',
      `"prices\\spring.floor" is written with \\; folders are parted by / here, on every system. ${READS}`,
    ],
    [
      '\\\\server\\a.floor',
      `"\\\\server\\a.floor" is written with \\; folders are parted by / here, on every system. ${READS}`,
    ],
    [
      'nul.floor',
      `"nul.floor" holds the name nul.floor, which some systems keep for a device. ${READS}`,
    ],
    [
      'prices/COM1.floor',
      `"prices/COM1.floor" holds the name COM1.floor, which some systems keep for a device. ${READS}`,
    ],
    ['prices.txt', `"prices.txt" does not end in .floor. ${READS}`],
    ['.git/config', `".git/config" does not end in .floor. ${READS}`],
  ])('%s is refused', (typed, text) => {
    expect(where(typed)).toBe(text)
  })
})

describe('following the lines', () => {
  it('reads each file once, in the order of the lines', () => {
    expect(
      follow({
        'job.floor': 'job x\ninclude products.floor\ninclude prices.floor\n',
        'prices.floor': 'include products.floor\n',
        'products.floor': 'product larch\n',
        'other.floor': 'product oak\n',
      }),
    ).toEqual({ files: ['job.floor', 'products.floor', 'prices.floor'], missing: [], said: [] })
  })

  it('tells what is missing', () => {
    const found = reach(
      [parse('job.floor', 'job x\ninclude a.floor\ninclude b.floor\n')],
      'job.floor',
    )
    expect(found.missing.map(({ path }) => path)).toEqual(['a.floor', 'b.floor'])
    expect(notRead(found.missing[0]!, 'job.floor', undefined).text).toBe(
      'There is no file "a.floor" below the job\'s folder. Until it is read, what this job takes from it is missing.',
    )
    expect(
      notRead(found.missing[0]!, 'job.floor', '"a.floor" is a folder; a file is needed here.').text,
    ).toBe(
      '"a.floor" is a folder; a file is needed here. Until it is read, what this job takes from it is missing.',
    )
    expect(reach([], 'job.floor')).toEqual({ trees: [], missing: [], messages: [] })
  })

  it('shows the whole chain of a circle', () => {
    const files = {
      'job.floor': 'job x\ninclude a.floor\n',
      'a.floor': 'include b.floor\n',
      'b.floor': 'include c.floor\n',
      'c.floor': 'include a.floor\n',
    }
    expect(follow(files)).toEqual({
      files: ['job.floor', 'a.floor', 'b.floor', 'c.floor'],
      missing: [],
      said: [
        'c.floor include-circle: These files include each other in a circle: a.floor includes b.floor, which includes c.floor, which includes a.floor. Leave one of these include lines out.',
      ],
    })
    expect(follow({ 'job.floor': 'job x\ninclude job.floor\n' }).said).toEqual([
      'job.floor include-circle: These files include each other in a circle: job.floor includes job.floor. Leave one of these include lines out.',
    ])
  })

  it('does not read another job', () => {
    expect(
      follow({ 'job.floor': 'job x\ninclude b.floor\n', 'b.floor': 'job y\nroom hall\n' }),
    ).toEqual({
      files: ['job.floor'],
      missing: [],
      said: [
        'job.floor include-is-a-job: b.floor is a job of its own (it has a job line), so it is not read here. Move what both need into a file without a job line and include that.',
      ],
    })
  })

  it('ends a chain of 100', () => {
    const chain = (length: number) =>
      Object.fromEntries(
        Array.from({ length }, (_, i) => [
          i === 0 ? 'job.floor' : `${i}.floor`,
          `include ${i + 1}.floor\n`,
        ]),
      )
    expect(follow({ ...chain(100), '100.floor': '' }).said).toEqual([])
    expect(follow({ ...chain(101), '101.floor': '' }).said).toEqual([
      '100.floor include-too-deep: This include is number 101 of a chain; at most 100 files may include one another in a row.',
    ])
  })
})
