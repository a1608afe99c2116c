import { expect, test } from 'vitest'
import { asBefore, type Made, madeAgain, Shelf } from '../../server/src/facts/kept.ts'

function turned(shelf: { readonly turn: () => void }, times: number): void {
  for (let i = 0; i < times; i++) shelf.turn()
}

test('what a run asks for stays, and what six did not is gone', () => {
  const shelf = new Shelf<string, number>()
  shelf.set('used', 1)
  shelf.set('left', 2)
  for (let run = 0; run < 7; run++) {
    shelf.turn()
    expect(shelf.get('used')).toBe(1)
  }
  expect(shelf.get('left')).toBeUndefined()
})

test('an undo of the last two edits finds what it needs', () => {
  const shelf = new Shelf<string, number>()
  shelf.set('before', 1)
  turned(shelf, 3)
  expect(shelf.get('before')).toBe(1)
})

test('what is dropped is not there', () => {
  const shelf = new Shelf<string, number>()
  shelf.set('said', 1)
  shelf.drop('said')
  expect(shelf.get('said')).toBeUndefined()
})

test('a thing is made again only where it is given other things', () => {
  const shelf = new Shelf<string, Made<object>>()
  const room = { name: 'hall' }
  const made = () => madeAgain(shelf, 'floor', [room, 3], () => ({}))
  const first = made()
  expect(made()).toBe(first)
  expect(madeAgain(shelf, 'floor', [{ ...room }, 3], () => ({}))).not.toBe(first)
  expect(madeAgain(undefined, 'floor', [room, 3], () => 7)).toBe(7)
})

test('a value that is made of the same is the one before', () => {
  const shelf = new Shelf<string, { readonly thick: number }>()
  const first = asBefore(shelf, 'walls', { thick: 4 })
  expect(asBefore(shelf, 'walls', { thick: 4 })).toBe(first)
  const other = asBefore(shelf, 'walls', { thick: 5 })
  expect(other).toEqual({ thick: 5 })
  expect(asBefore(shelf, 'walls', { thick: 5 })).toBe(other)
})
