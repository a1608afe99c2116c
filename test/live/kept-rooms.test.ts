import { expect, test } from 'vitest'
import { type Compiled, compile, compiling, newKept } from '../../server/src/compile.ts'
import { plain } from './plain.ts'

const HEAD = `floorscribe 1
job Two rooms
units feet-inches
walls 4 1/2" thick
`

const HALL = `room hall
  north 10' 0"
    door 32", 2' 0" from left, to bath
  east 5' 0"
  south 10' 0"
  west 5' 0"
`

const BATH = `room bath
  north 8' 0"
  east 6' 0"
  south 8' 0"
    door 32", 2' 0" from right, to hall
  west 6' 0"
`

const FLOOR = `product board
  plank 6" x 48"
  box 10 planks
  joints 8" stagger, 10" shortest end
  gap 1/4"
floor ground
  rooms hall, bath
  lay board, running east-west
`

/** Each version worked out with what the ones before it left, and held against a run from nothing. */
function versions(...texts: readonly string[]): readonly Compiled[] {
  const kept = newKept()
  return texts.map((text) => {
    const files = new Map([['job.floor', text]])
    const steps = compiling(files, 'job.floor', new Map(), kept)
    for (;;) {
      const step = steps.next()
      if (!step.done) continue
      if ('missing' in step.value) throw new Error('it includes nothing')
      expect(plain(step.value)).toBe(plain(compile(files, 'job.floor')))
      return step.value
    }
  })
}

const codes = ({ messages }: Compiled) => messages.map(({ code }) => code)

test('a room stays the same while another is edited, and so does a floor it is not in', () => {
  const before = HEAD + HALL + BATH + FLOOR
  const [first, second] = versions(before, before.replace(`west 6' 0"`, `west 6' 0 1/16"`))
  expect(second!.job.rooms[0]).toBe(first!.job.rooms[0])
  expect(second!.job.rooms[1]).not.toBe(first!.job.rooms[1])
  expect(second!.job.products[0]).toBe(first!.job.products[0])
})

test('a room that a door leads to goes and comes back', () => {
  const whole = HEAD + HALL + BATH + FLOOR
  const [first, without, again] = versions(whole, HEAD + HALL + FLOOR, whole)
  expect(codes(without!)).toContain('name-unknown')
  expect(codes(first!)).not.toContain('name-unknown')
  expect(codes(again!)).toEqual(codes(first!))
})

test('a message that names a line names where it is now', () => {
  const twice = HEAD + HALL + BATH + HALL + FLOOR
  const [first, second] = versions(twice, twice.replace(HEAD, `${HEAD}\n\n\n`))
  const line = (compiled: Compiled) =>
    /on line (\d+)/.exec(compiled.messages.find(({ code }) => code === 'name-twice')!.text)![1]
  expect([line(first!), line(second!)]).toEqual(['5', '8'])
})

test('what the file says for all rooms is taken for each when it changes', () => {
  const before = HEAD + HALL + BATH + FLOOR
  const [first, second] = versions(before, before.replace('4 1/2" thick', '6" thick'))
  const [thin, thick] = [first!, second!].map(({ survey }) => survey.doorways[0]!.thickness)
  expect(thick! - thin!).toBe(1.5 * 25_400_000)
})

test('a units line that changes is read into every line', () => {
  const before = `${HEAD}${HALL}${BATH}${FLOOR}`
  const bare = before.replace('units feet-inches', 'units feet-inches, bare inches')
  const [, second, third] = versions(
    before.replace(`east 5' 0"`, 'east 60'),
    bare.replace(`east 5' 0"`, 'east 60'),
    bare.replace(`east 5' 0"`, 'east 60').replace('bare inches', 'bare cm'),
  )
  const east = (compiled: Compiled) => compiled.job.rooms[0]!.walls[1]!.reading.nm
  expect([east(second!), east(third!)]).toEqual([60 * 25_400_000, 600_000_000])
})

test('a room that two floors list is said where it stands now', () => {
  const second = 'floor other\n  rooms hall\n  lay board\n'
  const before = HEAD + HALL + BATH + FLOOR + second
  const [first, moved, mended] = versions(
    before,
    `# a remark\n${before}`,
    HEAD + HALL + BATH + FLOOR,
  )
  expect(codes(first!)).toContain('room-laid-twice')
  expect(codes(moved!)).toContain('room-laid-twice')
  expect(codes(mended!)).not.toContain('room-laid-twice')
})

test('a layout is laid once for all that is written beside it', () => {
  const before = HEAD + HALL + BATH + FLOOR
  const [first, noted, renamed] = versions(
    before,
    before.replace('  west 6', '  note dry\n  west 6'),
    before.replace('floor ground', 'floor upper'),
  )
  expect(noted!.floors[0]!.published).toBe(first!.floors[0]!.published)
  expect(noted!.floors[0]).not.toBe(first!.floors[0])
  expect(renamed!.floors[0]!.published.floor).toBe('upper')
})
