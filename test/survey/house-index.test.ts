import { expect, test } from 'vitest'
import { houseIndex } from '../../server/src/survey/house-index.ts'
import type { Survey } from '../../server/src/survey/survey.ts'

const roomOf = (name: string, ...closets: readonly string[]) => ({
  room: { name: { text: name, key: name } },
  closets: closets.map((text) => ({ name: text })),
})

const HOUSE = {
  rooms: [
    roomOf('bunk', 'linen', 'Linen', 'coats'),
    roomOf('den', 'linen'),
    roomOf('bunk'),
    roomOf('hall', 'coats'),
  ],
} as unknown as Survey

test('rooms of a name and rooms with a closet of a name, each once, in the order written', () => {
  const { rooms, withCloset } = houseIndex(HOUSE)
  expect([...rooms]).toEqual([
    ['bunk', [0, 2]],
    ['den', [1]],
    ['hall', [3]],
  ])
  expect([...withCloset]).toEqual([
    ['linen', [0, 1]],
    ['coats', [0, 3]],
  ])
})

test('a house is looked through once', () => {
  expect(houseIndex(HOUSE)).toBe(houseIndex(HOUSE))
  expect(houseIndex({ ...HOUSE })).not.toBe(houseIndex(HOUSE))
  expect(houseIndex({ ...HOUSE, rooms: [] }).rooms.size).toBe(0)
})
