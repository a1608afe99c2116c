import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { applyTo, listChange } from '../../server/src/features/preview/list-change.ts'

interface Item {
  readonly id: string
  readonly said: number
}

const list = (ids: string): readonly Item[] => [...ids].map((id) => ({ id, said: 0 }))
const ids = (items: readonly Item[]): string => items.map(({ id }) => id).join('')

const anyList = fc.uniqueArray(
  fc.record({ id: fc.constantFrom(...'abcdefghijklmnop'), said: fc.integer({ min: 0, max: 1 }) }),
  { selector: ({ id }) => id },
)

describe('a change of a list', () => {
  test('leads from any list to any other', () => {
    fc.assert(
      fc.property(anyList, anyList, (before, after) => {
        expect(applyTo(before, listChange(before, after))).toEqual(after)
      }),
      { seed: 5, numRuns: 2000 },
    )
  })

  test('names nothing where nothing differs', () => {
    const same = list('abc')
    expect(listChange(same, structuredClone(same))).toEqual({ gone: [], put: [] })
  })

  test('names only what is new, gone or another, and where it stands', () => {
    const before = list('abcd')
    const after = [before[0]!, { id: 'x', said: 0 }, { id: 'c', said: 1 }, before[3]!]
    expect(listChange(before, after)).toEqual({
      gone: ['b'],
      put: [
        { item: { id: 'x', said: 0 }, after: { id: 'a' } },
        { item: { id: 'c', said: 1 }, after: 'stays' },
      ],
    })
  })

  test('moves one item, not all that it passes', () => {
    const { put } = listChange(list('abcdef'), list('fabcde'))
    expect(put).toEqual([{ item: { id: 'f', said: 0 }, after: { id: null } }])
  })

  test('what is put after one that is not there comes last', () => {
    const put = [{ item: { id: 'x', said: 0 }, after: { id: 'gone' } }]
    expect(ids(applyTo(list('ab'), { gone: [], put }))).toBe('abx')
  })

  test('tells plain data apart to the last part', () => {
    const deep = (x: number) => [{ id: 'a', said: 0, at: [{ x }, null] }]
    expect(listChange(deep(1), deep(1)).put).toEqual([])
    expect(listChange(deep(1), deep(2)).put).toHaveLength(1)
  })
})
