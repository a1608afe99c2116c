import { expect, test } from 'vitest'
import { folds } from '../../server/src/features/folding.ts'
import { view } from './marked.ts'

function folded(text: string): readonly string[] {
  return folds(view(text).view.tree).map(({ kind, first, last }) => `${kind} ${first}-${last}`)
}

test('blocks fold to their last line that says something, walls over what stands under them', () => {
  expect(
    folded(`job A
  site here

# the rooms,
# one by one
room den
  # first wall
  north 4' 0"
    door 30", 6" from left
      note opens in
  east 4' 0"
    again 4' 0 1/8"

# alone
floor one
`),
  ).toEqual(['block 1-2', 'comment 4-5', 'block 6-12', 'under 8-10', 'under 9-10', 'under 11-12'])
})

test('a line alone folds nothing, and line ends of any system are one line each', () => {
  expect(folded('job A\r\nroom b\r\n  north 4\' 0"\r\n')).toEqual(['block 2-3'])
  expect(folded('')).toEqual([])
})
