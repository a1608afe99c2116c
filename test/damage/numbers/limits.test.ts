import { describe, expect, test } from 'vitest'
import { NM_PER_FOOT } from '../../../server/src/units/length.ts'
import { printExact } from '../../../server/src/units/print.ts'
import { bedroomWith, compiled, FLOOR, HEAD, jobWith, pressing, quantity } from '../job.ts'

/** The codes that press in a job, each once. */
function codes(text: string): readonly string[] {
  return [...new Set(pressing(compiled(text)).map(({ code }) => code))]
}

const rectangle = (north: string, east: string): string =>
  bedroomWith([`north ${north}`, `east ${east}`, `south ${north}`, `west ${east}`])

const withLine = (text: string, line: string): string =>
  text.replace('  gap         1/4"\n', `  gap         1/4"\n  ${line}\n`)

const inFloor = (line: string): string => jobWith(FLOOR, `${FLOOR}  ${line}\n`)
const onNorth = (...lines: readonly string[]): string =>
  bedroomWith([
    `north 12'`,
    ...lines.map((line) => `-${line}, to outside`),
    `east 9'`,
    `south 12'`,
    `west 9'`,
  ])
const inBedroom = (...lines: readonly string[]): string =>
  bedroomWith([`north 12'`, `east 9'`, `south 12'`, `west 9'`, ...lines])
const columns = (count: number): string =>
  [
    'room stairwell',
    '  out of square',
    ...Array.from({ length: count - 2 }, (_, i) => `  ${i % 2 === 0 ? 'north' : 'east'} 1'`),
    `  south ${(count - 2) / 2}'`,
    `  west ${(count - 2) / 2}'`,
    '',
  ].join('\n')

interface Comparison {
  readonly what: string
  /** What is written at the limit and a hair to either side of it. */
  readonly rows: readonly (readonly [
    where: 'below' | 'at' | 'above',
    written: string,
    code: string,
  ])[]
  readonly job: (written: string) => string
}

/**
 * Every rule that compares with a figure, hit below, at and above. The floor's net size is the reading less
 * a gap of 1/4 in at each side.
 */
