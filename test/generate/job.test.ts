import { expect, test } from 'vitest'
import { parse } from '../../server/src/language/parse.ts'
import { distribution } from './distribution.ts'
import { otherJob, randomJob, rightAngledJob } from './job.ts'

const JOBS = Array.from({ length: 300 }, (_, seed) => randomJob(seed))

test('one seed, one text; another seed, another', () => {
  expect(JOBS.map(({ seed }) => randomJob(seed).text)).toEqual(JOBS.map(({ text }) => text))
  expect(new Set(JOBS.map(({ text }) => text)).size).toBe(JOBS.length)
})

test('every text is read without a message', () => {
  const said = JOBS.flatMap(({ text }) => parse('random.floor', text).messages)
  expect(said).toEqual([])
})

test('300 seeds hold every kind of thing at least ten times', () => {
  const features = JOBS.flatMap((job) => job.features)
  const kinds = new Set(features)
  const rare = [...kinds].filter((kind) => features.filter((one) => one === kind).length < 10)
  expect(rare).toEqual([])
  expect(kinds.size).toBeGreaterThan(45)
})

test('the distribution is told by group, the most frequent first', () => {
  expect(distribution(['run: b', 'shape: L', 'run: a', 'run: a'])).toBe(
    'run        a 2, b 1\nshape      L 1',
  )
})

/** Words of a line that no right-angled job has; a diagonal may run from north-west. */
const OTHER_ANGLES =
  /^(?! {2}diagonal).*(\bslant\b|\bbow\b|" round\b|out of square|(north|south)-(east|west)\b)/m

test('a right-angled job has nothing askew, any other has something', () => {
  const seeds = JOBS.map(({ seed }) => seed)
  expect(seeds.filter((seed) => OTHER_ANGLES.test(rightAngledJob(seed).text))).toEqual([])
  expect(seeds.filter((seed) => !OTHER_ANGLES.test(otherJob(seed).text))).toEqual([])
})
