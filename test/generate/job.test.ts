import { describe, expect, test } from 'vitest'
import { parse } from '../../server/src/language/parse.ts'
import { effort } from '../effort.ts'
import { countsOf, distribution } from './distribution.ts'
import { FEATURES } from './features.ts'
import { otherJob, type RandomJob, randomJob, rightAngledJob } from './job.ts'

const SEEDS = Array.from({ length: effort(400, 4000) }, (_, seed) => seed)
const MODES = ['realistic', 'nasty'] as const

const bytes = ({ files }: RandomJob): string => JSON.stringify([...files])

describe.each(MODES)('%s jobs', (mode) => {
  const jobs = SEEDS.map((seed) => randomJob(seed, mode))

  test('one seed, one job; another seed, another', () => {
    expect(SEEDS.map((seed) => bytes(randomJob(seed, mode)))).toEqual(jobs.map(bytes))
    expect(new Set(jobs.map(bytes)).size).toBe(jobs.length)
  })

  test('every file is read without a message', () => {
    const files = jobs.flatMap(({ seed, files }) => [...files].map((file) => ({ seed, file })))
    const said = files.flatMap(({ seed, file: [path, text] }) =>
      parse(path, text).messages.map(({ code }) => `${seed}: ${path}: ${code}`),
    )
    expect(said).toEqual([])
  })

  test('a job says why it is not sound, or that it is', () => {
    expect(jobs.every(({ sound, unsound }) => sound === (unsound.length === 0))).toBe(true)
    const sound = jobs.filter((job) => job.sound).length
    expect(sound / jobs.length).toBeGreaterThan(0.85)
    expect(sound).toBeLessThan(jobs.length)
  })

  test('a right-angled job has nothing askew, any other has something', () => {
    const seedsOf = (some: readonly RandomJob[]) => some.map(({ seed }) => seed)
    const isAskew = ({ features }: RandomJob) => features.some((feature) => ASKEW.test(feature))
    const texts = (job: RandomJob) => [...job.files.values()].join('\n')
    const right = SEEDS.map((seed) => rightAngledJob(seed, mode))
    expect(seedsOf(right.filter(isAskew))).toEqual([])
    expect(seedsOf(right.filter((job) => ASKEW_LINE.test(texts(job))))).toEqual([])
    const other = SEEDS.map((seed) => otherJob(seed, mode))
    expect(seedsOf(other.filter((job) => !isAskew(job)))).toEqual([])
    expect(seedsOf(other.filter((job) => !ASKEW_LINE.test(texts(job))))).toEqual([])
  })
})

const ASKEW =
  /^angles: |^wall: bow$|^inside: round |^running: (along a slant|north-(east|west))$|^slant: /
/** Lines of its text that tell the same: a diagonal and its corner may run from north-west. */
const ASKEW_LINE =
  /^\s+(slant|(north|south)-(east|west)|out of square)\b|\bbow\b| round\b|running (north|south)-(east|west)/m

test('every kind of thing occurs, and the table says how often', () => {
  const seeds = Array.from({ length: effort(1500, 6000) }, (_, seed) => seed)
  const features = MODES.flatMap((mode) =>
    seeds.flatMap((seed) => {
      const { features, unsound, sound } = randomJob(seed, mode)
      const reasons = unsound.map((reason) => `not sound: ${reason}`)
      return [...features, ...reasons, ...(sound ? ['sound: yes'] : [])]
    }),
  )
  console.info(distribution(features))
  const counts = countsOf(features)
  expect([...counts.keys()].sort()).toEqual([...FEATURES].sort())
  expect([...counts].filter(([, count]) => count < effort(1, 5))).toEqual([])
})

test('the distribution is told by group, the most frequent first', () => {
  expect(distribution(['run: b', 'shape: L', 'run: a', 'run: a'])).toBe(
    'run          a 2, b 1\nshape        L 1',
  )
})