const COMPARISONS: readonly Comparison[] = [
  {
    what: 'narrowest rip: 2 in, the floor one course deep',
    rows: [
      ['below', `2 31/64"`, 'narrowest-rip'],
      ['at', `2 1/2"`, ''],
      ['above', `2 33/64"`, ''],
    ],
    job: (deep) => rectangle(`12'`, deep),
  },
  {
    what: 'shortest end: 10 in, the floor one piece long',
    rows: [
      ['below', `10 31/64"`, 'shortest-end'],
      ['at', `10 1/2"`, ''],
      ['above', `10 33/64"`, ''],
    ],
    job: (long) => rectangle(long, `4'`),
  },
  {
    what: 'stagger: planks of 24 in, ends of 10 in and 26 in of floor leave 6 in to stagger',
    rows: [
      ['below', `5 63/64"`, ''],
      ['at', `6"`, ''],
      ['above', `6 1/64"`, 'shortest-end'],
    ],
    job: (stagger) =>
      rectangle(`26 1/2"`, `9'`)
        .replace('6 3/4" x 47 7/8"', '6 3/4" x 24"')
        .replace('8" stagger', `${stagger} stagger`),
  },
  {
    what: 'run along the planks: 10 ft',
    rows: [
      ['below', `10' 31/64"`, ''],
      ['at', `10' 1/2"`, ''],
      ['above', `10' 33/64"`, 'longest-run'],
    ],
    job: (long) => withLine(rectangle(long, `9'`), `run 10' long`),
  },
  {
    what: 'run across the planks: 10 ft',
    rows: [
      ['below', `10' 31/64"`, ''],
      ['at', `10' 1/2"`, ''],
      ['above', `10' 33/64"`, 'longest-run'],
    ],
    job: (deep) => withLine(rectangle(`12'`, deep), `run 10' wide`),
  },
  {
    what: 'gap: half of a room 9 ft deep',
    rows: [
      ['below', `4' 5 63/64"`, 'narrowest-rip'],
      ['at', `4' 6"`, 'nothing-to-lay'],
      ['above', `4' 6 1/64"`, 'nothing-to-lay'],
    ],
    job: (gap) => jobWith('gap         1/4"', `gap ${gap}`),
  },
  {
    what: 'expected boxes: the job comes to 6',
    rows: [
      ['below', '5 boxes', 'unmet-expectation'],
      ['at', '6 boxes', ''],
      ['above', '7 boxes', 'unmet-expectation'],
    ],
    job: (boxes) => inFloor(`expect ${boxes}`),
  },
  {
    what: 'expected planks within a margin: 49 is 2 % off 50',
    rows: [
      ['below', '50 planks, within 1.99%', 'unmet-expectation'],
      ['at', '50 planks, within 2%', ''],
      ['above', '50 planks, within 2.01%', ''],
    ],
    job: (planks) => inFloor(`expect ${planks}`),
  },
  {
    what: 'expected area: 108 sq ft is 20 % more than 90',
    rows: [
      ['below', '89.99 sq ft, within 20%', 'unmet-expectation'],
      ['at', '90 sq ft, within 20%', ''],
      ['above', '90.01 sq ft, within 20%', ''],
    ],
    job: (area) => inFloor(`expect ${area}`),
  },
  {
    what: 'allowance: 100 %',
    rows: [
      ['below', '99.999%', ''],
      ['at', '100%', ''],
      ['above', '100.001%', 'percent-too-high'],
    ],
    job: (percent) =>
      jobWith('base 1/2" thick, kept\n', `base 1/2" thick, kept\nallowance ${percent}\n`),
  },
  {
    what: 'inches after feet: 12',
    rows: [
      ['below', `11' 11 63/64"`, ''],
      ['at', `11' 12"`, 'inches-past-twelve'],
      ['above', `11' 12 1/64"`, 'inches-past-twelve'],
    ],
    job: (north) => rectangle(north, `9'`),
  },
  {
    what: 'turn of a wall: 180°',
    rows: [
      ['below', '179.9° right', 'walls-do-not-come-round'],
      ['at', '180° right', 'turn-too-far'],
      ['above', '180.1° right', 'turn-too-far'],
    ],
    job: (turn) => `${HEAD}room den\n  north 12'\n  slant 4', ${turn}\n  east 9'\n`,
  },
  {
    what: 'bow: half a circle over 12 ft rises 6 ft',
    rows: [
      ['below', `5' 11 63/64" bow`, ''],
      ['at', `6' bow`, ''],
      ['above', `6' 1/64" bow`, 'bow-too-deep'],
    ],
    job: (bow) => `${HEAD}room den\n  north 12', ${bow}\n  east 9'\n  south 12'\n  west 9'\n`,
  },
  {
    what: 'width of a plank: 4 ft',
    rows: [
      ['below', `3' 11 63/64" x 8'`, ''],
      ['at', `4' x 8'`, ''],
      ['above', `4' 1/64" x 8'`, 'plank-size-unlikely'],
    ],
    job: (face) => `${HEAD}product board\n  plank ${face}\n  box 2 planks\n`,
  },
  {
    what: 'planks in a box: a million',
    rows: [
      ['below', '999999 planks', ''],
      ['at', '1000000 planks', ''],
      ['above', '1000001 planks', 'count-too-high'],
    ],
    job: (box) => jobWith('10 planks', box),
  },
  {
    what: 'walls of a room out of square: 60',
    rows: [
      ['below', '58', 'shape-not-fixed'],
      ['at', '60', 'shape-not-fixed'],
      ['above', '62', 'too-many-loose-walls'],
    ],
    job: (count) => HEAD + columns(count === '58' ? 58 : count === '60' ? 60 : 62),
  },
  {
    what: 'thickness told from both sides of a door: 1/4 in apart',
    rows: [
      ['below', `4 47/64"`, ''],
      ['at', `4 3/4"`, ''],
      ['above', `4 49/64"`, 'thickness-disagrees'],
    ],
    job: (thick) =>
      `${HEAD}room hall\n  north 12'\n  east 9'\n  south 12'\n    door 30", 1' from right, to bath, 4 1/2" thick\n  west 9'\n` +
      `room bath\n  north 12'\n    door 30", 1' from left, to hall, ${thick} thick\n  east 9'\n  south 12'\n  west 9'\n`,
  },
  {
    what: 'an obstacle against a wall: its face at 0',
    rows: [
      ['below', `0"`, ''],
      ['at', `11' 4"`, ''],
      ['above', `11' 5"`, 'obstacle-outside-room'],
    ],
    job: (west) => inBedroom(`column 8" round, ${west} from west, 3' from north`),
  },
  {
    what: 'two obstacles: the second begins where the first ends',
    rows: [
      ['below', `4' 7 63/64"`, 'obstacles-overlap'],
      ['at', `4' 8"`, ''],
      ['above', `4' 8 1/64"`, ''],
    ],
    job: (west) =>
      inBedroom(
        `island 8" east-west, 8" north-south, 4' from west, 3' from north`,
        `island 8" east-west, 8" north-south, ${west} from west, 3' from north`,
      ),
  },
]

