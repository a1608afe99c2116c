import { describe, expect, test } from 'vitest'
import { type Compiled, compile } from '../../server/src/compile.ts'
import type { Derivation } from '../../server/src/facts/derivation.ts'
import { message } from '../../server/src/facts/message.ts'
import { takeoff } from '../../server/src/takeoff/count.ts'
import type { Quantity } from '../../server/src/takeoff/takeoff.ts'

/** A room of 10' by 12' with one door, laid in a plank of 6" by 48"; `more` goes into the product, `said` into the floor. */
function job({
  more = '',
  said = '',
  east = '10\' 0"',
  door = '',
  allowance = 10,
  edge = '  edge        bunk to landing, with end cap',
} = {}): Compiled {
  const text = `floorscribe 1
job Counting
units feet-inches
tape 1/16"
walls 4 1/2" thick
base 1/2" thick, kept
allowance ${allowance}%

room bunk
  north       12' 0"
  east        ${east}
  south       12' 0"
    door      30", 2' 0" from left, to landing${door}
  west        10' 0"

room landing
  existing    tile, stays

product plain plank
  plank       6" x 48", 1/4" thick
  box         10 planks
  pad         attached
  joints      8" stagger, 10" shortest end, 2" narrowest rip
  gap         1/4"
  laid        left to right
  cut         knife, 0" kerf
${more}
floor bunk
  rooms       bunk
  lay         plain plank, running east-west
  start       along north of bunk
${edge}
${said}
`
  const compiled = compile(new Map([['count.floor', text]]), 'count.floor')
  if ('missing' in compiled) throw new Error('nothing is included')
  return compiled
}

function quantityOf({ takeoff }: Compiled, key: string, room: string | null = null): Quantity {
  const all = [...takeoff.floors, ...takeoff.products].flatMap(({ quantities }) => quantities)
  const found = all.find((one) => one.key === key && one.room === room)
  if (found === undefined) throw new Error(`no quantity ${key}`)
  return found
}

const whole = (compiled: Compiled, key: string) => quantityOf(compiled, key).value!.n

describe('areas', () => {
  test('the room is 120 sq ft wall to wall, exactly', () => {
    expect(quantityOf(job(), 'room area', 'bunk').value).toEqual({ n: 120n, d: 1n })
  })

  test('the floor adds what lies in the doorway, to the middle of the wall and under both jambs', () => {
    // Half of wall and base, 2 1/2 in, × (30 + 2 × 1/2) in = 77 1/2 sq in = 155/288 sq ft.
    expect(quantityOf(job(), 'floor area').value).toEqual({ n: 120n * 288n + 155n, d: 288n })
  })
})

describe('trim', () => {
  test('perimeter less openings: 44 ft less the door, which lies 31 in open with its jambs', () => {
    expect(quantityOf(job(), 'trim run').value).toEqual({ n: 44n * 12n - 31n, d: 12n })
  })

  test('no base runs across a door, whether or not somebody said what covers the end there', () => {
    expect(quantityOf(job({ edge: '' }), 'trim run').value).toEqual({ n: 44n * 12n - 31n, d: 12n })
  })
})

describe('what is bought', () => {
  test('planks + spoil + spares make whole boxes, and the rest is left', () => {
    const compiled = job({ more: '  spoil       4 planks\n  spares      3 planks\n' })
    const planks = whole(compiled, 'planks')
    expect(whole(compiled, 'spoil')).toBe(4n)
    expect(whole(compiled, 'spares')).toBe(3n)
    expect(whole(compiled, 'boxes')).toBe((planks + 7n + 9n) / 10n)
    expect(whole(compiled, 'planks left')).toBe(whole(compiled, 'boxes') * 10n - planks - 4n)
  })

  test('at least two planks spoil: common practice, no source', () => {
    expect(whole(job(), 'spoil')).toBe(2n)
    expect(whole(job({ more: '  spoil       1 planks\n' }), 'spoil')).toBe(2n)
  })

  test('spares in boxes count by what a box holds', () => {
    expect(whole(job({ more: '  spares      2 boxes\n' }), 'spares')).toBe(20n)
  })
})

