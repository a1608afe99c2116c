import { expect, test } from 'vitest'
import { faultOf, hold, unthrown } from './fault.ts'
import { fuzz } from './fuzz.ts'
import { shrink } from './shrink.ts'
import { worked } from './slow.ts'
import { holdSoundText, holdSoundValues } from './sound-values.ts'

const promiseOf = (check: () => void) => faultOf(check)?.promise ?? null

import type { Target } from './targets.ts'

test.each([
  'a total of NaN',
  'undefined rooms',
  '[object Object]',
  'area -0',
  'off by -0.0 sq ft',
  'null',
])('%j is no output', (text) => {
  expect(promiseOf(() => holdSoundText(text, '', 'it'))).toBe('it shows no value')
  expect(promiseOf(() => holdSoundText(text, text, 'what was typed'))).toBeNull()
})

test.each(['2026-10-02', '-0.25"', `-0' 3"`, 'nullified', 'room -01x', '10-0'])(
  '%j is one',
  (text) => {
    expect(promiseOf(() => holdSoundText(text, '', 'it'))).toBeNull()
  },
)

test('no number that is none hides in a value', () => {
  for (const bad of [Number.NaN, Number.POSITIVE_INFINITY, -0]) {
    const value = { list: [new Map([['a', { deep: bad }]])] }
    expect(promiseOf(() => holdSoundValues(value, 'it'))).toBe('it holds no number')
  }
  expect(promiseOf(() => holdSoundValues({ list: [0, 1n, null, -1.5] }, 'it'))).toBeNull()
})

test('a check that throws by itself is no fault of the text', () => {
  expect(() => faultOf(() => JSON.parse('{'))).toThrow(SyntaxError)
  expect(promiseOf(() => hold(false, 'this', () => 'why'))).toBe('this')
})

test('a text is shrunk to what matters in it', () => {
  const text = 'room den\n  north 12\n  east 9, called bay\n  south 12\n'
  expect(shrink(text, (one) => one.includes('called') && one.includes('den'))).toBe('dencalled')
  expect(shrink(text, () => false)).toBe(text)
})

/** A part that breaks its promises where the text says so. */
const FAULTY: Target = {
  name: 'parser',
  corpus: ['room den\n  door\n', 'room den\n  slow\n', 'room den\n  lost\n'],
  run: (text) => {
    if (text.includes('door')) unthrown('reading', () => JSON.parse(text))
    if (text.includes('slow')) for (const until = worked() + 105; worked() < until; );
    const kept = !text.includes('lost')
    return {
      codes: [],
      size: { pieces: 0, corners: 0 },
      hold: () => hold(kept, 'text is lost', () => text),
    }
  },
}

test('what throws, loses text or stays slow is found, each once', () => {
  const runs = { seed: 1, from: 0, count: 7 }
  const timed = fuzz(FAULTY, { ...runs, timed: true })
  expect([...timed.faults.keys()].sort()).toEqual([
    'parser is slow',
    'reading throws',
    'text is lost',
  ])
  expect([...fuzz(FAULTY, { ...runs, timed: false }).faults.keys()].sort()).toEqual([
    'reading throws',
    'text is lost',
  ])
})
