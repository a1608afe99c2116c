import { expect, test } from 'vitest'
import { firstAbove, overlapFinder } from '../../server/src/layout/overlap-finder.ts'
import { dice } from '../generate/dice.ts'

test('what overlaps is found in the order of the list, however the intervals lie', () => {
  const roll = dice(3)
  const interval = () => {
    const from = roll.between(0, 100)
    return { from, to: from + roll.between(1, 30) }
  }
  for (let round = 0; round < 200; round += 1) {
    const all = Array.from({ length: roll.between(0, 20) }, interval)
    const find = overlapFinder(round % 2 === 0 ? all : all.sort((a, b) => a.from - b.from))
    const of = interval()
    expect(find(of)).toEqual(all.filter(({ from, to }) => from < of.to && of.from < to))
  }
})

test('the first value above another in a rising list', () => {
  expect([0, 1, 2, 3, 4].map((value) => firstAbove([1, 2, 2, 3], value))).toEqual([0, 1, 3, 4, 4])
})
