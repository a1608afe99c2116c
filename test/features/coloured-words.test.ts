import { expect, test } from 'vitest'
import { colouredWords } from '../../server/src/features/coloured-words.ts'
import { view } from './marked.ts'

/** Each coloured stretch as `kind: text`, with a ! where a name is given. */
function coloured(source: string): readonly string[] {
  const { view: seen, ranges } = view(source, { counted: false })
  return colouredWords(seen.tree, ranges[0]).map(
    ({ span, kind, gives }) =>
      `${kind}${gives ? '!' : ''}: ${seen.tree.text.slice(span.start, span.end)}`,
  )
}

test.each([
  ['job Heron Cottage', ['first word: job', 'text: Heron Cottage']],
  [
    'units feet-inches, bare inches',
    ['first word: units', 'word: feet-inches', 'word: bare', 'word: inches'],
  ],
  ['room sun room  # late', ['first word: room', 'room!: sun room']],
  ['prices "the list"', ['first word: prices', 'prices!: "the list"']],
])('%s', (line, expected) => {
  expect(coloured(line)).toEqual(expected)
})

test.each([
  [
    `north 12' 4" within 1/4", called long one`,
    [
      `first word: north`,
      `reading: 12' 4"`,
      'word: within',
      'reading: 1/4"',
      'word: called',
      'wall!: long one',
    ],
  ],
  ['south ?', ['first word: south', 'asked: ?']],
  [`east about 4' 0"?`, ['first word: east', 'word: about', `reading: 4' 0"`, 'asked: ?']],
  [
    'diagonal ?, from north-west to throat',
    [
      'first word: diagonal',
      'asked: ?',
      'word: from',
      'corner: north-west',
      'word: to',
      'corner: throat',
    ],
  ],
  ['out of square', ['first word: out of square']],
  ['note the cat, 12"', ['first word: note', 'text: the cat, 12"']],
  [
    'accept corner not square, because old',
    ['first word: accept', 'code: corner not square', 'word: because', 'free: old'],
  ],
  ['existing carpet, tack strip', ['first word: existing', 'free: carpet', 'free: tack strip']],
  [`north 4' 0", hmm what`, ['first word: north', `reading: 4' 0"`]],
  ['nrth 4\' 0"', ['first word: nrth', `text: 4' 0"`]],
])('in a room: %s', (line, expected) => {
  expect(coloured(`room den\n‹  ${line}›\n`)).toEqual(expected)
})

test('in a floor: rooms, product, walls, trims', () => {
  expect(
    coloured(
      'floor all\n‹  lay ash, running along north of den\n  edge den to outside, with end cap›\n',
    ),
  ).toEqual([
    'first word: lay',
    'product: ash',
    'word: running',
    'word: along',
    'wall: north',
    'word: of',
    'room: den',
    'first word: edge',
    'room: den',
    'word: to',
    'room: outside',
    'word: with',
    'trim: end cap',
  ])
})

test('stretches stand in order and apart, and a range gives what it touches', () => {
  const { view: seen } = view(
    `job A\nroom den\n  north 12' 4"\n    door 30", 6" from left, to hall\n  note x\n    again ?\nfloor f\n  rooms den, hall\n`,
    { counted: false },
  )
  const all = colouredWords(seen.tree)
  for (const [i, { span }] of all.entries()) {
    expect(span.start).toBeGreaterThanOrEqual(all[i - 1]?.span.end ?? 0)
    expect(span.end).toBeGreaterThan(span.start)
  }
  for (let start = 0; start < seen.tree.text.length; start += 7) {
    const touched = all.filter(({ span }) => span.start <= start + 20 && start <= span.end)
    expect(colouredWords(seen.tree, { start, end: start + 20 })).toEqual(touched)
  }
})
