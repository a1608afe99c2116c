import { describe, expect, test } from 'vitest'
import { print } from '../../server/src/language/print.ts'
import type { Tree } from '../../server/src/language/tree.ts'
import { type Block, blockTexts } from './blocks.ts'
import { lineOf, read, sample, samples } from './said.ts'

/** Blocks by what opens them, without the one that is damaged. */
function others(tree: Tree, damaged: string): ReadonlyMap<string, string> {
  return new Map(
    blockTexts(tree)
      .filter((block: Block) => block.title !== damaged)
      .map((block) => [block.title, block.outline]),
  )
}

interface Damage {
  readonly text: string
  readonly line: number
}

/** Each token of a stretch deleted, doubled, exchanged with the next but one, replaced. */
function* damages(text: string, from: number, to: number): Generator<Damage> {
  const tokens = read(text)
    .lines.flatMap((line) => line.tokens)
    .filter((token) => token.kind !== 'blank' && token.span.start >= from && token.span.end <= to)
  for (const [index, token] of tokens.entries()) {
    const { start, end } = token.span
    const put = (by: string): Damage => ({
      text: text.slice(0, start) + by + text.slice(end),
      line: lineOf(text, start),
    })
    yield put('')
    yield put(token.text + token.text)
    yield put(`${token.text} ${token.text}`)
    yield put('wibble')
    yield put('12.4')
    yield put(tokens[(index + 1) % tokens.length]!.text)
  }
}

describe('damage inside one room', () => {
  test.each([
    ['upper-hall', 'room study'],
    ['kitchen', 'room kitchen'],
    ['living-room', 'room living room'],
    ['old-parlour', 'room old parlour'],
    ['bedroom', 'room bedroom 1'],
  ])('%s, %s: the other blocks stay as they were', (name, title) => {
    const text = sample(name)
    const from = text.indexOf(`\n${title}\n`) + title.length + 2
    const blank = text.indexOf('\n\n', from)
    const untouched = others(read(text), title)
    for (const damage of damages(text, from, blank)) {
      const tree = read(damage.text)
      const { messages } = tree
      expect(others(tree, title), damage.text).toEqual(untouched)
      expect(messages.length, damage.text).toBeLessThanOrEqual(3)
      const first = messages[0]
      if (first === undefined) continue
      expect(Math.abs(lineOf(damage.text, first.span.start) - damage.line)).toBeLessThanOrEqual(1)
    }
  })

  test('the line that opens a room damaged: the rooms around it stay as they were', () => {
    const text = sample('upper-hall')
    const from = text.indexOf('room study')
    for (const damage of damages(text, from, from + 'room study'.length)) {
      // Where the word itself is gone, the line no longer starts in column one.
      if (damage.text.startsWith(' ', from)) continue
      const tree = read(damage.text)
      const blocks = others(tree, 'room study')
      for (const [title, outline] of others(read(text), 'room study')) {
        expect(blocks.get(title), damage.text).toBe(outline)
      }
      expect(tree.messages.length).toBeLessThanOrEqual(3)
    }
  })
})

describe('prefixes of every sample', () => {
  test.each(samples)(
    '$name: blocks above the cut stay, and at most 3 messages come',
    ({ text }) => {
      const whole = blockTexts(read(text))
      // A step that is prime to the length of no line: every kind of place is cut, at a seventh of the cost.
      for (let cut = 0; cut <= text.length; cut += 7) {
        const part = text.slice(0, cut)
        const tree = read(part)
        if (print(tree) !== part) expect.fail(`lost text after ${cut}`)
        if (tree.messages.length > 3) expect.fail(`too many messages after ${cut}`)
        const complete = blockTexts(tree).slice(0, -1)
        expect(complete).toEqual(whole.slice(0, complete.length))
      }
    },
  )
})
