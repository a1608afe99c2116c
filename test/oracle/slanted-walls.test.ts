import { expect, test } from 'vitest'
import { effort } from '../effort.ts'
import { disagreements } from './agreement.ts'
import { houseOf } from './house.ts'
import { compiled } from './product.ts'
import { readJob } from './read-job.ts'

/** Two rooms on either side of a wall that is out of true by `off`, with what stands in it and how planks run. */
const job = (off: number, inWall: readonly string[], floor: readonly string[]) => `floorscribe 1
job slanted walls
units mm, bare mm
tape 3 mm
walls 100 thick
base 12 thick, off and back

product larch
  plank       200 x 1200
  box         10 planks
  joints      200 stagger, 250 shortest end, 50 narrowest rip
  gap         6

room hall
  slant       ${Math.round(Math.hypot(3000, off))}, 3000 east, ${off} north, called skew wall
${inWall.map((line) => `    ${line}\n`).join('')}  east        ${2500 + off}
  south       3000
  west        2500

room den
  north       3000
  east        2000
  slant       ${Math.round(Math.hypot(3000, off))}, 3000 west, ${off} south, called skew wall
    door      800, 300 from right, to hall
  west        ${2000 + off}

floor one
${floor.map((line) => `  ${line}\n`).join('')}`

const DOOR = 'door 800, 300 from left, to den'
const CLOSET = 'closet 900, 1600 from left, 600 deep, 1100 inside, called store'
const ALCOVE = 'alcove 700, 1700 from left, 60 deep'

const RUNS = ['east-west', 'north-south', 'north-east', 'along skew wall of']
const CASES = RUNS.flatMap((run) =>
  [7, 131, 600].flatMap((off) => [
    [run, off, [DOOR], 'hall, den', ''],
    [run, off, [DOOR, ALCOVE], 'hall, den', 'break hall to den'],
    [run, off, [DOOR], 'den', ''],
    [run, off, [CLOSET], 'hall, store', ''],
  ]),
) as readonly (readonly [string, number, readonly string[], string, string])[]

test.each(CASES.filter((_, i) => i % effort(5, 1) === 0))(
  'run %s, out of true by %i mm: %j in the wall, %s laid, %s',
  (...said) => {
    const [run, off, inWall, rooms, more] = said
    const of = run.endsWith(' of') ? ` ${rooms.split(',')[0]}` : ''
    const lines = [`rooms ${rooms}`, `lay larch, running ${run}${of}`, more].filter(Boolean)
    const text = job(off, inWall, lines)
    const files = new Map([['slanted.floor', text]])
    const product = compiled(files, 'slanted.floor')
    expect(product.hasErrors).toBe(false)
    const own = readJob(files, 'slanted.floor')
    expect(disagreements(own, houseOf(own), product, { isExact: false, nm: 8n })).toEqual([])
  },
)
