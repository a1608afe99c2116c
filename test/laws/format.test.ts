import { expect, test } from 'vitest'
import { format } from '../../server/src/language/format.ts'
import { effort } from '../effort.ts'
import { dice } from '../generate/dice.ts'
import { smallJob } from './jobs.ts'
import { withOtherBlanks, withTrailingBlanks } from './transform/blanks.ts'
import { treeOf } from './transform/edit.ts'
import { withCapitals } from './transform/letters.ts'

const SEEDS = Array.from({ length: effort(40, 4000) }, (_, seed) => seed)
const formatted = (text: string) => format(treeOf(text))

test('what is formatted twice is formatted once', () => {
  for (const seed of SEEDS) {
    for (const text of smallJob(seed).files.values()) {
      const once = formatted(text)
      expect(formatted(once), `seed ${seed}`).toBe(once)
    }
  }
})

test('blanks and capitals come to one canonical text', () => {
  for (const seed of SEEDS) {
    for (const text of smallJob(seed).files.values()) {
      const chance = dice(seed)
      const typed = withTrailingBlanks(withCapitals(withOtherBlanks(text, chance), chance), chance)
      expect(formatted(typed), `seed ${seed}`).toBe(formatted(text))
    }
  }
})
