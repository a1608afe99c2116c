import { describe, expect, test } from 'vitest'
import type { Opening } from '../../server/src/job/job.ts'
import { survey } from '../../server/src/survey/survey-job.ts'
import { door, four, job, room } from './build.ts'
import { box, inches, surveyOf } from './text.ts'

const PLAIN = `12', 9', 12', 9'`
const lines = (name: string, ...said: readonly string[]) =>
  `room ${name}\n${said.map((line) => `  ${line}\n`).join('')}`

describe('the floor in a doorway runs to the face beyond', () => {
  /** The high part of b's north wall lies `jog` farther north than the low one, 4 1/2" beyond a. */
  const house = (jog: string, south: string) =>
    box(
      'a',
      PLAIN,
      `door 30", 1' from right, in south, to b, called low door`,
      `door 30", 2' 6" from left, in south, to b, called high door`,
    ) +
    lines(
      'b',
      `north 6', called low`,
      `  door 30", 1' from left, to a, called low door`,
      `west ${jog}, called step`,
      `north 6', called high`,
      `  door 30", 1' from left, to a, called high door`,
      `east ${south}`,
      `south 12'`,
      `west 9'`,
    )

  test.each([
    [`2"`, `9' 2"`, -110.5, 'nearer'],
    [`4 1/2"`, `9' 4 1/2"`, -108, 'at the face it comes from'],
    [`12"`, `10'`, -112.5, 'behind it: through the wall, never back into the room'],
  ])('%s to the north', (jog, east, far) => {
    const { doorways } = surveyOf(house(jog, east))
    const high = doorways.find(({ label }) => label === 'high door')!
    expect(inches([...high.near, ...high.far])).toEqual([
      [114, -108],
      [84, -108],
      [114, far],
      [84, far],
    ])
  })

  test('nothing beyond: a wall’s thickness deep', () => {
    const { doorways } = surveyOf(box('a', PLAIN, `door 30", 1' from left, in south, to outside`))
    expect(inches(doorways[0]!.far)).toEqual([
      [132, -112.5],
      [102, -112.5],
    ])
    expect(doorways[0]).toMatchObject({ to: null, reaches: false, other: null })
  })

  test('where to was not said', () => {
    const a = room('a', four(`12'`, `9'`, `12'`, `9'`), {
      openings: [door(2, `30"`, `1' from left`)],
    })
    expect(survey(job([a])).doorways[0]).toMatchObject({ to: null, toText: '', jambs: true })
  })
})

/**
 * Two doors in a's south wall: b has the first, and with it its north wall 4 1/2" south of a's. Only a
 * has the second, which is to come out in that wall, to an inch.
 */
const oneSided = (
  first: string,
  firstBeyond: string,
  northOfB: string,
  second: string,
  wallsOfA = PLAIN,
) =>
  surveyOf(
    box(
      'a',
      wallsOfA,
      `door 30", ${first}, in south, to b, called first`,
      `door 30", ${second}, called second`,
    ) +
      box(
        'b',
        `${northOfB}, 9', ${northOfB}, 9'`,
        `door 30", ${firstBeyond}, in north, to a, called first`,
      ),
  )

const SECOND = `1' from left, in south, to b`

describe('a doorway that only one room has', () => {
  test.each([
    // Its middle is 117" from b's left corner.
    ['b ends behind it', `1' from left`, `10'`, SECOND, true],
    ['b ends half an inch past its middle', `1' from left`, `117 1/2"`, SECOND, true],
    ['half an inch short of it', `1' from left`, `116 1/2"`, SECOND, true],
    ['an inch short of it', `1' from left`, `116"`, SECOND, false],
    ['two feet short of it', `1' from left`, `93"`, SECOND, false],
    ['an inch deeper than the wall', `1' from left`, `12'`, `${SECOND}, 5 1/2" thick`, true],
    ['less deep', `1' from left`, `12'`, `${SECOND}, 3 1/2" thick`, true],
    ['more than an inch deeper', `1' from left`, `12'`, `${SECOND}, 5 5/8" thick`, false],
    ['more than an inch less deep', `1' from left`, `12'`, `${SECOND}, 3 3/8" thick`, false],
  ])('%s', (_, beyond, north, second, reaches) => {
    const { doorways, messages } = oneSided(`1' from right`, beyond, north, second)
    const found = doorways.find(({ label }) => label === 'second')!
    expect(found.reaches).toBe(reaches)
    expect(messages.map(({ code }) => code)).toEqual(reaches ? [] : ['doorway-misses-room'])
    if (reaches) expect(inches(found.far)[0]).toEqual([132, -112.5])
  })

  test.each([
    // Its middle is 21" from a's right corner; the first door begins at 48".
    ['b begins there', `27"`, true],
    ['half an inch past its middle', `26 1/2"`, true],
    ['an inch past it', `26"`, false],
  ])('at the other end: %s', (_, beyond, reaches) => {
    const { doorways } = oneSided(
      `4' from right`,
      `${beyond} from left`,
      `8'`,
      `9' from left, in south, to b`,
    )
    expect(doorways.find(({ label }) => label === 'second')!.reaches).toBe(reaches)
  })

  test('is not judged while a room is surely misread', () => {
    const { messages } = oneSided(
      `1' from right`,
      `1' from left`,
      `93"`,
      SECOND,
      `12', 9', 12', 8'`,
    )
    expect(messages.map(({ code }) => code)).toEqual(['closing-error'])
  })
})

describe('a doorway to a room that it alone could place', () => {
  const hall = (...to: readonly string[]) =>
    box(
      'hall',
      PLAIN,
      ...to.map((name, i) => `door 30", ${1 + 4 * i}' from left, in south, to ${name}`),
    )
  const asked = (text: string) =>
    surveyOf(text)
      .messages.filter(({ code }) => code === 'place-beyond-not-known')
      .map(({ text }) => text.split(' is not known')[0])

  test('is asked for once for each room', () => {
    const [bath, den] = [box('bath', PLAIN), box('den', PLAIN)]
    expect(asked(hall('bath', 'bath') + bath)).toEqual(['Where this door stands in bath'])
    expect(asked(hall('bath', 'den') + bath + den)).toEqual([
      'Where this door stands in bath',
      'Where this door stands in den',
    ])
    const twoHalls = hall('bath') + hall('bath').replace('room hall', 'room porch') + bath
    expect(asked(twoHalls)).toHaveLength(2)
  })

  const unplaced = (to?: string): Opening => ({
    ...door(0, `30"`, `1' from left`, to === undefined ? {} : { to }),
    place: null,
  })
  test.each([
    ['nothing', [], true],
    ['an opening to it without a place', [unplaced('hall')], false],
    ['one to nobody knows where', [unplaced('pantry')], false],
    ['one of which nothing is said', [unplaced()], true],
    ['one to the outside', [unplaced('outside')], true],
    ['one to another room', [unplaced('den')], true],
    ['a placed one to another room', [door(0, `30"`, `1' from left`, { to: 'den' })], true],
  ])('unless the room beyond asks already: it has %s', (_, openings, expected) => {
    const walls = four(`12'`, `9'`, `12'`, `9'`)
    const { messages } = survey(
      job([
        room('hall', walls, { openings: [door(2, `30"`, `1' from left`, { to: 'bath' })] }),
        room('bath', walls, { openings }),
        room('den', walls),
      ]),
    )
    const inBath = messages.filter(({ text }) => text.includes('stands in bath'))
    expect(inBath).toHaveLength(expected ? 1 : 0)
  })
})
