import { describe, expect, test } from 'vitest'
import { cautionsOf, PREAMBLE } from '../../server/src/report/cautions.ts'
import { laid } from './laid.ts'

/** A one-room job whose room says what it says; the hall beside it is not covered. */
function about(said: string, more = ''): string[] {
  const { job } = laid(`floorscribe 1
job Test
units feet-inches
${more}
room den
${said}
  north       12' 0"
  east        10' 0"
  south       12' 0"
  west        10' 0"

room hall
  existing    sheet vinyl, stays
  subfloor    slab

floor ground
  rooms       den
`)
  return cautionsOf(job).map((caution) => caution.about)
}

describe('cautions', () => {
  test('begin with what they are not', () => {
    expect(PREAMBLE).toMatch(/Reminders only, not legal, engineering or medical advice\./)
    expect(PREAMBLE).toMatch(
      /the authority having jurisdiction and licensed professionals prevail\.$/,
    )
  })

  test.each([
    ['  existing    sheet vinyl', 'asbestos'],
    ['  existing    tile', 'asbestos'],
    ['  existing    tile', 'silica'],
    ['  subfloor    slab', 'silica'],
    ['  subfloor    slab', 'hidden services'],
    ['  existing    carpet, pad, tack strip', 'strips, staples, knives'],
    ['  existing    carpet', 'stop and refer'],
    ['', 'lifting'],
    ['', 'saws, nailers'],
    ['', 'dust'],
  ])('for a room with "%s" speak of %s', (said, caution) => {
    expect(about(said)).toContain(caution)
  })

  test('are silent on what the job gives no reason for', () => {
    expect(about('  subfloor    plywood\n  existing    carpet')).toEqual([
      'strips, staples, knives',
      'dust',
      'saws, nailers',
      'lifting',
      'stop and refer',
    ])
  })

  test('leave out rooms that no floor covers', () => {
    expect(about('')).not.toContain('asbestos')
    expect(about('')).not.toContain('hidden services')
  })

  test('speak of lead paint where the base comes off', () => {
    expect(about('', 'base 1/2" thick, off and back')).toContain('lead paint')
    expect(about('', 'base 1/2" thick, kept')).not.toContain('lead paint')
  })

  test('name a source each, and say where there is none', () => {
    const { job } = laid(`floorscribe 1
job Test
room den
  subfloor    slab
  existing    tile
  north       12' 0"
  east        10' 0"
  south       12' 0", stair down
  west        10' 0"
floor ground
  rooms       den
`)
    const sources = new Map(cautionsOf(job).map((one) => [one.about, one.sourceText]))
    // As the trade page labels them: [S] as it stands, [M] from memory, [CP] common practice.
    expect(sources.get('asbestos')).toBe('RFCI Recommended Work Practices; 29 CFR 1926.1101')
    expect(sources.get('silica')).toBe('29 CFR 1926.1153')
    expect(sources.get('lifting')).toBe('NIOSH 94-110')
    expect(sources.get('steps')).toBe('IRC R311.7.5.1 (from memory)')
    expect(sources.get('dust')).toBe('common practice, no source')
  })
})
