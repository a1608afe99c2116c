import { describe, expect, test } from 'vitest'
import { checkJson } from '../../server/src/report/json/check.ts'
import { layoutJson } from '../../server/src/report/json/layout.ts'
import { writeJson } from '../../server/src/report/json/write.ts'
import { house } from './house.ts'
import { laid } from './laid.ts'

describe('JSON as it is written', () => {
  test('is JSON, with keys in the order they are given', () => {
    const value = { b: 1, a: [{ z: null, y: 'x'.repeat(200) }], '10': true, '2': 'ü\u2028"' }
    const text = writeJson(value)
    expect(JSON.parse(text)).toEqual(value)
    expect(text.indexOf('"b"')).toBeLessThan(text.indexOf('"a"'))
    expect(text.endsWith('}\n')).toBe(true)
  })

  test('has one piece a line, with its course and plank, so that differences read', () => {
    const compiled = laid('floorscribe 1\njob Test\n')
    const { published } = house().floors[0]!
    const text = layoutJson({ ...compiled, floors: [{ published } as (typeof compiled.floors)[0]] })
    const lines = text.split('\n').filter((line) => /^ +\{"piece":/.test(line))
    expect(lines).toHaveLength(published.pieces.length)
    for (const line of lines) expect(line).toMatch(/^ +\{"piece":\d+,"course":\d+,"plank":\d+,/)
  })
})

describe('a message in JSON', () => {
  test('has its place, from 1, and its sure repairs', () => {
    const text = 'floorscribe 1\njob Test\nroom den\nnorth 12\' 0"\n'
    const [message] = JSON.parse(checkJson(laid(text))).messages
    expect(message).toMatchObject({ file: 'job.floor', from: { line: 4, column: 1 } })
    expect(message.code).toMatch(/^[a-z]+(-[a-z]+)*$/)
    expect(Array.isArray(message.fixes)).toBe(true)
    for (const fix of message.fixes)
      expect(fix.edits[0]).toMatchObject({ file: 'job.floor', from: { line: 4 } })
  })
})
