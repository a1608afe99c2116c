import { expect, test } from 'vitest'
import { survey } from '../../server/src/survey/survey-job.ts'
import { job, room, type WallSaid } from './build.ts'
import { box, jobOf } from './text.ts'

/** One room with a tooth for every four walls, and one reading a foot long. */
const teeth = (count: number): WallSaid[] => {
  const walls: WallSaid[] = []
  for (let i = 0; i < count; i++) {
    walls.push(['north', `2'`], ['east', `5'`], ['north', `2'`], ['west', `5'`])
  }
  return [
    ...walls,
    ['north', `2'`],
    ['east', `20'`],
    ['south', `${4 * count + 2}'`],
    ['west', `21'`],
  ]
}

/** Rooms in a row, each tied to the next by a door. */
const row = (count: number) => {
  const rooms: string[] = []
  for (let i = 0; i < count; i++) {
    const next = i + 1 < count ? [`door 30", 1' from left, in east, to r${i + 1}`] : []
    const back = i > 0 ? [`door 30", 1' from right, in west, to r${i - 1}`] : []
    rooms.push(box(`r${i}`, `12', 9', 12', 9'`, ...next, ...back))
  }
  return jobOf(rooms.join('')).job
}

test('a comb of ten thousand walls is closed, and its slip is found', () => {
  const found = survey(job([room('comb', teeth(2500))]))
  expect(found.rooms[0]!.status).toBe('measured')
  expect(found.messages.map(({ code }) => code)).toEqual(['closing-error'])
})

test('a thousand rooms in a row are placed as one network', () => {
  const found = survey(row(1000))
  expect(found.messages).toEqual([])
  expect(new Set(found.rooms.map(({ network }) => network)).size).toBe(1)
})
