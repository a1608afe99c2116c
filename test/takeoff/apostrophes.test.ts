import { expect, test } from 'vitest'
import { compile } from '../../server/src/compile.ts'

/** A room and a product given with one kind of apostrophe and used with the other. */
function laid(expected: string) {
  const text = `floorscribe 1
job Counting
walls 4 1/2" thick
base kept

product baker’s oak
  plank       7" x 48"
  box         9 planks
  joints      8" stagger, 10" shortest end, 2" narrowest rip
  gap         1/4"

room kids’ room
  north       12' 0"
  east        10' 0"
  south       12' 0"
  west        10' 0"
    closet    4' 0", 3' 2" from left, 2' 0" deep

floor ground
  rooms       kids' room, kids' room closet
  lay         baker's oak, running east-west
  expect      ${expected}
`
  const compiled = compile(new Map([['count.floor', text]]), 'count.floor')
  if ('missing' in compiled) throw new Error('nothing is included')
  return compiled
}

test('a closet counts under its name, whichever apostrophe its room is given with', () => {
  const rooms = laid('500 boxes, within 100%').takeoff.floors[0]!.quantities.filter(
    ({ key }) => key === 'room area',
  )
  expect(rooms.map(({ room }) => room)).toEqual(['kids’ room', 'kids’ room closet'])
})

test('an expectation of boxes is held against the product, whichever apostrophe it is given with', () => {
  const { messages } = laid('500 boxes')
  expect(messages.some(({ code }) => code === 'unmet-expectation')).toBe(true)
})
