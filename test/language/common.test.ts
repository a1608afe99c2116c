import { expect, test } from 'vitest'
import { commonEnd, commonStart } from '../../server/src/language/common.ts'
import { dice } from '../generate/dice.ts'

/** One character after the other. */
function slowly(a: string, b: string): number {
  let alike = 0
  while (alike < Math.min(a.length, b.length) && a[alike] === b[alike]) alike++
  return alike
}

const backward = (text: string) => [...text].reverse().join('')

test('two texts have in common what one finds character by character', () => {
  const thrown = dice(1)
  for (let i = 0; i < 2000; i++) {
    const word = () =>
      Array.from({ length: thrown.below(9) }, () => thrown.pick(['a', 'b'])).join('')
    const [front, back] = [word(), word()]
    const [a, b] = [front + word() + back, front + word() + back]
    const start = commonStart(a, b)
    expect(start).toBe(slowly(a, b))
    const most = Math.min(a.length, b.length) - start
    expect(commonEnd(a, b, start)).toBe(Math.min(most, slowly(backward(a), backward(b))))
  }
})
