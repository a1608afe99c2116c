import { describe, expect, test } from 'vitest'
import { below, canonical, folderOf, nameOf, pathBelow } from '../../server/src/lsp/addresses.ts'

describe('one address, however it is written', () => {
  test.each([
    ['file:///c%3A/a%20b/x.floor', 'file:///c%3A/a%20b/x.floor'],
    ['file:///C:/a b/x.floor', 'file:///c%3A/a%20b/x.floor'],
    ['FILE:///c:/a%20b/x.floor', 'file:///c%3A/a%20b/x.floor'],
    ["file:///it's(1)!*.floor", 'file:///it%27s%281%29%21%2A.floor'],
    ['file:///50%.floor', 'file:///50%25.floor'],
    ['file:///a%2Fb.floor', 'file:///a%2Fb.floor'],
    ['vscode-vfs://GitHub/x/y.floor', 'vscode-vfs://github/x/y.floor'],
    ['git:/a/x.floor?%7B%22ref%22%3A1%7D', 'git:/a/x.floor?%7B%22ref%22%3A1%7D'],
    ['untitled:Untitled-1', 'untitled:Untitled-1'],
    ['file:///\ud83d.floor', 'file:///%EF%BF%BD.floor'],
    ['', ''],
    ['nonsense', 'nonsense'],
  ])('%s', (typed, written) => {
    expect(canonical(typed)).toBe(written)
    expect(canonical(canonical(typed))).toBe(canonical(typed))
  })
})

test('a name, its folder, and the way back', () => {
  const uri = canonical('file:///jobs/a b/it%25s #1.floor'.replace('#', '%23'))
  expect(nameOf(uri)).toBe('it%s #1.floor')
  expect(below(folderOf(uri), nameOf(uri))).toBe(uri)
  expect(pathBelow('file:///jobs/', uri)).toBe('a b/it%s #1.floor')
  expect(pathBelow('file:///other/', uri)).toBeNull()
  expect(folderOf('untitled:Untitled-1')).toBe('untitled:')
})
