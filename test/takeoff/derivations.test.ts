import { expect, test } from 'vitest'
import { type Compiled, compile } from '../../server/src/compile.ts'
import type { Derivation } from '../../server/src/facts/derivation.ts'
import { sourceInWords } from '../../server/src/facts/source.ts'
import type { Quantity } from '../../server/src/takeoff/takeoff.ts'
import { expectGolden } from '../golden.ts'

/** A room of 12' by 10' with a closet and a hearth, a bath with a tub; one product over two floors. */
const FEET = `floorscribe 1
job Counting
units feet-inches
tape 1/16"
walls 4 1/2" thick
base 1/2" thick, kept
allowance 15%

product plain plank
  plank       6" x 48", 1/4" thick
  box         10 planks
  pad         attached
  joints      8" stagger, 10" shortest end, 2" narrowest rip
  gap         1/4"
  laid        left to right
  cut         knife, 0" kerf
  spoil       5%
  spares      1 box

room bunk
  north       12' 0"
  east        10' 0"
    closet    4' 0", 3' 0" from left, 2' 0" deep
  south       12' 0"
    door      30", 2' 0" from left, to landing
  west        10' 0"
    hearth    3' 0", 4' 0" from left, 1' 0" deep

room landing
  existing    tile, stays

room bath
  north       8' 0"
  east        6' 6"
  south       8' 0"
  west        6' 6"

floor upstairs
  rooms       bunk, bunk closet
  lay         plain plank, running east-west
  start       along north of bunk
  edge        bunk to landing, with end cap

floor bathroom
  rooms       bath
  lay         plain plank, running east-west
  start       along south of bath
  edge        north of bath, tub
  expect      26 planks
`

/** One room in metres whose shape only its diagonals fix, in a board of two lengths. */
const METRES = `floorscribe 1
job Counting again
units mm, bare mm
tape 1 mm
base 12 mm thick, off and back

product board
  plank       200 mm wide, 14 mm thick
  box         2 of 600 mm, 3 of 1200 mm
  pad         separate
  joints      200 mm stagger, 250 mm shortest end, 50 mm narrowest rip
  gap         10 mm
  laid        left to right
  cut         saw, 2 mm kerf
  spoil       6 planks

room loft
  out of square
  north       3000
  east        2400
  south       3000
  west        2400
  diagonal    3841.9, from north-west to south-east
  diagonal    3841.9, from north-east to south-west

floor loft
  rooms       loft
  lay         board, running east-west
  start       along north of loft
`

function compiled(text: string): Compiled {
  const result = compile(new Map([['count.floor', text]]), 'count.floor')
  if ('missing' in result) throw new Error('nothing is included')
  return result
}

function printed({ takeoff }: Compiled, text: string): string {
  const floors = takeoff.floors.map((one) => [`floor ${one.floor}, ${one.product}`, one] as const)
  const products = takeoff.products.map((one) => [`product ${one.product}`, one] as const)
  return [...floors, ...products]
    .map(([title, { quantities }]) => [`${title}\n`, ...quantities.map(block)].join(''))
    .join('\n')

  function block({ key, room, derivation }: Quantity): string {
    return `- ${key}${room === null ? '' : ` of ${room}`}\n${tree(derivation, '  ')}`
  }

  function tree(one: Derivation, indent: string): string {
    const { label, value, formula, rule, source, span } = one
    const said = span === null ? '' : ` « ${text.slice(span.start, span.end)} »`
    const notes = [formula, rule, sourceInWords(source)].filter((note) => note !== '').join('; ')
    const inputs = one.inputs.map((input) => tree(input, `${indent}  `)).join('')
    return `${indent}${label}: ${value} (${notes})${said}\n${inputs}`
  }
}

const GOLDEN = new URL('derivations.golden.txt', import.meta.url).pathname

test('every number of two jobs, each with all that it is made of', () => {
  const all = [FEET, METRES].map(
    (text) => `# ${text.split('\n')[1]}\n\n${printed(compiled(text), text)}`,
  )
  expectGolden(GOLDEN, all.join('\n'))
})

test('both jobs are complete', () => {
  for (const text of [FEET, METRES]) {
    const { takeoff, messages } = compiled(text)
    expect(messages.filter(({ weight }) => weight !== 'note' && weight !== 'warning')).toEqual([])
    expect(takeoff.complete).toBe(true)
    const all = [...takeoff.floors, ...takeoff.products].flatMap(({ quantities }) => quantities)
    expect(all.every(({ complete }) => complete)).toBe(true)
  }
})
