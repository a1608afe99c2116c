import { existsSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { verify } from '../../server/src/verify/verify.ts'
import { expectGolden } from '../golden.ts'
import { HAND_MADE, layouts } from './hand-made.ts'
import type { Spoiler } from './spoil/spoiler.ts'
import { SPOILERS, spoiled } from './spoil.ts'

const GOLDEN = new URL('spoiled.golden.txt', import.meta.url).pathname

/** What is told of each falsified layout, by the name of what was done to it. */
const TOLD: ReadonlyMap<string, string> = new Map(
  (existsSync(GOLDEN) ? readFileSync(GOLDEN, 'utf8') : '')
    .split(/^# /m)
    .slice(1)
    .map((block) => {
      const [name, ...lines] = block.split('\n')
      return [
        name!,
        lines
          .filter((line) => line !== '')
          .map((line) => `${line}\n`)
          .join(''),
      ]
    }),
)

/** The faults of the first floor that can be spoiled so, each with its place. */
function told(spoiler: Spoiler): string {
  const copy = HAND_MADE.map((floor) => spoiled(floor, spoiler)).find((one) => one !== null)!
  const faults = verify(layouts(copy)).faults.map(({ code, text, floor, ...more }) => {
    const places = Object.entries(more).map(([key, value]) => ` ${key} ${value}`)
    return `${code} on ${floor}${places.join(',')}: ${text}\n`
  })
  return faults.slice(0, 12).join('')
}

describe('a falsified layout is rejected with its own fault', () => {
  test.each(SPOILERS.map((spoiler) => [spoiler.name, spoiler] as const))('%s', (_, spoiler) => {
    const copies = HAND_MADE.map((floor) => spoiled(floor, spoiler)).filter((copy) => copy !== null)
    expect(copies.length).toBeGreaterThan(0)
    for (const copy of copies) {
      const report = verify(layouts(copy))
      expect(report.sound).toBe(false)
      expect(report.faults.map(({ code }) => code)).toContain(spoiler.fault)
    }
    expect(told(spoiler)).toBe(TOLD.get(spoiler.name))
  })

  test('all that is told of them', () => {
    expectGolden(
      GOLDEN,
      SPOILERS.map((spoiler) => `# ${spoiler.name}\n${told(spoiler)}`).join('\n'),
    )
  })

  test('what is wrong is said with its path', () => {
    const copy = structuredClone(HAND_MADE[0]!)
    ;(copy.pieces[3]!.ring[1] as [number, number])[0] = 12.5
    expect(verify(layouts(copy)).faults).toEqual([
      {
        code: 'not-readable',
        floor: '',
        text: 'floors[0].pieces[3].ring[1][0] is 12.5; a whole number is wanted.',
      },
    ])
  })

  test('one bad floor hides no other', () => {
    const [first, second] = HAND_MADE
    const bad = { ...first!, rules: null as unknown as (typeof first & object)['rules'] }
    const report = verify(layouts(bad, { ...second!, joints: [] }))
    expect(new Set(report.faults.map(({ code }) => code))).toEqual(
      new Set(['not-readable', 'joint-missing']),
    )
  })
})
