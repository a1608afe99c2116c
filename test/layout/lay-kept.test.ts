import { describe, expect, test } from 'vitest'
import { Shelf } from '../../server/src/facts/kept.ts'
import { inOneGo } from '../../server/src/facts/slices.ts'
import type { Floor, Job, Product } from '../../server/src/job/job.ts'
import { floorArea } from '../../server/src/layout/area.ts'
import { type LayoutsKept, laying, type ToLay } from '../../server/src/layout/lay.ts'
import type { SurveyedRoom } from '../../server/src/survey/survey.ts'
import { floor, inch, job, name, room, survey } from './house.ts'

const den = room('den', [0, 0, 144, 60])
const only = floor(['den'])
const plain = job()

interface Given {
  readonly rooms?: readonly SurveyedRoom[]
  readonly floor?: Floor
  readonly job?: Job
  readonly product?: Product
}

const area = floorArea(plain, survey([den]), only)

function toLay(given: Given = {}): ToLay {
  const { rooms = [den], product = plain.products[0]! } = given
  return {
    job: given.job ?? plain,
    floor: given.floor ?? only,
    product,
    area,
    survey: survey(rooms),
  }
}

const shelves = (): LayoutsKept => ({ floors: new Shelf(), layouts: new Shelf() })
const laid = (kept: LayoutsKept | undefined, given: Given = {}) =>
  inOneGo(laying(toLay(given), kept))

describe('a floor laid in an earlier run', () => {
  test('is the very same where nothing of it changed, and none is kept without a shelf', () => {
    const kept = shelves()
    const first = laid(kept)
    expect(laid(kept)).toBe(first)
    expect(laid(undefined)).not.toBe(first)
    expect(laid(undefined)).toEqual(first)
  })

  const start = (text: string) => ({ room: name(text), wall: 0, span: den.room.span })
  const started: Floor = { ...only, start: start('den') }
  const running = { kind: 'along', room: name('den'), wall: 0, span: den.room.span } as const
  const run: Floor = { ...only, running }

  test.each<readonly [string, Given, Given]>([
    ['other units', {}, { job: { ...plain, units: 'mm' } }],
    ['another pile', {}, { job: { ...plain, pile: { ...plain.pile, pieces: 2 } } }],
    ['a pile that waits longer', {}, { job: { ...plain, pile: { ...plain.pile, courses: 2 } } }],
    ['a product read anew', {}, { product: { ...plain.products[0]! } }],
    ['its start in a room read anew', { floor: started }, { floor: started, rooms: [{ ...den }] }],
    ['its run in a room read anew', { floor: run }, { floor: run, rooms: [{ ...den }] }],
  ])('is laid or told anew with %s', (_, before, after) => {
    const kept = shelves()
    const first = laid(kept, before)
    expect(laid(kept, before)).toBe(first)
    const second = laid(kept, after)
    expect(second).not.toBe(first)
    expect(second).toEqual(laid(undefined, after))
  })

  test('keeps its layout where its lines only moved', () => {
    const kept = shelves()
    const first = laid(kept)!
    const moved: Floor = { ...only, span: { file: 'test.floor', start: 70, end: 71 } }
    const second = laid(kept, { floor: moved })!
    expect(second.floor).toBe(moved)
    expect(second.published).toBe(first.published)
    expect(second.messages.map(({ span }) => span.start)).toEqual(first.messages.map(() => 70))
    expect(second.messages.length).toBeGreaterThan(0)
  })

  test.each<readonly [string, Given]>([
    ['another name', { floor: { ...only, name: name('downstairs') } }],
    [
      'a shift',
      { floor: { ...only, shift: { way: 'north', distance: inch(1), span: only.span } } },
    ],
    ['a product of another name', { product: { ...plain.products[0]!, name: name('pine') } }],
    ['another stagger', { product: job({ stagger: { value: inch(9), span: null } }).products[0]! }],
  ])('has a layout of its own with %s', (_, after) => {
    const kept = shelves()
    const first = laid(kept)!
    const second = laid(kept, after)!
    expect(second.published).not.toBe(first.published)
    expect(second).toEqual(laid(undefined, after))
  })

  test('stays on the shelves as long as it is asked for', () => {
    const kept = shelves()
    const first = laid(kept)!
    for (let run = 0; run < 5; run += 1) {
      kept.floors.turn()
      kept.layouts.turn()
      expect(laid(kept)).toBe(first)
    }
    const moved: Floor = { ...only, span: { file: 'test.floor', start: 70, end: 71 } }
    expect(laid(kept, { floor: moved })!.published).toBe(first.published)
  })

  test('that cannot be laid is not tried again', () => {
    const kept = shelves()
    const huge = job({ gap: { value: inch(40), span: null } })
    const none = floorArea(huge, survey([den]), only)
    const input = { ...toLay(), area: none }
    expect(inOneGo(laying(input, kept))).toBeNull()
    expect(inOneGo(laying(input, kept))).toBeNull()
    expect(kept.floors.get(only)?.value.floor).toBeNull()
  })
})
