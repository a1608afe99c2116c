import { describe, expect, test } from 'vitest'
import type { PublishedFloor, PublishedRules } from '../../server/src/layout/published.ts'
import { verify } from '../../server/src/verify/verify.ts'
import { reportInWords } from '../../server/src/verify/words.ts'
import { HAND_MADE, inches, layouts } from './hand-made.ts'
import type { Floor } from './spoil/spoiler.ts'

describe('sound layouts', () => {
  test.each(HAND_MADE.map((floor) => [floor.floor, floor] as const))('%s', (_, floor) => {
    expect(verify(layouts(floor)).faults).toEqual([])
  })

  test('the breaches found are those listed', () => {
    const report = verify(layouts(...HAND_MADE))
    expect(report.breaches.map(({ floor, ...breach }) => breach)).toEqual(
      HAND_MADE.flatMap(({ breaches }) => breaches),
    )
  })

  test('what was looked at is counted', () => {
    expect(verify(layouts(...HAND_MADE)).checked).toEqual({
      floors: 4,
      courses: 12,
      pieces: 40,
      joints: 29,
      planks: 31,
    })
  })

  test('in whatever order things are listed', () => {
    for (const floor of HAND_MADE) {
      const { courses, planks, pieces, joints, doorways, breaches } = floor
      const listed = { courses, planks, pieces, joints, doorways, breaches }
      for (const key of Object.keys(listed) as (keyof typeof listed)[]) {
        const turned = { ...floor, [key]: floor[key].toReversed() }
        expect([key, verify(layouts(turned)).faults]).toEqual([key, []])
      }
    }
  })

  test('a report of faults in words: twenty are told, the rest are counted', () => {
    const faults = Array.from({ length: 21 }, (_, i) => ({
      code: 'joint-missing',
      text: `Number ${i}.`,
      floor: i === 0 ? '' : 'den',
    }))
    const checked = { floors: 1, courses: 2, pieces: 1, joints: 0, planks: 1 }
    const report = { sound: false, faults, breaches: [], checked }
    const lines = reportInWords(report).split('\n')
    expect(lines.slice(0, 4)).toEqual([
      'Not sound: 21 faults.',
      'Looked at 1 floor, 2 courses, 1 piece, 0 joints and 1 plank.',
      'Fault: Number 0. [joint-missing]',
      'Fault on den: Number 1. [joint-missing]',
    ])
    expect(lines.slice(-3)).toEqual([
      'Fault on den: Number 19. [joint-missing]',
      'And 1 further fault.',
      '',
    ])
    const twenty = reportInWords({ ...report, faults: faults.slice(0, 20) })
    expect(twenty).not.toContain('further')
    expect(reportInWords({ ...report, faults: faults.slice(0, 1) })).toContain(
      'Not sound: 1 fault.',
    )
  })

  test('in words', () => {
    expect(reportInWords(verify(layouts(...HAND_MADE)))).toBe(
      [
        'Sound: the layout was proven again from its figures.',
        'Looked at 4 floors, 12 courses, 40 pieces, 29 joints and 31 planks.',
        'Breach on post: stagger of 76.2 mm (203.2 mm wanted) at pieces 5 and 8, 787.4 mm along, 323.85 mm across.',
        'Breach on leaning: shortest end of 249.766667 mm (254 mm wanted) at piece 11, 2984.5 mm along, 355.6 mm across.',
        '',
      ].join('\n'),
    )
  })
})

describe('rules that loosen with the product', () => {
  const [floor] = HAND_MADE
  const turn = (laid: PublishedRules['laid']): PublishedFloor => ({
    ...floor!,
    rules: { ...floor!.rules, laid },
    pieces: floor!.pieces.map((piece) => (piece.piece === 2 ? { ...piece, turned: true } : piece)),
  })

  test('a symmetric lock lets a plank be turned', () => {
    expect(verify(layouts(turn('either way'))).faults).toEqual([])
    expect(verify(layouts(turn('right to left'))).sound).toBe(false)
  })

  test('a turned offcut starts where it would have ended', () => {
    const flip = structuredClone(floor!) as Floor
    flip.rules.laid = 'either way'
    const end = flip.pieces.find(({ piece }) => piece === 11)!
    end.turned = true
    end.along = [inches(38), inches(48)]
    expect(verify(layouts(flip)).faults).toEqual([])
  })

  test('no kerf and nothing to spare: two pieces may share a plank to the last nanometre', () => {
    const whole = structuredClone(floor!) as Floor
    Object.assign(whole.rules, { kerfAcross: 0, kerfAlong: 0, toSpare: 0 })
    whole.pieces.find(({ piece }) => piece === 3)!.along = [0, inches(34.5)]
    expect(verify(layouts(whole)).faults).toEqual([])
  })
})