/** What a job of no floor lacks is not the question. */
const asked = (text: string, code: string): readonly string[] =>
  codes(text).filter(
    (one) =>
      one === code ||
      !/^(?:job-unfinished|product-unfinished|walls-do|shape-not|room-with)/.test(one),
  )

describe.each(COMPARISONS)('$what', ({ rows, job }) => {
  test.each(rows)('%s: %s', (_, written, code) => {
    expect(asked(job(written), code)).toEqual(code === '' ? [] : [code])
  })
})

describe('what the readings allow is met to the nanometre', () => {
  /** The least of the lengths between two of which a code is said; of the first it is not. */
  function leastSaid(
    job: (nm: number) => string,
    code: string,
    taken: number,
    not: number,
  ): number {
    let [low, high] = [taken, not]
    while (high - low > 1) {
      const middle = Math.floor((low + high) / 2)
      if (codes(job(middle)).includes(code)) high = middle
      else low = middle
    }
    return high
  }
  const firstSaid = (job: (length: string) => string, code: string, taken: number, not: number) =>
    leastSaid((nm) => job(printExact(nm, 'mm')), code, taken, not)

  const TWELVE = 12 * NM_PER_FOOT
  const closed = (length: string) =>
    bedroomWith([`north ${length}`, `east 9'`, `south 12'`, `west 9'`])

  test('a room that misses closing', () => {
    const limit = firstSaid(closed, 'closing-error', TWELVE, TWELVE + NM_PER_FOOT)
    const closing = (nm: number) => compiled(closed(printExact(nm, 'mm'))).survey.rooms[0]!.closing!
    const [at, past] = [closing(limit - 1), closing(limit)]
    expect([at.within, past.within]).toEqual([true, false])
    expect(past.east - past.allowedEast).toBeLessThanOrEqual(1)
    // Two standard deviations of two walls of 12 ft: √2 · 2 · (1/16 in + 12/10 · 1/32 in).
    expect(past.allowedEast / 25.4e6).toBeCloseTo(2 * Math.SQRT2 * (1 / 16 + 1.2 / 32), 3)
  })

  test('a diagonal that disagrees', () => {
    const read = (length: string) => inBedroom(`diagonal ${length}, from north-west to south-east`)
    const limit = firstSaid(read, 'check-disagrees', 15 * NM_PER_FOOT, 16 * NM_PER_FOOT)
    const check = compiled(read(printExact(limit, 'mm'))).survey.rooms[0]!.checks[0]!
    expect(check.difference - check.allowed).toBeLessThanOrEqual(1)
    expect(check.difference).toBeGreaterThan(check.allowed - 1)
  })

  test('a door that ends past its wall', () => {
    const door = (length: string) => onNorth(`door 32", ${length} from left`)
    const start = TWELVE - 32 * 25.4e6
    const limit = firstSaid(door, 'opening-does-not-fit', start, start + NM_PER_FOOT)
    // Two standard deviations of the wall, the place and the width, as their readings are worth.
    const worth = (feet: number) => 1 / 16 + feet / 320
    const allowed = 2 * Math.hypot(worth(12), worth(limit / NM_PER_FOOT), worth(32 / 12))
    expect((limit - start) / 25.4e6).toBeCloseTo(allowed, 3)
  })

  test('two doors that lie over each other', () => {
    const end = NM_PER_FOOT + 32 * 25.4e6
    const place = (over: number) => printExact(end - over, 'mm')
    const doors = (over: number) =>
      onNorth(`door 32", 1' from left`, `door 32", ${place(over)} from left`)
    const limit = leastSaid(doors, 'openings-overlap', 0, NM_PER_FOOT)
    const worth = (feet: number) => 1 / 16 + feet / 320
    const at = (end - limit) / NM_PER_FOOT
    const widths = [worth(32 / 12), worth(32 / 12)]
    const allowed = 2 * Math.hypot(worth(12), worth(1), worth(at), ...widths)
    expect(limit / 25.4e6).toBeCloseTo(allowed, 3)
  })
})

test('the job that all of this changes is sound', () => {
  const job = compiled(jobWith(FLOOR, FLOOR))
  expect(job.exit).toBe('sound')
  expect([quantity(job, 'boxes'), quantity(job, 'planks')]).toEqual(['6 boxes', '49 planks'])
})
