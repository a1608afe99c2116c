import { describe, expect, test } from 'vitest'
import { HEAD, said } from '../job.ts'

/** A line of a price book: kept as it stands, but for a figure that reads two ways. */
const LINES: readonly (readonly [typed: string, says: string])[] = [
  ['price river larch, 4.35 per sq ft, sold by the box', ''],
  ['price end cap, 26.00 per stick of 94"', ''],
  ['currency USD, 2 decimals', ''],
  ['tax 8.25% on materials, by invoice', ''],
  [
    'price floor sander, 1,250 a day',
    'error comma-in-number: 1,250 is 1250 to some and 1.250 to others. A number has no comma: write 1250 or 1.250.',
  ],
  [
    'labour jamb undercut, 9,00 per side',
    'error comma-in-number: A comma parts entries and never stands in a number. Write 9.00, or 9, 00 if these are two entries.',
  ],
  [
    'deposit 1.234,50',
    'error comma-in-number: 1.234,50 is 1234.50 to some and 1.23450 to others. A number has no comma: write 1234.50 or 1.23450.',
  ],
]

describe('figures in a price book', () => {
  test.each(LINES)('%s', (typed, says) => {
    const told = said(`${HEAD}room den\n\nprices autumn\n  ${typed}\n`)
    expect(told.startsWith('incomplete job-unfinished') ? '' : told).toBe(says)
  })
})
