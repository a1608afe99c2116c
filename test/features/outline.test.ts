import { expect, test } from 'vitest'
import { type OutlineItem, outlineOf } from '../../server/src/features/outline.ts'
import { view } from './marked.ts'

/** An outline as indented lines: kind, name, detail. */
function drawn(items: readonly OutlineItem[], indent = ''): readonly string[] {
  return items.flatMap(({ kind, name, detail, under }) => [
    `${indent}${kind}: ${[name, detail].filter((part) => part !== '').join(' | ')}`,
    ...drawn(under, `${indent}  `),
  ])
}

const JOB = `floorscribe 1
job Heron Cottage
  site        3 Millpond Lane
room den
  north       12' 4", called window wall
    door      30", 14" from left, to hall
    note      glazed
  east        ?
  corner      throat
    opening   4' 0", 2' 0" from left
  closet      3' 0", 1' 0" from left, in north, called cupboard
  diagonal    16' 3 7/8", from north-west to throat
  column      8" round
product ash
  plank       6" x 48"
floor ground
  rooms       den
prices list
`

test('a job is drawn over its rooms, products, floors and price books', () => {
  expect(drawn(outlineOf(view(JOB).view.tree))).toEqual([
    'job: Heron Cottage',
    '  room: den',
    `    wall: north, window wall | 12' 4"`,
    '      opening: door to hall | 30"',
    '    wall: east | ?',
    `      opening: opening | 4' 0"`,
    `    closet: closet, cupboard | 3' 0"`,
    `    check: diagonal | 16' 3 7/8"`,
    '    obstacle: column',
    '  product: ash',
    '  floor: ground',
    '  prices: list',
  ])
})

test('a part without a job is a list', () => {
  const { view: part } = view({
    'job.floor': 'job A\ninclude b.floor\n',
    'b.floor': 'room ‹|›den\n',
  })
  expect(drawn(outlineOf(part.tree))).toEqual(['room: den'])
})

test('what has no name yet goes by its word, and hidden signs are spelt out', () => {
  const tree = view('job\nroom\nroom __proto__\nroom "a\u202eb"\n').view.tree
  expect(drawn(outlineOf(tree))).toEqual([
    'job: job',
    '  room: room',
    '  room: __proto__',
    '  room: "a‹U+202E›b"',
  ])
})

test('each item is shown within all of it, and holds the items under it', () => {
  const check = (items: readonly OutlineItem[]): void => {
    for (const { span, at, under } of items) {
      expect(span.start <= at.start && at.end <= span.end).toBe(true)
      for (const inner of under) {
        expect(span.start <= inner.span.start && inner.span.end <= span.end).toBe(true)
      }
      check(under)
    }
  }
  check(outlineOf(view(JOB).view.tree))
})
