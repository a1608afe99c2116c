import { expect, test } from 'vitest'
import { floorFigures } from '../../server/src/features/floor-figures.ts'
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
