import { describe, expect, test } from 'vitest'
import { box, jobOf, surveyOf } from './text.ts'

const lines = (name: string, ...said: readonly string[]) =>
  `room ${name}\n${said.map((line) => `  ${line}\n`).join('')}`

/** What is said of a room that misses closing, its text from the second sentence on. */
function closing(text: string, head?: string) {
  const { job } = jobOf(text, head)
  const found = surveyOf(text, head).messages.find(({ code }) => code === 'closing-error')!
  const [miss, ...rest] = found.text.split(/(?<=\.) /)
  return { found, miss, slip: rest.join(' '), room: job.rooms[0]! }
}

const LONG_EAST = `12', 10', 12', 9'`
const DIAGONALS = [
  `diagonal 15', from north-west to south-east`,
  `diagonal 15', from north-east to south-west`,
]

describe('the one likely slip', () => {
  // South was read twice and west too, each time alike: only the other wall may be wrong.
  const text = lines('bunk', `north 13'`, `east 9'`, `south 12'`, `  again 12'`, `west 9'`)
  const { found, slip, room } = closing(text)

  test('is named with its amount, and pointed at where it was read', () => {
    expect(slip).toBe(`north is the likely slip, one foot: 12' 0" closes exactly.`)
    expect(found.span).toEqual(room.walls[0]!.reading.span)
    expect(found.related).toEqual([])
  })

  test.each([
    [DIAGONALS.slice(0, 1), ' and the diagonal then agrees'],
    [DIAGONALS, ' and both diagonals then agree'],
    [[`across 9', from north to south, middle`, DIAGONALS[0]!], ' and both checks then agree'],
    [[...DIAGONALS, `across 12', from east to west, middle`], ' and all three checks then agree'],
  ])('and told by the checks: %j', (checks, agree) => {
    // With west a foot longer instead, no diagonal would be 15'.
    expect(closing(box('bunk', LONG_EAST, ...checks)).slip).toBe(
      `east is the likely slip, one foot: 9' 0" closes exactly${agree}.`,
    )
  })

  test('a check that agrees with no suspect tells none of them', () => {
    const one = closing(box('bunk', LONG_EAST, `diagonal 17', from north-west to south-east`))
    expect(one.slip).toContain(
      'A slip of one foot in any one of two walls explains it: east or west.',
    )
    const square = closing(box('bunk', LONG_EAST, DIAGONALS[0]!, 'square north-west'))
    expect(square.slip).toContain('east is the likely slip')
    expect(square.slip).toContain('and the check then agrees')
  })
})

describe('several suspects', () => {
  /** Stairs of `count` steps whose first north wall is a foot long. */
  const stairs = (count: number) =>
    lines(
      'loft',
      ...Array.from({ length: count }, (_, i) => [
        `north ${i === 0 ? 4 : 3}', called n${i}`,
        `east 1', called e${i}`,
      ]).flat(),
      `south ${3 * count}'`,
      `west ${count}'`,
    )

  test('six are named, and each is pointed at', () => {
    const { found, slip, room } = closing(stairs(5))
    expect(slip).toMatch(
      /^A slip of one foot in any one of six walls explains it: n0, n1, n2, n3, n4 or south\. /,
    )
    expect(found.span).toEqual(room.name.span)
    expect(found.related.map(({ text }) => text)).toEqual([
      `3' 0" here would close it exactly.`,
      ...Array(4).fill(`2' 0" here would close it exactly.`),
      `16' 0" here would close it exactly.`,
    ])
    expect(found.related[5]!.span).toEqual(room.walls[10]!.reading.span)
  })

  // It parts four north walls from three and the south one; of the two such the more level is clearer.
  test('of more the rest is counted', () => {
    const { found, slip } = closing(stairs(7))
    expect(slip).toBe(
      'A slip of one foot in any one of eight walls explains it: n0, n1, n2, n3, n4, n5 or 2 more. ' +
        'A diagonal from north-west to the corner of n3 and e3 would narrow it down.',
    )
    expect(found.related).toHaveLength(6)
    expect(closing(stairs(8)).slip).toMatch(
      /any one of nine walls .* or 3 more\. Take them again\.$/,
    )
    expect(closing(stairs(9)).slip).toMatch(/any one of 10 walls .* or 4 more\. /)
  })

  test('their amount is left out where it differs', () => {
    // 9 cm: ten centimetres to within one in either north wall, or 3.01 for 3.10 in the south one.
    const { slip } = closing(
      lines(
        'bunk',
        'north 2.05 m, called left part',
        'east 1.00 m, called step',
        'north 1.05 m, called right part',
        'east 2.00 m',
        'south 3.01 m',
        'west 3.00 m',
      ),
      'floorscribe 1\njob test\nunits m\ntape 10 mm\n',
    )
    expect(slip).toMatch(
      /^A slip in any one of three walls explains it: left part, right part or south\. /,
    )
  })
})

describe('by how much and where to', () => {
  // σ of 40' is 3/16", of 4' 6/80": what is allowed is 2·√2 of it, 0.530" and 0.212"; 5" more make it 0.532".
  test.each([
    [`40' 2", 4', 40', 4'`, `2" to the east; this tape allows 1/2".`],
    [`40', 4', 40' 2", 4'`, `2" to the west; this tape allows 1/2".`],
    [`40', 4' 2", 40', 4'`, `2" to the south; this tape allows 3/16".`],
    [`40' 5", 4' 1", 40', 4'`, `5 1/8" to the east; this tape allows 9/16".`],
    [`40' 5", 4' 3", 40', 4'`, `5 13/16" to the south-east; this tape allows 3/16".`],
  ])('%s', (walls, miss) => {
    const said = closing(box('bunk', walls))
    expect(said.miss).toBe(`bunk misses closing by ${miss}`)
  })

  test('no usual slip: pointed at by the name of the room', () => {
    const { found, slip, room } = closing(box('bunk', `12', 13' 5", 12', 9'`))
    expect(slip).toBe(
      'No single slip of a usual size explains it: two readings may be off, or a wall may be missing. Take them again.',
    )
    expect(found.span).toEqual(room.name.span)
  })
})
