import { expect, test } from 'vitest'
import { floorFigures } from '../../server/src/features/figures/floor-figures.ts'
import { stripOf } from '../../server/src/features/preview/preview-strip.ts'
import { pieceFacts } from '../../server/src/report/piece-facts.ts'
import { exampleFiles } from './example-files.ts'
import { view } from './marked.ts'

test.each(['upper-floor', 'living-and-sun-room', 'carpeted-bedroom'])(
  'the figures of %s are those of its pieces and of its breaches',
  (name) => {
    const { view: seen } = view(exampleFiles(), { root: `${name}.floor` })
    for (const laid of seen.counted!.floors) {
      const { pieces, breaches, rules } = laid.published
      const { cut, narrowest } = floorFigures(laid)
      expect(cut).toBe(pieces.filter((piece) => pieceFacts(piece).cut !== 'whole').length)
      const worst = breaches
        .filter(({ rule }) => rule === 'narrowest rip')
        .toSorted((a, b) => a.value - b.value)[0]
      if (worst === undefined) expect(narrowest!.width).toBeGreaterThanOrEqual(rules.narrowestRip)
      else expect(narrowest).toMatchObject({ width: worst.value, piece: worst.pieces[0] })
    }
  },
)

test('the strip over the drawing names the same narrowest piece as the breach of that rule', () => {
  const { view: seen } = view(exampleFiles(), { root: 'living-and-sun-room.floor' })
  const rip = stripOf(seen, [], []).find(({ about }) => about === 'narrowest rip')!
  const worst = seen
    .counted!.floors[0]!.published.breaches.filter(({ rule }) => rule === 'narrowest rip')
    .toSorted((a, b) => a.value - b.value)[0]!
  expect(rip.text).toContain(`piece ${worst.pieces[0]}`)
  expect(rip.weight).toBe('alarm')
})
