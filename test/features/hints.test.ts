import { expect, test } from 'vitest'
import { hints } from '../../server/src/features/hints.ts'
import type { View } from '../../server/src/features/view.ts'
import { estimateText } from '../../server/src/report/text/estimate.ts'
import { exampleFiles } from './example-files.ts'
import { HOUSE } from './house.ts'
import { view } from './marked.ts'

/** Each hint after the text of its line. */
function shown(seen: View): readonly string[] {
  return hints(seen, { start: 0, end: seen.tree.text.length }).map(({ at, text, kind }) => {
    const line = seen.tree.lines.find(({ span }) => span.end === at)!
    return `${seen.tree.text.slice(line.span.start, at)} «${text}» ${kind}`
  })
}

test('a room says its area and how it closes, a product its boxes, a floor its planks', () => {
  expect(shown(view(HOUSE).view)).toEqual([
    'product ash «9 boxes» counted',
    'room den «131.8 sq ft, closes within 3/16"» measured',
    'room hall «36.0 sq ft, closes exactly» measured',
    'floor ground «9 boxes, 95 planks, narrowest rip 2 1/8"» counted',
  ])
})

test('while it is being counted the readings alone are shown', () => {
  expect(shown(view(HOUSE, { counted: false }).view).map((hint) => hint.split(' ').at(-1))).toEqual(
    ['measured', 'measured'],
  )
})

test.each([
  ['12\' 4 1/8"', '?', 'unfinished, 1 wall to read'],
  ['  south       12\' 4 1/8"\n', '', 'unfinished'],
  ['12\' 4 1/8"', '12\' 5"', '132.2 sq ft, misses closing by 1", allowed 5/16"'],
  ['12\' 4 1/8"', '16\' 4"', 'misses closing by 4\' 0", allowed 5/16"'],
  ['room den\n', 'room den\n  out of square\n', '131.8 sq ft, shaped by its distances'],
])('with %s as %s the room says %s', (before, after, text) => {
  const { view: seen } = view(HOUSE.replace(before, after), { counted: false })
  expect(shown(seen).find((hint) => hint.startsWith('room den'))).toBe(
    `room den «${text}» measured`,
  )
})

test('a room that cannot be read, or was not measured, says nothing', () => {
  const { view: seen } = view(HOUSE.replace("east        10'", 'east        ten'))
  expect(shown(seen).some((hint) => hint.startsWith('room den'))).toBe(false)
  expect(shown(view('job A\nroom hall\n').view)).toEqual([])
})

test('what is not final never looks so', () => {
  const { view: seen } = view(HOUSE.replace('room hall\n', 'room hall\n  hold slab test\n'))
  expect(shown(seen).filter((hint) => hint.endsWith('counted'))).toEqual([
    'product ash «incomplete, 9 boxes so far» counted',
    'floor ground «incomplete, 9 boxes, 95 planks so far, narrowest rip 2 1/8"» counted',
  ])
})

test('where two floors share a product, each says what it would take alone', () => {
  const apart = HOUSE.replace(', hall\n  lay', '\n  lay').concat(
    'floor small\n  rooms hall\n  lay ash, running north-south\n',
  )
  const texts = shown(view(apart).view).filter((hint) => hint.startsWith('floor'))
  expect(texts.every((text) => text.includes(' alone, '))).toBe(true)
})

test('only the part that is asked for is answered', () => {
  const { view: seen, ranges } = view(HOUSE.replace(/room hall[\s\S]*?(?=floor)/, '‹$&›'))
  expect(hints(seen, ranges[0]!).map(({ text }) => text)).toEqual(['36.0 sq ft, closes exactly'])
})

test.each(['upper-floor', 'living-and-sun-room', 'carpeted-bedroom'])(
  '%s shows the figures that the command line prints',
  (name) => {
    const { view: seen } = view(exampleFiles(), { root: `${name}.floor` })
    const printed = estimateText(seen.counted!)
    const figures = hints(seen, { start: 0, end: seen.tree.text.length }).flatMap(({ text }) =>
      text.match(/[0-9.]+ (?:sq ft|planks|boxes)/g),
    )
    expect(figures.length).toBeGreaterThan(2)
    for (const figure of figures) expect(printed).toContain(figure)
  },
)
