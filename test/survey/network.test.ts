import { describe, expect, test } from 'vitest'
import type { Check, Opening } from '../../server/src/job/job.ts'
import { survey } from '../../server/src/survey/survey-job.ts'
import { ownThickness, throughAt } from '../../server/src/survey/through.ts'
import { door, four, job, name, type OpeningMore, reading, room } from './build.ts'
import { box, surveyOf, toInches } from './text.ts'

const PLAIN = `12', 9', 12', 9'`
const WALLS = four(`12'`, `9'`, `12'`, `9'`)
const codes = (text: string) => surveyOf(text).messages.map(({ code }) => code)

describe('two doors written from either side', () => {
  const pair = (a: string, b: string) =>
    surveyOf(
      box('a', PLAIN, `door 30", 1' from right, in south, to b${a}`) +
        box('b', PLAIN, `door 30", 1' from left, in north, to a${b}`),
    ).doorways

  test.each([
    ['neither has a name', '', '', 1],
    ['one has', ', called first', '', 1],
    ['the other has', '', ', called first', 1],
    ['both have the same', ', called first', ', called first', 1],
    ['they have two names', ', called first', ', called second', 2],
  ])('%s', (_, a, b, count) => {
    expect(pair(a, b)).toHaveLength(count)
  })

  test('one here, two there: which it is cannot be told', () => {
    const there = box(
      'b',
      PLAIN,
      `door 30", 1' from left, in north, to a`,
      `door 30", 6' from left, in north, to a`,
    )
    const here = box('a', PLAIN, `door 30", 1' from right, in south, to b`)
    const [one, other] = [codes(here + there), codes(there + here)]
    expect(one).toEqual(other)
    expect(one).toHaveLength(1)
  })

  test.each([
    ['west', false],
    ['east', false],
    ['south', false],
    ['north', true],
  ])('a south door and a %s one', (way, face) => {
    const found = codes(
      box('a', PLAIN, `door 30", 1' from right, in south, to b`) +
        box('b', PLAIN, `door 30", 1' from left, in ${way}, to a`),
    )
    expect(found).toEqual(face ? [] : ['doorway-walls-do-not-face'])
  })
})

describe('what a room may be tied by to another', () => {
  const rooms = (tieOfA: string, tieOfB: string) =>
    surveyOf(
      box(
        'a',
        PLAIN,
        `door 30", 1' from right, in south, to b`,
        `door 30", 1' from left, in east, to c`,
        tieOfA,
      ) +
        box('b', PLAIN, `door 30", 1' from left, in north, to a`, tieOfB) +
        box('c', PLAIN, `door 30", 1' from right, in west, to a`) +
        box('d', PLAIN),
    )

  // 9' and 9' with 4 1/2" between; from west to east 12' and 12' with as much.
  test.each([
    [
      'to the south',
      `tie 18' 4 1/2", from north to south of b`,
      `diagonal 15', from north-west to south-east`,
    ],
    [
      'back to the first room',
      `diagonal 15', from north-west to south-east`,
      `tie 18' 4 1/2", from south to north of a`,
    ],
    [
      'to the east',
      `tie 24' 4 1/2", from west to east of c`,
      `diagonal 15', from north-west to south-east`,
    ],
  ])('%s', (_, ofA, ofB) => {
    const { rooms: found, messages } = rooms(ofA, ofB)
    expect(messages).toEqual([])
    const ties = found.flatMap(({ checks }) =>
      checks.filter(({ check }) => check.kind === 'room tie'),
    )
    expect(ties).toHaveLength(1)
    expect(ties[0]).toMatchObject({ difference: 0, fixes: false })
    // Twice the σ of the tie alone is at least 1/8", the doors and walls on the way add less than 3/4".
    expect(toInches(ties[0]!.allowed)).toBeGreaterThan(0.125)
    expect(toInches(ties[0]!.allowed)).toBeLessThan(0.9)
  })

  const tie = (text: string, to: string): Check =>
    ({
      kind: 'room tie',
      from: 0,
      to: 2,
      room: name(to),
      reading: reading(text),
      span: reading(text).span,
    }) as Check
  const tiesOf = (check: Check, more: OpeningMore = {}) => {
    const { rooms: found, messages } = survey(
      job([
        room('a', WALLS, {
          openings: [door(2, `30"`, `1' from right`, { to: 'b', ...more })],
          checks: [check],
        }),
        room('b', WALLS, { openings: [door(0, `30"`, `1' from left`, { to: 'a', ...more })] }),
        room('c', WALLS),
        room('d', []),
      ]),
    )
    const ties = found[0]!.checks.filter((one) => one.check.kind === 'room tie')
    return [ties.length, messages.filter(({ code }) => code.includes('disagree')).length]
  }

  test.each([
    ['agrees', `18' 4 1/2"`, 'b', [1, 0]],
    ['does not agree', `17'`, 'b', [1, 1]],
    ['is still to be read', '?', 'b', [0, 0]],
    ['goes to no room', `17'`, 'pantry', [0, 0]],
    ['goes to a room that no doorway ties', `17'`, 'c', [0, 0]],
    ['goes to a room without walls', `17'`, 'd', [0, 0]],
  ])('one that %s', (_, text, to, counts) => {
    expect(tiesOf(tie(text, to))).toEqual(counts)
  })

  test('says nothing while the thickness of the wall between is still asked for', () => {
    expect(tiesOf(tie(`17'`, 'b'), { thick: null })).toEqual([1, 0])
  })

  test('that of a wall to the outside does not matter', () => {
    const outside: Opening = door(3, `30"`, `1' from left`, { to: 'outside', thick: null })
    const { messages } = survey(
      job([
        room('a', WALLS, {
          openings: [door(2, `30"`, `1' from right`, { to: 'b' }), outside],
          checks: [tie(`17'`, 'b')],
        }),
        room('b', WALLS, { openings: [door(0, `30"`, `1' from left`, { to: 'a' })] }),
      ]),
    )
    expect(messages.filter(({ code }) => code.includes('disagree'))).toHaveLength(1)
  })
})

