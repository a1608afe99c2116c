import { expect, test } from 'vitest'
import { leastFirst } from '../../server/src/survey/least-first.ts'
import { dice } from '../generate/dice.ts'

test('always the least of what waits is taken, whatever is added in between', () => {
  const roll = dice(11)
  const queue = leastFirst()
  const waiting: number[] = []
  for (let step = 0; step < 2000; step += 1) {
    if (roll.chance(55)) {
      const value = roll.below(500)
      queue.add(value)
      waiting.push(value)
    } else {
      waiting.sort((a, b) => a - b)
      expect(queue.take()).toBe(waiting.shift())
    }
  }
})
