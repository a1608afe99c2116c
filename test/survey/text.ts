import type { Message } from '../../server/src/facts/message.ts'
import { bind } from '../../server/src/job/bind.ts'
import type { Job } from '../../server/src/job/job.ts'
import { parse } from '../../server/src/language/parse.ts'
import type { Survey } from '../../server/src/survey/survey.ts'
import { survey } from '../../server/src/survey/survey-job.ts'

const HEAD = `floorscribe 1
job test
units feet-inches
tape 1/16" + 1/32" per 10'
walls 4 1/2" thick
`

/** A job of rooms, with the usual head; its own lines may say otherwise. */
export function jobOf(rooms: string, head = HEAD): { job: Job; messages: readonly Message[] } {
  const tree = parse('job.floor', `${head}${rooms}`)
  const { job, messages } = bind([tree], 'job.floor')
  return { job, messages: [...tree.messages, ...messages] }
}

export function surveyOf(rooms: string, head = HEAD): Survey {
  return survey(jobOf(rooms, head).job)
}

/** A room of four walls read clockwise from the north one, and further lines. */
export function box(name: string, walls: string, ...lines: string[]): string {
  const [north, east, south, west] = walls.split(', ')
  const said = [`north ${north}`, `east ${east}`, `south ${south}`, `west ${west}`]
  return `room ${name}\n${said.map((line) => `  ${line}\n`).join('')}${lines.map((line) => `  ${line}\n`).join('')}`
}

/** A ring in inches, to a thousandth. */
export const inches = (points: readonly { readonly x: number; readonly y: number }[]) =>
  points.map(({ x, y }) => [toInches(x), toInches(y)])

export const toInches = (nm: number) => Math.round(nm / 25_400) / 1000 + 0
