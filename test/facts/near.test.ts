import { describe, expect, test } from 'vitest'
import { nearest } from '../../server/src/facts/near.ts'

describe('the nearest word', () => {
  test.each([
    ['soth', 'south'],
    ['Sotuh', 'south'],
    ['hal', 'hall'],
    ['diagnol', 'diagonal'],
    ['nrth', 'north'],
    // More than a third of its length away: dropped, added, replaced or exchanged.
    ['so', null],
    ['wibble', null],
    ['xyzth', null],
    ['', null],
  ])('%s: %s', (typed, near) => {
    const words = ['north', 'east', 'south', 'west', 'hall', 'diagonal']
    expect(nearest(typed, words)).toBe(near)
  })

  test('of two equally near the first is taken, of a nearer and a farther the nearer', () => {
    expect(nearest('cat', ['bat', 'cut'])).toBe('bat')
    expect(nearest('kitchen', ['kitten', 'kitchens'])).toBe('kitchens')
  })

  test('a long text costs no more than a short one', () => {
    expect(nearest('n'.repeat(100_000), ['north'])).toBe(null)
    expect(nearest('n'.repeat(65), ['n'.repeat(64)])).toBe(null)
    expect(nearest('n'.repeat(64), ['n'.repeat(63)])).toBe('n'.repeat(63))
  })
})
