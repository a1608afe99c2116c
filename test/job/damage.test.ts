import { describe, expect, it } from 'vitest'
import type { Job } from '../../server/src/job/job.ts'
import { bound, HEAD, said, WALLS } from './bound.ts'

const TEXT = `job x
${HEAD}product larch
  plank       7" x 48"
  box         9 planks
  joints      8" stagger, 10" shortest end
  gap         1/4"
room hall
${WALLS}    door      30", 14" from left, to den
  diagonal    16' 3 7/8", from north-west to south-east
room den
${WALLS}    door      30", 14" from left, to hall
    closet    4' 0", 5' 0" from left, 2' 0" deep
  column      8" round, 4' 0" from west, 3' 2" from north
floor one
  rooms       hall, den, den closet
  lay         larch, running east-west
  start       along north of hall
  edge        north of den, tub
`

/** All but spans, which any edit above moves. */
function facts(value: unknown): unknown {
  return JSON.parse(
    JSON.stringify(value, (key, part) =>
      key === 'span' ? undefined : typeof part === 'bigint' ? `${part}` : part,
    ),
  )
}
const roomOf = (job: Job, name: string) => facts(job.rooms.find((room) => room.name.text === name))

describe('damage costs its own line', () => {
  const lines = TEXT.split('\n')
  const den = lines.indexOf('room den')
  const end = lines.indexOf('floor one')
  const whole = bound(TEXT).job

  const damages: readonly (readonly [string, (line: string) => string])[] = [
    ['a letter changed', (line) => line.replace(/[a-z]/, 'q')],
    ['a mark dropped', (line) => line.replace(/["']/, '')],
    ['the first word dropped', (line) => line.replace(/\S+\s*/, '')],
    ['half typed', (line) => line.slice(0, line.length / 2)],
    ['a comma dropped', (line) => line.replace(',', '')],
    ['the line dropped', () => ''],
  ]

  it.each(damages)('%s in den leaves hall as it was, to the digit', (_, damage) => {
    // Without its first line a room's walls are those of the room above: nobody could tell.
    for (let at = damage(lines[den]!) === '' ? den + 1 : den; at < end; at++) {
      const damaged = lines.map((line, i) => (i === at ? damage(line) : line)).join('\n')
      expect(roomOf(bound(damaged).job, 'hall')).toEqual(roomOf(whole, 'hall'))
    }
  })

  it.each(damages)('%s gives at most 3 messages, one of them within a line of it', (_, damage) => {
    for (const [at, line] of lines.entries()) {
      const damaged = damage(line)
      const dropsBlock = damaged === '' && !line.startsWith(' ')
      if (damaged === line || dropsBlock) continue
      const text = lines.map((old, i) => (i === at ? damaged : old)).join('\n')
      const { trees, messages } = bound(text)
      const heavy = [...trees.flatMap((tree) => tree.messages), ...messages]
        .filter(({ weight }) => weight !== 'note')
        .map((one) => ({ line: text.slice(0, one.span.start).split('\n').length - 1, ...one }))
      const all = `${line} → ${damaged}\n${heavy.map((one) => one.text).join('\n')}`
      expect(heavy.length, all).toBeLessThan(4)
      const near = heavy.some((one) => Math.abs(one.line - at) <= 1)
      expect(heavy.length === 0 || damaged === '' || near, all).toBe(true)
    }
  })

  it('every beginning of a job binds, and what is not typed yet is never wrong', () => {
    for (let end = 0; end < TEXT.length; end++) {
      if (TEXT[end] !== '\n' && end % 5 !== 0) continue
      const { messages } = bound(TEXT.slice(0, end))
      const errors = messages.filter(({ weight }) => weight === 'error').map(({ code }) => code)
      // A room that is referred to may have its line still to come; that is asked for all the same.
      const wrong = errors.filter((code) => code !== 'name-unknown')
      if (TEXT[end] === '\n') expect(wrong, TEXT.slice(0, end)).toEqual([])
      for (const message of messages) {
        expect(message.span.end).toBeLessThanOrEqual(end)
        expect(message.text).not.toMatch(/undefined|null|NaN|\[object/)
      }
    }
  })
})

describe('names on lines that cannot be read', () => {
  it('are not missed a second time', () => {
    const text = TEXT.replace('room den', 'roomm den').replace('product larch', 'prodct larch')
    expect(said(text)).toEqual([])
  })

  it('a room with such a line has no figures, and says it', () => {
    const text = TEXT.replace('south       12', 'soth       12')
    const { job } = bound(text)
    expect(job.rooms.map(({ broken }) => broken)).toEqual([true, false])
    expect(job.rooms[0]!.walls.map(({ label }) => label)).toEqual(['north', 'east', 'west'])
  })
})

it('the order of blocks makes no difference but to the order of things', () => {
  const blocks = TEXT.split(/\n(?=\S)/)
  const turned = [...blocks].reverse().join('\n')
  const [a, b] = [bound(TEXT).job, bound(turned).job]
  for (const name of ['hall', 'den']) expect(roomOf(a, name)).toEqual(roomOf(b, name))
  expect(facts(a.floors)).toEqual(facts(b.floors))
  expect(facts(a.products)).toEqual(facts(b.products))
})
