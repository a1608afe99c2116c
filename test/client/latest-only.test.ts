import { expect, test } from 'vitest'
import { latestOnly } from '../../client/src/latest-only.ts'

/** Lets everything that is ready to run have its turn. */
const settled = () => new Promise((resolve) => setTimeout(resolve))

test('while one runs the newest waits, those between are dropped, the last is always run', async () => {
  const run: number[] = []
  let finish = () => {}
  const push = latestOnly(async (value: number) => {
    run.push(value)
    await new Promise<void>((resolve) => {
      finish = resolve
    })
  })
  for (const value of [1, 2, 3, 4]) push(value)
  expect(run).toEqual([1])
  finish()
  await settled()
  expect(run).toEqual([1, 4])
  finish()
  await settled()
  push(5)
  expect(run).toEqual([1, 4, 5])
})

test('a run that fails stands in the way of none', async () => {
  const run: number[] = []
  const push = latestOnly(async (value: number) => {
    run.push(value)
    throw new Error('fell')
  })
  push(1)
  push(2)
  await settled()
  push(3)
  expect(run).toEqual([1, 2, 3])
})
