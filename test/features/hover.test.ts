import { expect, test } from 'vitest'
import { hover } from '../../server/src/features/hover.ts'
import { estimateText } from '../../server/src/report/text/estimate.ts'
import { explainText } from '../../server/src/report/text/explain.ts'
import { layoutText } from '../../server/src/report/text/layout.ts'
import { visible } from '../../server/src/report/visible.ts'
import { expectGolden } from '../golden.ts'
import { exampleFiles } from './example-files.ts'
import { HOUSE } from './house.ts'
import { hoverLines, hoverPage } from './hover-page.ts'
import { type Look, view } from './marked.ts'
import { PARLOUR } from './parlour.ts'

const GOLDEN = new URL('golden/', import.meta.url).pathname

/** The explanation at the start of `what` in the first line that begins with `line`. */
function explained(text: string, line: string, what: string, look: Look = {}): readonly string[] {
  const offset = text.indexOf(what, text.indexOf(line))
  const { view: seen } = view(text, look)
  const found = hover(seen, offset + 1)
  return found === null ? [] : hoverLines(seen, found)
}

test('everything that a job of two rooms explains', () => {
  expectGolden(`${GOLDEN}hover-house.txt`, hoverPage(view(HOUSE).view))
})

test('everything that a room out of square explains, with doubts, holds and what is expected', () => {
  expectGolden(`${GOLDEN}hover-parlour.txt`, hoverPage(view(PARLOUR).view))
})

// By hand: 148 + 148 1/8 walked east and west miss by 1/8 in; each takes half of it.
test('a wall says its share of the closing error and what the shape makes of it', () => {
  expect(explained(HOUSE, '  north       12', `12'`)).toEqual(
    expect.arrayContaining([
      `text: The shape makes it 12' 4 1/16".`,
      'text: Its share of the closing error: +1/16", by the transit rule.',
    ]),
  )
})

// By hand: 1/16 in + 148 in × (1/32 in ÷ 120 in) = 0.10104 in, nearest 64th 6/64.
test('a reading says what it is worth, and which line says so', () => {
  expect(explained(HOUSE, '  north       12', `12'`)).toEqual(
    expect.arrayContaining([
      'text: Worth 3/32" (one standard deviation).',
      `  - tape 1/16" + 1/32" per 10' @3`,
    ]),
  )
  const silent = HOUSE.replace(/tape .*\n/, '')
  expect(explained(silent, '  north       12', `12'`)).toEqual(
    expect.arrayContaining([
      'text: Worth 5/64" (one standard deviation), for no line says otherwise.',
      'source: common practice, no source',
    ]),
  )
  const own = HOUSE.replace(`north       12' 4"`, `north       12' 4" within 1/4"`)
  expect(explained(own, '  north       12', `12'`)).toContain(
    'text: Worth 1/4" (one standard deviation).',
  )
})

test('walls that turn by right angles share the closing error with those along them', () => {
  const turned = `job A
room den
  north 12' 0"
  slant 10' 0", 90° right
  slant 12' 0 1/8", 90° right
  slant 10' 0", 90° right
`
  expect(explained(turned, '  north', 'north')).toEqual(
    expect.arrayContaining([
      '  - closing error: -1/8" east',
      `    - north: 12' 0", +1/16" @3`,
      `    - slant (12' 0 1/8"): 12' 0 1/8", -1/16" @5`,
    ]),
  )
})

test('a room of very many walls is told in a few lines', () => {
  const steps = Array.from({ length: 300 }, () => `  north 1' 0"\n  east 1' 0"\n`).join('')
  const stair = `job A\nroom den\n${steps}  south 300' 0"\n  west 300' 1"\n`
  expect(explained(stair, '  west', 'west').length).toBeLessThan(60)
  expect(explained(stair, 'room den', 'den').length).toBeLessThan(60)
})

// By hand: 3760 mm and 12' 4" = 3759.2 mm miss by 0.8 mm; each takes half of it.
test('a job in millimetres is explained in millimetres', () => {
  const metric = HOUSE.replace('job House', 'job House\nunits mm').replace(`12' 4 1/8"`, '3760 mm')
  expect(explained(metric, '  north       12', `12'`)).toEqual(
    expect.arrayContaining([
      `text: Read as 3759.2 mm, 12' 4".`,
      'text: Its share of the closing error: +0.4 mm, by the transit rule.',
    ]),
  )
})

test('the area of a room is explained by the same numbers as on the command line', () => {
  const { view: seen } = view(HOUSE)
  const area = seen.counted!.takeoff.floors[0]!.quantities.find(({ room }) => room === 'den')!
  const printed = explainText(area, seen.counted!)
  const lines = explained(HOUSE, 'room den', 'den')
  expect(lines[0]).toBe(`title: ${area.label}: ${area.printed}`)
  for (const wall of [`north: 12' 4"`, `west: 10' 8 1/8"`]) {
    expect(printed).toContain(wall)
    expect(lines.some((line) => line.includes(wall))).toBe(true)
  }
})

test.each([
  ['product ash', 'ash'],
  ['floor ground', 'ground'],
])('while it is being counted, %s says so and shows no count', (line, what) => {
  const lines = explained(HOUSE, line, what, { counted: false })
  expect(lines).toContain('text: Planks and boxes are being counted.')
  expect(lines.join('\n')).not.toMatch(/boxes: |[0-9] boxes/)
})

