import { expect, test } from 'vitest'
import { statusOf } from '../../server/src/features/status.ts'
import { HOUSE } from './house.ts'
import { view } from './marked.ts'

test('a counted job says its boxes', () => {
  expect(statusOf(view(HOUSE).view)).toEqual({
    state: 'counted',
    text: 'ash 9 boxes',
    tooltip: ['ash: 9 boxes, 10 planks left'],
  })
})

test('while it is counted there is no count', () => {
  expect(statusOf(view(HOUSE, { counted: false }).view)).toEqual({
    state: 'counting',
    text: 'counting',
    tooltip: ['Planks and boxes are being counted.'],
  })
})

test('something still to come is named, and no count stands beside it', () => {
  const held = HOUSE.replace('floor ground\n', 'floor ground\n  hold slab test, by the mason\n')
  const status = statusOf(view(held).view)
  expect([status.state, status.text]).toEqual(['open', '1 thing still to come'])
  expect(status.tooltip).toEqual([
    'Held until slab test is cleared by the mason. When it is, add the day to the line: cleared 2027-04-12.',
  ])
})

test('errors come first, before a count is there', () => {
  const wrong = HOUSE.replace('to den', 'to dne').replace('gap         1/4"', 'gap     quarter')
  for (const counted of [true, false]) {
    const status = statusOf(view(wrong, { counted }).view)
    expect([status.state, status.text]).toEqual(['errors', '2 things to mend'])
    expect(status.tooltip.length).toBe(2)
  }
})

test('a warning that nobody accepted is told beside the count', () => {
  const status = statusOf(view(HOUSE.replace(`16' 4"`, `16' 5"`)).view)
  expect([status.state, status.text]).toEqual(['counted', 'ash 9 boxes, 1 to look at'])
  expect(status.tooltip[1]).toContain('diagonal')
  const accepted = HOUSE.replace(`16' 4"`, `16' 5"`).replace(
    'room hall',
    '  accept check disagrees\nroom hall',
  )
  expect(statusOf(view(accepted).view).text).toBe('ash 9 boxes')
})

test('a job without a floor has nothing to count', () => {
  expect(statusOf(view('job A\n').view)).toEqual({
    state: 'open',
    text: expect.stringMatching(/to come|nothing to count yet/),
    tooltip: [expect.any(String)],
  })
})

test('a file full of errors names the first of them', () => {
  const status = statusOf(view(Array.from({ length: 30 }, (_, i) => `zzz${i}`).join('\n')).view)
  expect(status.text).toBe('30 things to mend')
  expect(status.tooltip.at(-1)).toBe('And 24 more.')
})
