import { describe, expect, test } from 'vitest'
import {
  buried,
  type CrashBook,
  NO_CRASHES,
  noted,
  type Revival,
  type WorkEvent,
} from '../../client/src/server/crash-book.ts'
import type { Death } from '../../client/src/server/server.ts'

type Step = WorkEvent | { readonly kind: 'died'; readonly death: Death; readonly atMs: number }

const open = (file: string): Step => ({ kind: 'sent', task: `text of ${file}`, file })
const counted = (file: string): Step => ({ kind: 'answered', task: `text of ${file}` })
const fell = (atMs: number): Step => ({ kind: 'died', death: 'of itself', atMs })
const killed = (atMs: number): Step => ({ kind: 'died', death: 'from outside', atMs })

/** The book in the end, and what was decided after each death. */
function lived(steps: readonly Step[]): { book: CrashBook; revivals: readonly Revival[] } {
  const revivals: Revival[] = []
  let book = NO_CRASHES
  for (const step of steps) {
    if (step.kind !== 'died') book = noted(book, step)
    else {
      const { book: next, revival } = buried(book, step.death, step.atMs)
      book = next
      revivals.push(revival)
    }
  }
  return { book, revivals }
}

const waits = (steps: readonly Step[]) => lived(steps).revivals.map(({ waitMs }) => waitMs)
const onlyRead = (steps: readonly Step[]) => [...lived(steps).book.onlyRead]

describe('a server that falls of itself', () => {
  test('is back at once after the first fall, then later and later, and never given up', () => {
    const falls = Array.from({ length: 50 }, (_, i) => fell(i * 100))
    const waited = waits(falls)
    expect(waited.slice(0, 6)).toEqual([0, 1_000, 2_000, 5_000, 15_000, 60_000])
    expect(new Set(waited.slice(6))).toEqual(new Set([60_000]))
  })

  test('is back at once again when the last falls are long past', () => {
    expect(waits([fell(0), fell(1_000), fell(1_000 + 180_000)])).toEqual([0, 1_000, 0])
  })

  test('forgets its falls when a person starts it anew', () => {
    expect(waits([fell(0), fell(1), { kind: 'restarted' }, fell(2)])).toEqual([0, 1_000, 0])
  })
})

describe('a server that is put down from outside', () => {
  test('is back at once, a thousand times', () => {
    const kills = Array.from({ length: 1_000 }, (_, i) => killed(i))
    expect(new Set(waits(kills))).toEqual(new Set([0]))
  })

  test('did no wrong: no file is suspected, and a fall after it is the first', () => {
    const steps = [open('a'), killed(0), open('a'), killed(1), open('a'), killed(2)]
    expect(onlyRead(steps)).toEqual([])
    expect(waits([...steps, fell(3)])).toEqual([0, 0, 0, 0])
  })
})

describe('a file that the server cannot stand', () => {
  test('is only read once it was in work at two falls', () => {
    expect(onlyRead([open('a'), fell(0)])).toEqual([])
    expect(onlyRead([open('a'), fell(0), open('a'), fell(10)])).toEqual(['a'])
  })

  test('is told once', () => {
    const steps = [open('a'), fell(0), open('a'), fell(1), open('a'), fell(2)]
    expect(lived(steps).revivals.map(({ newlyOnlyRead }) => newlyOnlyRead)).toEqual([[], ['a'], []])
  })

  test('is no other that was counted before the fall', () => {
    const round = [open('good'), open('bad'), counted('good')]
    expect(onlyRead([...round, fell(0), ...round, fell(1)])).toEqual(['bad'])
  })

  test('may be one that was only asked about', () => {
    const ask = (n: number): Step => ({ kind: 'sent', task: `request ${n}`, file: 'a' })
    const steps = [
      open('a'),
      counted('a'),
      ask(1),
      fell(0),
      open('a'),
      counted('a'),
      ask(2),
      fell(1),
    ]
    expect(onlyRead(steps)).toEqual(['a'])
  })

  test('is still in work while any of what it was sent for is unanswered', () => {
    const ask: Step = { kind: 'sent', task: 'request 1', file: 'a' }
    const round = [open('a'), ask, { kind: 'answered', task: 'request 1' } as const]
    expect(onlyRead([...round, fell(0), ...round, fell(1)])).toEqual(['a'])
  })

  test('is not one that was there at falls long apart', () => {
    expect(onlyRead([open('a'), fell(0), open('a'), fell(180_000)])).toEqual([])
  })

  test('is counted again when a person wants it', () => {
    const steps = [open('a'), fell(0), open('a'), fell(1), { kind: 'restarted' } as const]
    expect(onlyRead(steps)).toEqual([])
  })
})
