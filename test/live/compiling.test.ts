import { expect, test } from 'vitest'
import { compile, compiling, newKept } from '../../server/src/compile.ts'
import { manyRooms } from '../bench/many-rooms.ts'
import { effort } from '../effort.ts'
import { heldMegabytes } from '../fuzz/memory.ts'
import { readExamples } from './examples.ts'
import { EDITS, firstDifference } from './sequence.ts'

const SEQUENCES = effort(6, 50_000 / EDITS)

/** Counted after the first sequences: until then the engine itself grows. */
const FIRST = effort(3, 100)

/** Megabytes that no garbage is. */
const MOST_GROWN = 5

test(`${SEQUENCES * EDITS} edits: what is kept changes nothing, and is not kept for ever`, {
  timeout: 24 * 3_600_000,
}, () => {
  let start = 0
  for (let seed = 0; seed < SEQUENCES; seed++) {
    if (seed === FIRST) start = heldMegabytes()
    const found = firstDifference(seed)
    if (found !== null) expect(found.again, found.where).toBe(found.fresh)
  }
  expect(heldMegabytes() - start).toBeLessThan(MOST_GROWN)
})

test('what no edit touched is the very same', () => {
  const { files, root } = readExamples()
  const kept = newKept()
  const run = (texts: ReadonlyMap<string, string>) => {
    const steps = compiling(texts, root, new Map(), kept)
    for (;;) {
      const step = steps.next()
      if (!step.done) continue
      if ('missing' in step.value) throw new Error('it includes nothing else')
      return step.value
    }
  }
  const before = run(files)
  const text = files.get(root)!
  const noted = run(new Map(files).set(root, text.replace('in the corner', 'in a corner')))
  expect(noted.survey.rooms[0]).toBe(before.survey.rooms[0])
  expect(noted.job.products[0]).toBe(before.job.products[0])
  expect(noted.floors[0]!.published).toBe(before.floors[0]!.published)
  const commented = run(new Map(files).set(root, `# ${'a remark\n# '.repeat(100)}\n${text}`))
  expect(commented.floors[0]!.floor.span.start).toBeGreaterThan(1000)
  expect(commented.survey.rooms[0]).toBe(before.survey.rooms[0])
})

test('laying pauses more often than once for each line tried, and comes to the same', () => {
  const { files, root } = readExamples()
  const steps = compiling(files, root)
  let laying = 0
  for (let step = steps.next(); !step.done; step = steps.next())
    if (step.value.kind === 'laying') laying++
  expect(laying).toBeGreaterThan(20)
  expect('missing' in compile(files, root)).toBe(false)
})

test('one version is in memory, however many blocks were edited one after the other', () => {
  const { files, root } = manyRooms(1000)
  const kept = newKept()
  const lines = files.get(root)!.split('\n')
  const key = (at: number) => {
    lines[at] += 'x'
    const steps = compiling(new Map(files).set(root, lines.join('\n')), root, new Map(), kept)
    while (!steps.next().done);
  }
  const notes = lines.flatMap((line, i) => (line.startsWith('    note') ? [i] : []))
  for (const at of notes.slice(0, 8)) key(at)
  const start = heldMegabytes()
  for (const at of notes.slice(8)) key(at)
  expect(notes.length).toBeGreaterThan(50)
  expect(heldMegabytes() - start).toBeLessThan(2)
})
