import { describe, expect, test } from 'vitest'
import { compile } from '../../server/src/compile.ts'
import type { Message } from '../../server/src/facts/message.ts'
import type { Compiled } from '../../server/src/report/compiled.ts'
import { verify } from '../../server/src/verify/verify.ts'
import { expectGolden } from '../golden.ts'
import { type Case, casesIn, printCases } from './cases.ts'
import { figuresOf } from './figures.ts'

/** A case compiled; an include that is not among its files is not there. */
function compiled({ files, root }: Case): Compiled {
  const first = compile(files, root)
  if (!('missing' in first)) return first
  const absent = new Map(first.missing.map((path) => [path, `There is no file "${path}".`]))
  const without = compile(files, root, absent)
  if ('missing' in without) throw new Error(`still missing: ${without.missing.join(', ')}`)
  return without
}

/** Messages as `line:column weight code: text`, with the file where it is not the root. */
function messagesOf(one: Case): string {
  return compiled(one)
    .messages.filter(({ weight }) => weight !== 'note')
    .map((message) => `${place(message, one)} ${message.weight} ${message.code}: ${message.text}`)
    .join('\n')
}

function place({ span }: Message, { files, root }: Case): string {
  const before = (files.get(span.file) ?? '').slice(0, span.start).split('\n')
  const at = `${before.length}:${before.at(-1)!.length + 1}`
  return span.file === root ? at : `${span.file}:${at}`
}

describe.each(casesIn('good'))('good jobs, $file.pathname', ({ file, cases }) => {
  test.each(cases)('$name', (one) => {
    const result = compiled(one)
    expect(result.exit).not.toBe('errors')
    const floors = result.floors.map(({ published }) => published)
    const layouts = { format: 'floorscribe layout', version: 1, unit: 'nm', job: '', floors }
    expect(verify(JSON.parse(JSON.stringify(layouts))).faults).toEqual([])
  })

  test('come to what is pinned', () => {
    expectGolden(
      file.pathname,
      printCases(cases, (one) => figuresOf(compiled(one))),
    )
  })
})

describe.each(casesIn('bad'))('bad jobs, $file.pathname', ({ file, cases }) => {
  test.each(cases)('$name', (one) => {
    const result = compiled(one)
    expect(result.exit).not.toBe('sound')
    expect(result.messages.some(({ weight }) => weight !== 'note')).toBe(true)
  })

  test('are answered as pinned', () => {
    expectGolden(file.pathname, printCases(cases, messagesOf))
  })
})
