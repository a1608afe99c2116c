import { describe, expect, test } from 'vitest'
import { effort } from '../effort.ts'
import { EXAMPLE_JOBS, EXAMPLE_TEXTS } from '../examples/read-example.ts'
import { withIncludes } from './corpus.ts'
import type { Fault } from './fault.ts'
import { faultIn } from './kept.ts'
import { tokensOf } from './mutate.ts'
import { JOB, PARSER } from './targets.ts'

const TIMEOUT = { timeout: 3_600_000 }

/** The text as it is typed, cut off after each character. */
function prefixes(text: string): readonly string[] {
  return Array.from({ length: text.length + 1 }, (_, end) => text.slice(0, end))
}

/** Each token that is no blank deleted, doubled, and exchanged with the next one. */
function tokenSlips(text: string): readonly string[] {
  const tokens = tokensOf(text)
  const places = tokens.flatMap((token, at) => (token.trim() === '' ? [] : [at]))
  return places.flatMap((at, index) => {
    const next = places[index + 1]
    const put = (...by: readonly (readonly [number, string])[]) =>
      by.reduce((whole, [place, token]) => whole.with(place, token), tokens).join('')
    return [
      put([at, '']),
      put([at, tokens[at]! + tokens[at]!]),
      ...(next === undefined ? [] : [put([at, tokens[next]!], [next, tokens[at]!])]),
    ]
  })
}

/** One in so many of a list. */
function every<T>(step: number, list: readonly T[]): readonly T[] {
  return list.filter((_, index) => index % step === 0)
}

function faultsOf(texts: readonly string[]): readonly (Fault & { readonly text: string })[] {
  return texts.flatMap((text) => {
    const fault =
      faultIn(PARSER, text, { timed: false }) ?? faultIn(JOB, withIncludes(text), { timed: false })
    return fault === null ? [] : [{ promise: fault.promise, detail: fault.detail, text }]
  })
}

describe.each(EXAMPLE_JOBS)('%s keeps every promise', (job) => {
  const text = EXAMPLE_TEXTS.get(job)!

  test('cut off anywhere', TIMEOUT, () => {
    expect(faultsOf(every(effort(37, 1), prefixes(text)))).toEqual([])
  })

  test('with any token deleted, doubled or exchanged with the next', TIMEOUT, () => {
    const slips = tokenSlips(text)
    expect(slips.length).toBeGreaterThan(300)
    expect(faultsOf(every(effort(307, 1), slips))).toEqual([])
  })
})
