import { describe, expect, it } from 'vitest'
import { WARNING_CODES } from '../../server/src/facts/codes.ts'
import { bound, HEAD, said, WALLS } from './bound.ts'
import { warningCodesInSource } from './warning-codes.ts'

describe('the job block', () => {
  it('title, site, date, revision, notes', () => {
    const { job } = bound(`job Heron Cottage, upper floor  # draft
  site        3 Millpond Lane
  date        2026-10-12
  revision    2, closet taken in
  note        dog in the yard
include part.floor
`)
    expect(job).toMatchObject({
      title: 'Heron Cottage, upper floor',
      site: '3 Millpond Lane',
      date: '2026-10-12',
      revision: '2, closet taken in',
      notes: ['dog in the yard'],
      units: 'feet-inches',
    })
  })

  it('just begun is told its next step', () => {
    expect(said('job x\n')).toEqual([
      '1 incomplete job-unfinished: This job has no room yet: a line "room" and its name begins one, then a line for each wall.',
    ])
    expect(said(`job x\n${HEAD}room den\n${WALLS}`)).toEqual([
      '1 incomplete job-unfinished: No floor is laid yet: a floor block lists rooms and what is laid in them.',
    ])
    expect(said('product larch\n')).toHaveLength(1)
  })

  it('stands once', () => {
    expect(said('job x\njob y\nroom hall\nfloor one\n')[0]).toBe(
      '2 error line-twice: There is a job line already, on line 1. Keep one of the two.',
    )
  })

  it('a file without one is read as a part', () => {
    expect(bound('units mm\nroom hall\n').job).toMatchObject({ title: '', units: 'mm' })
  })
})

describe('lines for the whole job', () => {
  const FLOOR = 'room hall\nfloor one\n  rooms hall\n  lay larch\n'

  it('say jambs, allowance and pile; the root before what it includes', () => {
    const { job } = bound({
      'job.floor': `jambs 5/8" under\ninclude part.floor\n${FLOOR}`,
      'part.floor': 'jambs 1/4" under\nallowance 12%\npile 10 pieces\n',
    })
    expect(job.jambsUnder.value).toBe(15_875_000)
    expect(job.allowance.value).toEqual({ n: 12n, d: 1n })
    expect(job.pile).toMatchObject({ pieces: 10, courses: 6 })
  })

  it('are common practice where no line speaks, and a note says so', () => {
    const { job } = bound(FLOOR)
    // Common practice, no source: 1/2 in under a jamb, 10 %, 8 pieces for 6 courses.
    expect(job.jambsUnder).toEqual({ value: 12_700_000, span: null })
    expect(job.allowance).toEqual({ value: { n: 10n, d: 1n }, span: null })
    expect(job.pile).toEqual({ pieces: 8, courses: 6, span: null })
    expect(said(FLOOR, { notes: true })[0]).toBe(
      '2 note job-defaults: Not said for this job, so taken from common practice: the floor runs 1/2" under each jamb; an allowance of 10 % to compare with; 8 offcuts wait at most, for 6 courses.',
    )
    const all = 'jambs 1/2" under\nallowance 10%\npile 8 pieces, 6 courses\n'
    expect(said(all + FLOOR, { notes: true }).join()).not.toContain('job-defaults')
  })

  it('an allowance of more than the floor is refused', () => {
    expect(said('allowance 100%\n')).toEqual([])
    expect(said('allowance 100.5%\n')).toEqual([
      '1 error percent-too-high: An allowance of 100.5% is more than the floor itself. Write 100% at most; 10% is usual.',
    ])
  })
})

describe('holds', () => {
  it('are open until a day clears them, in whatever block they stand', () => {
    const text = `room hall
  hold        slab reading, by the builder, on paper 7
  hold        "asbestos, black mastic", cleared 2027-01-04
`
    expect(said(text)).toEqual([
      '2 incomplete hold-open: Held until slab reading is cleared by the builder. When it is, add the day to the line: cleared 2027-04-12.',
    ])
    expect(bound(text).job.holds).toMatchObject([
      { what: 'slab reading', cleared: null, by: 'the builder', on: 'paper 7' },
      { what: 'asbestos, black mastic', cleared: '2027-01-04' },
    ])
  })
})

describe('accepted warnings', () => {
  it('hold in their block, those of the job everywhere', () => {
    const text = `job x
  accept      names alike
room hall
  note        a
  accept      Closing Error, because old house
    note      b
room den
floor one
`
    const { accepts } = bound(text).job
    expect(accepts).toMatchObject([
      { code: 'names-alike', scope: null },
      {
        code: 'closing-error',
        scope: { start: text.indexOf('room hall'), end: text.indexOf('\nroom den') },
      },
    ])
  })

  it('one that is no warning is an error with the near one', () => {
    expect(said('room hall\n  accept closing eror\n')).toEqual([
      '2 error accept-unknown: No warning is called "closing eror". Is closing error meant? A warning\'s name stands beside it, and only warnings can be accepted.',
    ])
  })

  it('the list of warnings is what the checks warn with', () => {
    expect(WARNING_CODES).toEqual(warningCodesInSource())
  })
})