describe('nothing is said of how rooms lie while one of them is surely misread', () => {
  const house = (walls: string, more: string) =>
    box(
      'a',
      walls,
      `door 30", 1' from right, in south, to b`,
      `door 30", 1' from left, in south, to c`,
      more,
    ) +
    box('b', PLAIN, `door 30", 1' from left, in north, to a`) +
    box('c', PLAIN, `door 30", 1' from right, in north, to a`)
  const tie = `tie 17', from north to south of b`
  const first = `diagonal 15', from north-west to south-east`

  test('of rooms over each other', () => {
    expect(codes(house(PLAIN, first))).toEqual(['rooms-overlap'])
    expect(codes(house(`12', 9', 12', 8'`, first))).toEqual(['closing-error'])
  })

  test('of ties', () => {
    expect(codes(house(PLAIN, tie))).toHaveLength(2)
    expect(codes(house(`12', 9', 12', 8'`, tie))).toEqual(['closing-error'])
  })
})

describe('four rooms round a corner', () => {
  const loop = (atB: string, atC: string, wallsOfA = PLAIN) =>
    surveyOf(
      box(
        'a',
        wallsOfA,
        `door 30", 1' from right, in south, to b`,
        `door 30", 1' from right, in east, to c`,
      ) +
        box(
          'b',
          PLAIN,
          `door 30", 1' from left, in north, to a`,
          `door 30", 1' from left, in east, to d`,
        ) +
        box(
          'c',
          PLAIN,
          `door 30", 1' from left, in west, to a`,
          `door 30", 1' from left, in south, to d`,
        ) +
        box(
          'd',
          PLAIN,
          `door 30", ${atB} from right, in west, to b`,
          `door 30", ${atC} from right, in north, to c`,
        ),
    )

  test.each([
    ['comes round', `1'`, `1'`, []],
    ['misses a little, east or west', `1'`, `1' 1"`, ['warning']],
    ['misses much, east or west', `1'`, `1' 6"`, ['error']],
    ['misses a little, north or south', `1' 1"`, `1'`, ['warning']],
    ['misses much, north or south', `1' 6"`, `1'`, ['error']],
  ])('%s', (_, atB, atC, weights) => {
    const { messages, loops } = loop(atB, atC)
    const ofLoop = messages.filter(({ code }) => code === 'loop-does-not-close')
    expect(ofLoop.map(({ weight }) => weight)).toEqual(weights)
    expect(loops).toHaveLength(1)
    expect(loops[0]!.within).toBe(weights.length === 0)
  })

  test('says nothing while a room of it is surely misread', () => {
    const { messages } = loop(`1'`, `1' 6"`, `12', 9', 12', 8'`)
    expect(messages.map(({ code }) => code)).toEqual(['closing-error'])
  })
})

describe('how thick a wall is', () => {
  const line = { file: 'job.floor', start: 10, end: 30 }
  const opening = (span: object | null, kind = 'door') =>
    ({
      kind,
      span: line,
      thickness: span === null ? null : { value: 10, span },
    }) as unknown as Opening

  test.each([
    ['within its line', { ...line, start: 12, end: 20 }, true],
    ['all its line', line, true],
    ['in another file', { ...line, file: 'other.floor' }, false],
    ['above', { ...line, start: 2 }, false],
    ['below', { ...line, end: 40 }, false],
  ])('an own thickness stands on its own line: %s', (_, span, own) => {
    expect(ownThickness(opening(span)) !== null).toBe(own)
  })

  const plans = [1, 2].map((inset) => ({ shape: { plane: { inset } } })) as never
  const through = (...openings: readonly Opening[]) => {
    const [near, far = null] = openings.map((one, i) => ({ room: i, face: { opening: one } }))
    return throughAt({ near, far, beyond: null } as never, plans)
  }
  const away = { ...line, start: 2, end: 5 }

  test('with a kept base on either side', () => {
    expect(through(opening(away))).toBe(11)
    expect(through(opening(away), opening(away))).toBe(13)
    expect(through(opening(null), opening(away))).toBe(13)
    expect(through(opening(null), opening(null))).toBe(3)
  })

  test('of none, at an open side', () => {
    expect(through(opening(null, 'open side'), opening(null, 'open side'))).toBe(0)
    expect(through(opening(away, 'open side'), opening(null, 'open side'))).toBe(10)
  })
})
