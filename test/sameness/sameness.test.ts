import { join } from 'node:path'
import { beforeAll, describe, expect, test } from 'vitest'
import { effort } from '../effort.ts'
import { differences, differing, digestsOf, firstDifference } from './compare.ts'
import { type Environment, environmentOf, readEnvironments } from './environments.ts'
import type { JobText, Seen } from './inside/order.ts'
import { offsets } from './inside/seen.ts'
import { messageJobs, sameJobs, sizeOf } from './jobs.ts'
import { closeLab, type Lab, openLab, runIn } from './lab.ts'

const ENVIRONMENTS = readEnvironments()
const [FIRST] = ENVIRONMENTS as [Environment, ...Environment[]]
const JOBS = sameJobs(50)

/** Of each job: all that the core gives, and what the commands print of it. */
const OUTPUTS = 10
const COMMANDS = 6

/** In full every environment does every job; quickly, each does the next two of the shortest ones. */
const SHORTEST = JOBS.toSorted((a, b) => sizeOf(a) - sizeOf(b)).slice(0, 12)
const POOL = effort(0, 1) === 1 ? [...JOBS, ...messageJobs()] : SHORTEST
const EACH = effort(2, POOL.length)

/** Many processes at once on a busy machine. */
const PATIENT = { timeout: effort(600_000, 3_600_000) }

let lab: Lab
let expected: ReadonlyMap<string, string>
let compared = 0

beforeAll(async () => {
  lab = await openLab()
  expected = digestsOf(await runIn(lab, FIRST, POOL))
  return async () => {
    await closeLab(lab)
    const count = `${ENVIRONMENTS.length} environments, ${EACH} jobs in each`
    console.log(`same bytes: ${count}, ${compared} outputs compared`)
  }
}, PATIENT.timeout)

describe('the same text gives the same bytes', () => {
  test('there is enough to compare', () => {
    expect(new Set(ENVIRONMENTS.map(({ row }) => row)).size).toBe(ENVIRONMENTS.length)
    expect(ENVIRONMENTS.length).toBeGreaterThanOrEqual(60)
    expect(expected.size).toBe(POOL.length * OUTPUTS)
    const drawings = [...expected].filter(([key]) => key.endsWith(': drawing'))
    expect(new Set(drawings.map(([, digest]) => digest)).size).toBeGreaterThan(10)
  })

  const rows = ENVIRONMENTS.map(
    (environment, index) => [environment.row, environment, index] as const,
  )
  test.concurrent.for(rows)('%s', PATIENT, async ([_, environment, index]) => {
    const jobs = Array.from({ length: EACH }, (_, n) => POOL[(index * EACH + n) % POOL.length]!)
    const began = Date.now()
    const answer = await runIn(lab, environment, jobs)
    expectSeen(answer.seen, environment)
    expectClock(answer.seen, environment, began)
    expect(answer.outputs.length).toBe(jobs.length * outputsOfJob(environment))
    const keys = differing(expected, answer)
    const found = { first: FIRST, other: environment, jobs, keys }
    expect(await differences(lab, found)).toEqual([])
    compared += answer.outputs.length
  })
})

function outputsOfJob({ where, order }: Environment): number {
  return (where === 'command' ? COMMANDS : OUTPUTS) * (order === 'twice' ? 2 : 1)
}

/** An environment is what its row says only if a program in it sees that. */
function expectSeen(seen: Seen, { where, zone, locale, engine }: Environment): void {
  expect(seen.place).toBe(where === 'command' || where === 'QuickJS' ? 'Node 24' : where)
  expect(seen.zone).toBe(offsets(zone))
  expect(seen.locale).toBe(locale === 'C' ? 'en-US' : locale.replace('_', '-'))
  expect(seen.sine !== Math.sin(1)).toBe(engine.otherSines)
}

/** The machine's own clock lies between the start and the end of the run; another begins where it is set. */
function expectClock(seen: Seen, { engine }: Environment, began: number): void {
  const clock = Date.parse(seen.clock)
  const isSet = engine.clock.endsWith('Z')
  expect(seen.clockStands).toBe(engine.clock === 'backwards')
  expect(clock).toBeGreaterThanOrEqual(isSet ? Date.parse(engine.clock) : began)
  expect(clock).toBeLessThanOrEqual(isSet ? Date.parse(engine.clock) + 60_000 : Date.now())
}

describe('a core that looks where it must not is found out:', () => {
  const leaks: readonly (readonly [what: string, row: string, line: RegExp])[] = [
    ['zone', 'Node 24 | Asia/Kathmandu | C | | plain | listed |', /line 2 .*00:00.* is .*18:15/],
    ['locale', 'Node 24 | UTC | de_DE | | plain | listed |', /"1,234\.5" and is "1\.234,5"/],
    ['clock', 'Node 24 | UTC | C | 9999-12-31T00:00:00Z | plain | listed |', / is "9999"/],
    ['sine', 'Node 24 | UTC | C | | plain | listed | other sines', /5" and is ".*6"/],
    ['memory', 'Node 24 | UTC | C | | plain | twice |', /"0" and is "1"/],
    ['texts', 'Node 24 | UTC | C | | plain | reversed |', /"a,b" and is "b,a"/],
    ['folder', 'Node 24 | UTC | C | | marks | listed |', /"jobs" and is "%20/],
  ]
  const job: JobText = {
    name: 'job',
    root: 'a',
    files: [
      ['a', ''],
      ['b', ''],
    ],
  }

  test.concurrent.for(leaks)('%s', PATIENT, async ([what, row, line]) => {
    const gossip = { ...lab, core: join(lab.base, 'gossip.mjs') }
    const other = environmentOf(`| ${row} |`)
    const should = digestsOf(await runIn(gossip, FIRST, [job]))
    const keys = differing(should, await runIn(gossip, other, [job]))
    expect(keys).toContain(`job: ${what}`)
    const found = { first: FIRST, other, jobs: [job], keys: [`job: ${what}`] }
    expect(await differences(gossip, found)).toEqual([expect.stringMatching(line)])
  })

  test('and the line is told that is more, less or other', () => {
    expect(firstDifference('a\nb', 'a\nb')).toBeNull()
    expect(firstDifference('a\nb', 'a\nc')).toBe('line 2 should be "b" and is "c"')
    expect(firstDifference('a', 'a\nb')).toBe('line 2 should be not there and is "b"')
    expect(firstDifference('a\nb', 'a')).toBe('line 2 should be "b" and is not there')
  })
})