test('a number that is not final does not look so', () => {
  const held = HOUSE.replace('room hall\n', 'room hall\n  hold slab test\n')
  expect(explained(held, 'product ash', 'ash')).toEqual(
    expect.arrayContaining([
      'title: boxes: incomplete, 9 boxes so far',
      'text: This is incomplete: something that it needs is still to come.',
    ]),
  )
  expect(explained(held, 'floor ground', 'ground')).toContain(
    'text: Not final: something is still to come or wrong.',
  )
})

test.each([
  ['expect 9 boxes', ['title: expected: 9 boxes', 'text: The job comes to 9 boxes, as expected.']],
  [
    'expect 8 boxes',
    [
      'title: expected: 8 boxes',
      'text: The job comes to 9 boxes so far, which is not what is expected.',
    ],
  ],
  ['expect 90 planks, within 10%', ['title: expected: 90 planks, within 10.0 %']],
])('%s', (line, lines) => {
  expect(explained(`${HOUSE}  ${line}\n`, `  ${line}`, 'expect')).toEqual(
    expect.arrayContaining(lines),
  )
})

test('a room that is not finished explains what it lacks', () => {
  const asked = HOUSE.replace(`12' 4 1/8"`, '?')
  expect(explained(asked, 'room den', 'den')).toEqual([
    'title: den',
    'text: Unfinished: 1 wall still to read, so it has no figures yet.',
    'text: Laid in floor ground.',
  ])
  expect(explained(asked, '  south       ?', '?')).toContain(
    'text: Still to be taken: what needs it waits, and no total is final until then.',
  )
  expect(explained(asked, '  north       12', `12'`)).toContain(
    'text: den has no shape yet, so nothing is made of this reading.',
  )
  expect(explained(asked, '  diagonal', 'diagonal')).toContain(
    'text: There is nothing to hold it against: den has no shape yet.',
  )
})

test('readings that contradict each other make nothing', () => {
  const wrong = HOUSE.replace(`12' 4 1/8"`, `16' 4"`)
  expect(explained(wrong, 'room den', 'den')[1]).toBe(
    'text: Its readings contradict each other, so it has no figures before they agree.',
  )
  expect(explained(wrong, '  north       12', `12'`).at(-1)).toContain('nothing is made of them')
})

test('a doorway where a loop of rooms comes round says how it closes, as the estimate does', () => {
  const { view: seen } = view(exampleFiles(), { root: 'upper-floor.floor' })
  const at = seen.tree.text.indexOf('5\' 0", 4\' 1" from left, to library')
  const said = hoverLines(seen, hover(seen, at)!).find((line) => line.includes('The loop'))!
  const printed = estimateText(seen.counted!).replace(/\n +/g, ' ')
  expect(printed).toContain(said.replace('text: ', ''))
})

test('a rule of a product says where it is not met, as the cut list does', () => {
  const { view: seen } = view(exampleFiles(), {
    root: 'living-and-sun-room.floor',
    file: 'products.floor',
  })
  const at = seen.tree.text.lastIndexOf('2" narrowest rip')
  const lines = hoverLines(seen, hover(seen, at)!)
  expect(lines).toContain('text: Not met at 6 places:')
  const worst = lines.find((line) => line.includes('11/16'))!
  expect(layoutText(seen.counted!)).toContain(/a piece .* asked for/.exec(worst)![0])
})

test('an include says what it brings, and one that is not there that it is not read', () => {
  const files = {
    'job.floor': 'job A\ninclude p.floor\ninclude q.floor\n',
    'p.floor': 'product ash\n',
  }
  const { view: seen } = view(files)
  const at = (path: string) => hoverLines(seen, hover(seen, files['job.floor'].indexOf(path))!)
  expect(at('p.floor')).toEqual([
    'title: p.floor',
    'text: 2 lines. It tells:',
    '  - product ash @1',
  ])
  expect(at('q.floor')).toEqual(['title: q.floor', 'text: It is not read: its message says why.'])
})

test('blanks, comments and lines that cannot be read explain nothing', () => {
  const { view: seen } = view('job A\n\n# about it\nroom den  # dark\n  nrth 12\n')
  for (const what of ['\n#', 'about', 'dark', '12']) {
    expect(hover(seen, seen.tree.text.indexOf(what) + (what === '\n#' ? 0 : 1))).toBeNull()
  }
})

test.each([
  '<img src=x onerror=alert(1)>',
  '[a](command:x)',
  '__proto__',
  'constructor',
  '**b** `c`',
  '"\u202eabc"',
  '\u05d0\u05d1\u05d2',
])('a name like %s comes out as text, and nothing in it is hidden', (name) => {
  const odd = HOUSE.replaceAll('den', name).replaceAll('ash', `${name} ash`)
  const { view: seen } = view(odd)
  expect(hoverPage(seen)).toContain(visible(name.replaceAll('"', '')))
  for (let offset = 0; offset < odd.length; offset += 3) {
    for (const part of hover(seen, offset)?.parts ?? []) {
      const texts = part.kind === 'steps' ? part.lines.map((line) => line.text) : [part.text]
      for (const said of texts) expect(said).not.toMatch(/[\u202a-\u202e\u2066-\u2069\n]/)
    }
  }
})

test('every prefix of a job, and every offset of it, is answered', () => {
  for (let end = 0; end <= PARLOUR.length; end += 41) {
    const { view: seen } = view(PARLOUR.slice(0, end), { counted: false })
    for (let offset = Math.max(0, end - 60); offset <= end; offset++) {
      const found = hover(seen, offset)
      if (found === null) continue
      expect(found.span.start <= offset && offset <= found.span.end).toBe(true)
      expect(found.parts.length).toBeGreaterThan(0)
    }
  }
})
