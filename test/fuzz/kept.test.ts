import { describe, expect, test } from 'vitest'
import { effort } from '../effort.ts'
import { faultIn, KEPT } from './kept.ts'
import { JOB, PARSER } from './targets.ts'

/** Times are held in the full share alone: there one process has the machine to itself. */
const timed = effort(0, 1) === 1

describe('what once broke a promise', () => {
  test('is kept', () => {
    expect(KEPT.length).toBeGreaterThan(0)
  })

  test.each(KEPT)('$name breaks none', ({ text }) => {
    expect(faultIn(PARSER, text, { timed })).toBeNull()
    expect(faultIn(JOB, text, { timed })).toBeNull()
  })
})
