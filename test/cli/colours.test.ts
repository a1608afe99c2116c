import { expect, test } from 'vitest'
import { type ColourWish, coloursFor } from '../../server/src/cli/colours.ts'

test.each<[ColourWish, boolean, Record<string, string>, boolean]>([
  ['auto', true, {}, true],
  ['auto', true, { TERM: 'xterm-256color' }, true],
  ['auto', false, {}, false],
  ['auto', false, { FORCE_COLOR: '1', CI: 'true' }, false],
  ['auto', true, { NO_COLOR: '1' }, false],
  // An empty NO_COLOR says nothing (no-color.org).
  ['auto', true, { NO_COLOR: '' }, true],
  ['auto', true, { TERM: 'dumb' }, false],
  ['never', true, {}, false],
  ['always', false, { NO_COLOR: '1' }, true],
])('%s, terminal %s, %o: colour %s', (wish, terminal, env, coloured) => {
  expect(coloursFor(wish, terminal, { env }).red('x') !== 'x').toBe(coloured)
})
