import { describe, expect, test } from 'vitest'
import { cornerWords, countWords, listWords, wallWords } from '../../server/src/survey/labels.ts'
import { name, room, turnRight, type WallSaid } from './build.ts'

test('counts up to nine are written out', () => {
  expect(Array.from({ length: 12 }, (_, i) => countWords(i)).join(' ')).toBe(
    'no one two three four five six seven eight nine 10 11',
  )
})

test('lists', () => {
  expect(listWords([], 'or')).toBe('')
  expect(listWords(['a'], 'or')).toBe('a')
  expect(listWords(['a', 'b'], 'or')).toBe('a or b')
  expect(listWords(['a', 'b', 'c'], 'and')).toBe('a, b and c')
})

const ELL: readonly WallSaid[] = [
  ['south', `20'`],
  ['west', `8'`],
  ['north', `8'`],
  ['west', `6'`],
  ['north', `12'`],
  ['east', `14'`],
]

describe('corners and walls as messages call them', () => {
  const ell = room('l', ELL, { corners: [{ name: name('nook'), corner: 2 }] })

  test.each([
    ['the ways that only it has', 0, 'south-east'],
    ['its own name', 2, 'nook'],
    ['ways of two corners', 3, `the corner of north (8') and west (6')`],
    ['the next of these', 4, `the corner of west (6') and north (12')`],
  ])('%s', (_, corner, words) => {
    expect(cornerWords(ell, corner)).toBe(words)
  })

  test('a corner of walls without two ways', () => {
    const turned = room('t', [
      ['north', `9'`],
      ['slant', `4'`, { heading: turnRight(90), called: 'turn' }],
      ['south', `9'`],
      ['west', `4'`],
    ])
    expect([0, 1, 2, 3].map((corner) => cornerWords(turned, corner))).toEqual([
      'north-west',
      'the corner of north and turn',
      'the corner of turn and south',
      'south-west',
    ])
  })

  test('a wall whose label another has is told by its reading', () => {
    expect([0, 1, 3].map((wall) => wallWords(ell, wall))).toEqual([
      'south',
      `west (8')`,
      `west (6')`,
    ])
  })
})
