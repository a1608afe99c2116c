import { expect, test } from 'vitest'
import { type Compiled, compile } from '../../server/src/compile.ts'

/** A square room 61 in wide with a closet 50 in by 12 in, its planks laid at 45 degrees. */
const JOB = `floorscribe 1
job diagonal
units inches
walls 4 1/2 in thick
base none
product p
  plank 5 in x 48 in
  box 10 planks
  gap 1/4 in
  joints 6 in stagger, 8 in shortest end, 2 in narrowest rip
room a
  north 60 in
    closet 50 in, 5 in from left, 12 in deep
  east  61 in
  south 60 in
  west  61 in
floor g
  rooms a, a closet
  lay p, running north-east
`

test('sides of a closet are walls of their own: back and side make no wall longer than the longest', () => {
  const [laid] = (compile(new Map([['a.floor', JOB]]), 'a.floor') as Compiled).floors
  const [wall] = laid!.start.wall
  // 50 in + 12 in would be more than the 61 in of the east and west walls.
  expect(['east of a', 'west of a']).toContain(wall!.label)
})

const SQUARE = (wall: string) => `floorscribe 1
job diagonal
units mm
walls 100 mm thick
base 12 mm thick, off and back
product p
  plank 200 mm x 1200 mm
  box 10 planks
  gap 6 mm
  joints 200 mm stagger, 250 mm shortest end, 50 mm narrowest rip
room hall
  north 3000 mm
  east  2500 mm
  south 3000 mm
  west  2500 mm
floor g
  rooms hall
  lay p, running north-east
  start along ${wall} of hall
`

test.each(['north', 'east', 'south', 'west'])(
  'planks at 45 degrees start along the wall that is said: %s',
  (wall) => {
    const { floors } = compile(new Map([['a.floor', SQUARE(wall)]]), 'a.floor') as Compiled
    const { start } = floors[0]!
    expect([start.said, start.wall[0]?.label]).toEqual(['said', `${wall} of hall`])
  },
)
