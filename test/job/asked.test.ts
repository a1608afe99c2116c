import { expect, test } from 'vitest'
import { compile } from '../../server/src/compile.ts'

const JOB = `job Open
jambs 1/2" under
product ash
  plank       6" x 48"
  box         12 planks
  joints      8" stagger, 10" shortest end, 2" narrowest rip
  gap         1/4"
room den
  north       12' 0"
  east        10' 0"
  south       12' 0"
  west        10' 0"
floor ground
  rooms       den
  lay         ash, running east-west
  start       along north of den
  shift       0" south
  edge        north of den, 1/4" gap
`

const asked = (text: string) => {
  const compiled = compile(new Map([['job.floor', text]]), 'job.floor')
  if ('missing' in compiled) throw new Error('includes missing')
  const open = compiled.messages.filter(({ weight }) => weight === 'incomplete')
  expect(compiled.takeoff.complete).toBe(open.length === 0)
  return open.map(({ text }) => text)
}

test('a job without a question is complete', () => {
  expect(asked(JOB)).toEqual([])
})

test.each([
  ['shift       0"', 'shift       ?', 'Still to be settled for ground: shift.'],
  ['shift       0"', 'shift       0"?', 'To be settled again for ground: shift.'],
  ['den, 1/4" gap', 'den, ? gap', 'Still to be settled for ground: edge.'],
  ['2" narrowest', '? narrowest', 'Still to be settled for ash: joints.'],
  ['jambs 1/2"', 'jambs ?', 'Still to be settled: jambs.'],
])('a ? keeps the totals open wherever it stands: %s to %s', (before, after, text) => {
  expect(asked(JOB.replace(before, after))).toEqual([text])
})
