import { expect, test } from 'vitest'
import { workspaceNames } from '../../server/src/features/workspace-names.ts'
import { view } from './marked.ts'

const SHARED = 'product river larch\nproduct oak\n'

function job(folder: string, text: string) {
  const { view: seen } = view(
    { 'job.floor': text, 'shared.floor': SHARED },
    { root: 'job.floor', file: 'job.floor' },
  )
  return {
    measured: seen.measured,
    addressOf: (file: string) => (file === 'shared.floor' ? '/shared.floor' : `/${folder}/${file}`),
  }
}

const JOBS = [
  job(
    'one',
    `job One
include shared.floor
room landing
  north       12', called long wall
    door      30", 1' from left, to outside, called front
  east        9'
    closet    4', 1' from left, 2' deep
floor up
prices spring
`,
  ),
  job('two', 'job Two\ninclude shared.floor\nroom den\nroom landing\n'),
]

test('all names of all jobs, what is shared once', () => {
  expect(
    workspaceNames(JOBS, '').map(({ kind, name, within, address }) => [
      kind,
      name,
      within,
      address,
    ]),
  ).toEqual([
    ['job', 'One', '', '/one/job.floor'],
    ['room', 'landing', 'One', '/one/job.floor'],
    ['wall', 'long wall', 'landing', '/one/job.floor'],
    ['opening', 'front', 'landing', '/one/job.floor'],
    ['closet', 'landing closet', 'landing', '/one/job.floor'],
    ['product', 'river larch', 'One', '/shared.floor'],
    ['product', 'oak', 'One', '/shared.floor'],
    ['floor', 'up', 'One', '/one/job.floor'],
    ['prices', 'spring', 'One', '/one/job.floor'],
    ['job', 'Two', '', '/two/job.floor'],
    ['room', 'den', 'Two', '/two/job.floor'],
    ['room', 'landing', 'Two', '/two/job.floor'],
  ])
})

test('what is typed stands in them, in order; what begins so comes first', () => {
  expect(workspaceNames(JOBS, 'ng').map(({ name }) => name)).toEqual([
    'landing',
    'long wall',
    'landing closet',
    'spring',
    'landing',
  ])
  expect(
    workspaceNames(JOBS, 'LA')
      .map(({ name }) => name)
      .slice(0, 3),
  ).toEqual(['landing', 'landing closet', 'landing'])
  expect(workspaceNames(JOBS, 'zzz')).toEqual([])
})

test('a name leads to where it is given', () => {
  const [found] = workspaceNames(JOBS, 'front')
  const { measured } = JOBS[0]!
  expect(measured.trees[0]!.text.slice(found!.span.start, found!.span.end)).toBe('front')
})
