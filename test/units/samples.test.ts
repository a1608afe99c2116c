import { expect, test } from 'vitest'
import { samplesIn } from '../../server/src/units/samples.ts'

const SAID = 'Write 4 1/2" thick, 12\' 4 1/2", 7" x 48", 1/4" gap or 10\' of wall; line 14.'

test.each([
  ['feet-inches', SAID],
  ['inches', 'Write 4 1/2" thick, 148 1/2", 7" x 48", 1/4" gap or 120" of wall; line 14.'],
  ['mm', 'Write 115 mm thick, 3770 mm, 180 mm x 1220 mm, 6 mm gap or 3050 mm of wall; line 14.'],
  ['cm', 'Write 11.5 cm thick, 377 cm, 18 cm x 122 cm, 0.6 cm gap or 305 cm of wall; line 14.'],
  ['m', 'Write 0.115 m thick, 3.77 m, 0.18 m x 1.22 m, 0.006 m gap or 3.05 m of wall; line 14.'],
] as const)('sample lengths as a job in %s writes them, rounded', (style, said) => {
  expect(samplesIn(SAID, style)).toBe(said)
})
