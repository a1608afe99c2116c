import { describe, expect, test } from 'vitest'
import { compile } from '../../server/src/compile.ts'
import { newJob } from '../../server/src/features/new-job.ts'
import { roomSkeleton } from '../../server/src/features/room-skeleton.ts'
import { type Insert, plainText } from '../../server/src/features/writing/insert.ts'
import { format } from '../../server/src/language/format.ts'
import { parse } from '../../server/src/language/parse.ts'
import type { UnitStyle } from '../../server/src/units/length.ts'

function messagesOf(text: string) {
  const compiled = compile(new Map([['job.floor', text]]), 'job.floor')
  if ('missing' in compiled) throw new Error('includes')
  return compiled.messages
}

describe('a room to be read', () => {
  test('four walls: a tab stop for the name and for each reading', () => {
    const insert = roomSkeleton(4)!
    expect(plainText(insert)).toBe(
      'room new room\n  north       ?\n  east        ?\n  south       ?\n  west        ?\n',
    )
    expect(insert.filter(({ kind }) => kind === 'stop').map(({ text }) => text)).toEqual([
      'new room',
      '?',
      '?',
      '?',
      '?',
    ])
  })

  test('six walls make an L', () => {
    const words = plainText(roomSkeleton(6)!).match(/\n {2}([a-z-]+)/g)
    expect(words?.map((word) => word.trim())).toEqual([
      'north',
      'east',
      'south',
      'east',
      'south',
      'west',
    ])
  })

  test.each(Array.from({ length: 38 }, (_, i) => i + 3))(
    '%i walls come round, nothing in red',
    (walls) => {
      const text = plainText(roomSkeleton(walls)!)
      const said = messagesOf(`job Try\n${text}`)
      expect(said.filter(({ weight }) => weight === 'error' || weight === 'warning')).toEqual([])
      expect(said.map(({ code }) => code)).not.toContain('walls-do-not-come-round')
      expect(text.match(/\?/g)).toHaveLength(walls)
      expect(format(parse('job.floor', text))).toBe(text)
    },
  )

  test.each([2, 0, -1, 4.5, 41])('no room of %d walls', (walls) => {
    expect(roomSkeleton(walls)).toBeNull()
  })
})

const STYLES: readonly UnitStyle[] = ['feet-inches', 'inches', 'mm', 'cm', 'm']

test.each(STYLES)(
  'a new job in %s lacks only what is to be read, in the canonical form',
  (units) => {
    const text = plainText(newJob('Back bedroom', units))
    const said = messagesOf(text)
    expect(said.filter(({ weight }) => weight === 'error' || weight === 'warning')).toEqual([])
    expect(said.some(({ weight }) => weight === 'incomplete')).toBe(true)
    expect(format(parse('job.floor', text))).toBe(text)
  },
)

test.each(STYLES)('a new job in %s counts once its four walls are read', (units) => {
  const readings = ["12'", "10'", "12'", "10'"]
  const text = plainText(newJob('Back bedroom', units)).replace(/\?/g, () => readings.shift()!)
  expect(messagesOf(text).filter(({ weight }) => weight !== 'note')).toEqual([])
})

test('the first stop of a new job is its title, and what comes next where one is given', () => {
  const firstStop = (insert: Insert) => insert.find(({ kind }) => kind === 'stop')?.text
  expect(firstStop(newJob())).toBe('New job')
  const given = newJob('Back bedroom')
  expect(firstStop(given)).toBe('4 1/2"')
  expect(plainText(given)).toContain('\njob Back bedroom\n')
})
