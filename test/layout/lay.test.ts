import { describe, expect, test } from 'vitest'
import { type Compiled, compile } from '../../server/src/compile.ts'
import { inches } from './made-floors.ts'

interface Changes {
  readonly plank?: string
  readonly gap?: string
  readonly product?: string
  readonly north?: string
  readonly size?: readonly [string, string]
}

function compiled(floor: string, changes: Changes = {}): Compiled {
  const { plank = '7" x 48"', gap = '1/4"', product = '', north = '', size } = changes
  const [wide, deep] = size ?? [`12' 0"`, `10' 1"`]
  const text = `floorscribe 1
job test
units feet-inches

product larch
  plank       ${plank}
  box         10 planks
  joints      8" stagger, 10" shortest end, 2" narrowest rip
  gap         ${gap}
${product}
room hall
  north       ${wide}
${north}  east        ${deep}
  south       ${wide}
  west        ${deep}

floor all
  rooms       hall
${floor}
`
  const result = compile(new Map([['job.floor', text]]), 'job.floor')
  if ('missing' in result) throw new Error('no includes here')
  return result
}

const laid = (...of: Parameters<typeof compiled>) => compiled(...of).floors[0]!
const codes = (result: Compiled) => result.messages.map((message) => message.code)

describe('direction and start', () => {
  test.each([
    ['north', { east: 1, north: 0 }],
    ['south', { east: -1, north: 0 }],
    ['east', { east: 0, north: -1 }],
    ['west', { east: 0, north: 1 }],
  ])('one faces the start wall: along %s', (wall, direction) => {
    const way = wall === 'north' || wall === 'south' ? 'east-west' : 'north-south'
    const floor = laid(`  lay         larch, running ${way}\n  start       along ${wall} of hall`)
    expect(floor.frame).toEqual(direction)
    const first = floor.published.courses.find((course) => course.order === 1)!
    expect(first.course).toBe(floor.published.courses.length)
    expect(floor.start.wall[0]!.label).toBe(`${wall} of hall`)
  })

  test('without either, along the longest side from its longest wall, and said so', () => {
    const result = compiled('  lay         larch')
    expect(Math.abs(result.floors[0]!.frame.east)).toBe(1)
    expect(codes(result)).toEqual(expect.arrayContaining(['direction-chosen', 'start-chosen']))
  })

  test('with a start only, along that wall', () => {
    const result = compiled('  lay         larch\n  start       along east of hall')
    expect(result.floors[0]!.frame.east).toBe(0)
    expect(codes(result)).not.toContain('direction-chosen')
  })

  test('a start wall across the planks is refused, and another taken', () => {
    const result = compiled(
      '  lay         larch, running east-west\n  start       along east of hall',
    )
    expect(codes(result)).toContain('start-across-planks')
    expect(result.floors[0]!.start.wall[0]!.label).toMatch(/^(north|south) of hall$/)
  })
})

describe('the line', () => {
  const east = '  lay         larch, running east-west\n  start       along north of hall'

  test('first and last course are equal', () => {
    // 121 − 1/2 = 120 1/2 clear = 17 × 7 + 1 1/2: 4 1/4 + 16 × 7 + 4 1/4 (computed).
    const { published, line } = laid(east)
    const heights = published.pieces.map(({ ring }) => ring.map(([, v]) => v))
    const rip = (course: number) =>
      published.pieces
        .map((piece, i) => ({ piece, v: heights[i]! }))
        .filter(({ piece }) => piece.course === course)
        .map(({ v }) => Math.max(...v) - Math.min(...v))
    expect(published.courses).toHaveLength(18)
    expect(new Set([...rip(1), ...rip(18)])).toEqual(new Set([inches(4.25)]))
    expect(line).toMatchObject({ moved: 0, narrow: 0 })
  })

  test.each([
    ['south', -1],
    ['north', 1],
  ])('a shift to the %s moves every seam', (way, sign) => {
    const plain = laid(east)
    const shifted = laid(`${east}\n  shift       1 1/2" ${way}`)
    expect(shifted.line.seam - plain.line.seam).toBe(sign * inches(1.5))
  })

  test('a shift along the planks moves nothing, and is said to', () => {
    expect(codes(compiled(`${east}\n  shift       1 1/2" west`))).toContain('shift-along-planks')
  })

  test('leaves its balanced place where that saves narrow courses elsewhere', () => {
    // Balanced, a course of 1 1/4 in is left at the back of the alcove: 4 1/4 + 11 − 2 × 7 (computed).
    const alcove = `    alcove    6' 0", 3' 0" from left, 11" deep\n`
    const result = compiled(east, { north: alcove })
    const { line, published, alternatives } = result.floors[0]!
    expect(line.moved).not.toBe(0)
    expect(published.breaches).toEqual([])
    expect(codes(result)).toContain('line-moved')
    const balanced = alternatives.find((way) => way.words === 'the balanced line')!
    expect(balanced.breaches).toBeGreaterThan(0)
  })
})

describe('what is told', () => {
  const east = '  lay         larch, running east-west\n  start       along north of hall'

  test('what the other direction would come to', () => {
    const { alternatives, published } = laid(east)
    const other = alternatives.find((way) => way.words === 'planks running the other way')!
    expect(other.planks).toBeGreaterThanOrEqual(published.bound.planks)
    expect(other.boxes).toBeGreaterThan(0)
  })

  test('each rule that is not met, once, with the worst place', () => {
    const result = compiled(east, { product: "  run         10' long\n" })
    expect(result.messages.filter((message) => message.code === 'longest-run')).toMatchObject([
      {
        weight: 'warning',
        text: `The floor runs 11' 11 1/2" along the planks without a break, over the 10' 0" that the product allows. No better layout was found.`,
      },
    ])
  })

  test('a floor that the gaps eat up has no layout, and no total', () => {
    const result = compiled(east, { gap: "7'" })
    expect(result.floors).toHaveLength(0)
    expect(codes(result)).toContain('nothing-to-lay')
    expect(result.exit).toBe('errors')
  })

  test('a floor far beyond a house is not laid', () => {
    const result = compiled(east, { plank: '1/4" x 1/2"' })
    expect(codes(result)).toContain('floor-too-large')
    expect(result.floors).toHaveLength(0)
  })

  test.each([
    ['along the planks', 'east-west'],
    ['across them', 'north-south'],
  ])('a passage five miles long and an inch wide, %s, is not laid', (_, run) => {
    const result = compiled(`  lay         larch, running ${run}`, {
      gap: '0"',
      plank: '3" x 12"',
      size: [`26400' 0"`, '1"'],
    })
    expect(result.messages.find(({ code }) => code === 'floor-too-large')?.text).toBe(
      'This floor would be cut into more pieces than any floor has. Look for a reading or a plank size that is out by far.',
    )
  })
})
