import { expect, test } from 'vitest'
import { inOrder } from '../../server/src/facts/in-order.ts'
import { message } from '../../server/src/facts/message.ts'

const said = (file: string, start: number, code: string, text: string) =>
  message('error', code, { file, start, end: start + 1 }, text)

const told = (messages: readonly ReturnType<typeof said>[]) =>
  inOrder(messages, ['root', 'part']).map(({ text }) => text)

test('by file, place and code', () => {
  const [a, b, c, d] = [
    said('part', 0, 'x', 'in the part'),
    said('root', 9, 'b', 'second'),
    said('root', 9, 'a', 'first'),
    said('root', 10, 'a', 'third'),
  ] as const
  expect(told([a, b, c, d])).toEqual(['first', 'second', 'third', 'in the part'])
})

test('what is said twice at one place is kept once, where it was said first', () => {
  const twice = said('root', 3, 'a', 'twice')
  const last = { ...said('root', 3, 'a', 'twice'), accepted: true }
  const ordered = inOrder([twice, said('root', 3, 'a', 'other'), last], ['root'])
  expect(ordered.map(({ text, accepted }) => [text, accepted])).toEqual([
    ['twice', true],
    ['other', false],
  ])
})

test('the same text elsewhere, and of another code, is said as well', () => {
  const ordered = told([
    said('root', 3, 'a', 'same'),
    said('root', 4, 'a', 'same'),
    said('root', 3, 'b', 'same'),
    said('elsewhere', 3, 'a', 'same'),
  ])
  expect(ordered).toHaveLength(4)
})