describe('expectations', () => {
  const boxes = whole(job(), 'boxes')

  test('one that is met says nothing', () => {
    expect(job({ said: `  expect      ${boxes} boxes\n` }).exit).toBe('sound')
  })

  test('one that is not is an error with both numbers', () => {
    const compiled = job({ said: `  expect      ${boxes + 1n} boxes\n` })
    expect(compiled.exit).toBe('errors')
    expect(
      compiled.messages.filter((one) => one.weight === 'error').map((one) => one.text),
    ).toEqual([
      `Expected ${boxes + 1n} boxes, and the job comes to ${boxes} boxes. Change the job, or write what it comes to now, or a margin: within 5%.`,
    ])
  })

  test('one that is not makes every total incomplete, and says why', () => {
    const { takeoff } = job({ said: `  expect      ${boxes + 1n} boxes\n` })
    expect(takeoff.complete).toBe(false)
    expect(takeoff.products[0]!.quantities.every((one) => !one.complete)).toBe(true)
    expect(takeoff.incompleteBecause.join(' ')).toContain(`Expected ${boxes + 1n} boxes`)
  })

  test('planks are counted for the floor, areas in the unit that is written', () => {
    const planks = whole(job(), 'planks')
    expect(job({ said: `  expect      ${planks} planks\n` }).exit).toBe('sound')
    const texts = job({ said: `  expect      ${planks - 1n} planks\n` }).messages.map((m) => m.text)
    expect(texts).toContain(
      `Expected ${planks - 1n} planks, and the job comes to ${planks} planks. Change the job, or write what it comes to now, or a margin: within 5%.`,
    )
    const far = job({ said: '  expect      100 sq ft, within 5%\n' })
    expect(far.messages.find(({ code }) => code === 'unmet-expectation')?.text).toMatch(
      /^Expected 100\.0 sq ft, and the job comes to 120\.5 sq ft\./,
    )
  })

  test('a margin goes both ways', () => {
    // 120 1/2 sq ft lie 4.6 % above 115.2 and 4.4 % below 126.
    expect(job({ said: '  expect      126 sq ft, within 4%\n' }).exit).toBe('errors')
    expect(job({ said: '  expect      126 sq ft, within 5%\n' }).exit).toBe('sound')
    expect(job({ said: '  expect      115.2 sq ft, within 4%\n' }).exit).toBe('errors')
    expect(job({ said: '  expect      115.2 sq ft, within 5%\n' }).exit).toBe('sound')
  })

  test('a margin is held exactly', () => {
    // 120 1/2 sq ft lie within 1 % of 121, and not within 0.1 %.
    expect(job({ said: '  expect      121 sq ft, within 1%\n' }).exit).toBe('sound')
    expect(job({ said: '  expect      121 sq ft, within 0.1%\n' }).exit).toBe('errors')
  })
})

describe('what is not ready never looks ready', () => {
  test('a reading still to be taken again makes every total incomplete, and says which', () => {
    const { takeoff, exit } = job({ east: '10\' 0"?' })
    expect(exit).toBe('incomplete')
    expect(takeoff.complete).toBe(false)
    expect(takeoff.products[0]!.quantities.every((one) => !one.complete)).toBe(true)
    expect(takeoff.incompleteBecause.join(' ')).toContain('east')
    expect(takeoff.products[0]!.quantities.map(({ key }) => key)).toContain('boxes')
  })

  test('a hold does, until it is cleared', () => {
    expect(job({ said: '  hold        slab reading\n' }).exit).toBe('incomplete')
    expect(job({ said: '  hold        slab reading, cleared 2026-10-01\n' }).exit).toBe('sound')
  })
})

test('a job without a floor counts nothing and is never complete, whatever else was said', () => {
  const { job: said, survey } = job()
  const counted = takeoff(said, survey, [], [])
  expect([counted.floors, counted.products, counted.complete]).toEqual([[], [], false])
  expect(counted.incompleteBecause).toEqual([
    'No floor is laid: write a floor block with rooms and lay.',
  ])
  const error = message('error', 'name-twice', said.floors[0]!.span, 'Two are called den.')
  expect(takeoff(said, survey, [], [error]).incompleteBecause).toEqual(['Two are called den.'])
  const note = message('note', 'job-defaults', said.floors[0]!.span, 'Taken from common practice.')
  expect(takeoff(said, survey, [], [note]).incompleteBecause).toEqual(counted.incompleteBecause)
})

test('the percentage rule says whether it would buy more or less than the layout', () => {
  const rule = (allowance: number) => {
    const text = quantityOf(job({ allowance }), 'planks by percentage')
    return [
      text.value!.n,
      text.derivation.rule.replace('rounded up once; for comparison only, ', ''),
    ]
  }
  // 120 155/288 sq ft in planks of 2 sq ft.
  const planks = whole(job(), 'planks')
  expect(rule(0)).toEqual([61n, `${planks - 61n} fewer than the layout, which governs`])
  expect(rule(20)).toEqual([73n, `${73n - planks} more than the layout`])
  const even = Number(planks * 100n) / 60.27 - 100
  expect(rule(Math.floor(even))).toEqual([planks, 'the same as the layout'])
})

test('every number leads down to a reading, or to a count of the layout', () => {
  const leaves = (one: Derivation): readonly Derivation[] =>
    one.inputs.length === 0 ? [one] : one.inputs.flatMap(leaves)
  const boxes = leaves(quantityOf(job(), 'boxes').derivation)
  expect(boxes.map((leaf) => leaf.label)).toContain('planks in a box')
  const area = leaves(quantityOf(job(), 'floor area').derivation)
  expect(area.map((leaf) => leaf.value)).toEqual(['12\' 0"', '10\' 0"', '12\' 0"', '10\' 0"'])
  expect(area.every((leaf) => leaf.span !== null)).toBe(true)
})
