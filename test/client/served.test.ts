import { expect, test } from 'vitest'
import { servedDocuments } from '../../client/src/server/served.ts'

const writable = (scheme: string) =>
  scheme === 'sketchfs' ? true : scheme === 'git' ? false : undefined
const served = (...schemes: string[]) =>
  servedDocuments(schemes, writable).map(({ scheme }) => scheme)

test('files, unsaved texts and folders on other machines are served', () => {
  expect(served()).toEqual(
    expect.arrayContaining(['file', 'untitled', 'vscode-remote', 'vscode-vfs']),
  )
})

test('whatever can be written is served, and once', () => {
  expect(served('sketchfs', 'file', 'sketchfs').filter((one) => one === 'sketchfs')).toHaveLength(1)
})

test('what is only looked at is not: old versions, comparisons, outputs', () => {
  expect(served('git', 'output', 'review').filter((one) => /git|output|review/.test(one))).toEqual(
    [],
  )
})
