import type { Check } from '../../job/job.ts'
import { cornerWords, wallWords } from '../../survey/labels.ts'
import type { CheckResult, Loop, SurveyedRoom } from '../../survey/survey.ts'
import type { UnitStyle } from '../../units/length.ts'
import { printLength } from '../../units/print.ts'
import { areaText } from '../area-text.ts'
import type { Compiled } from '../compiled.ts'
import { visible } from '../visible.ts'
import { table } from './table.ts'
import { wrap } from './wrap.ts'

/** The survey check for people: how each room closes against what its tape allows, and its checks. */
export function surveyLines({ job, survey }: Compiled): readonly string[] {
  const measured = survey.rooms.filter((room) => room.status !== 'not measured')
  if (measured.length === 0) return ['Survey check', '  no room is measured yet']
  const head = ['room', 'walls', 'misses by (east, north)', 'allowed', '1 : n', 'area', 'closed by']
  const rows = measured.map((room) => roomRow(room, job.units))
  return [
    'Survey check',
    ...table([head, ...rows], ['left', 'right', 'left', 'left', 'right', 'right', 'left']),
    ...checkLines(measured, job.units),
    ...survey.loops.flatMap((loop) => loopLines(loop, job.units)),
  ]
}

function roomRow(room: SurveyedRoom, units: UnitStyle): readonly string[] {
  const name = room.room.name.text
  const walls = `${room.room.walls.length}`
  const { closing } = room
  if (closing === null) return [name, walls, room.status, '', '', '', '']
  const pair = (east: number, north: number) =>
    `${printLength(east, units)}, ${printLength(north, units)}`
  return [
    name,
    walls,
    closing.length === 0 ? 'closes exactly' : pair(closing.east, closing.north),
    `${pair(closing.allowedEast, closing.allowedNorth)}${closing.within ? '' : '  exceeded'}`,
    closing.ratio === null ? '' : `${closing.ratio}`,
    room.status === 'measured' ? areaText([room.outline], units) : room.status,
    closing.rule === 'distances' ? 'distances' : `${closing.rule} rule`,
  ]
}

function checkLines(rooms: readonly SurveyedRoom[], units: UnitStyle): readonly string[] {
  const rows = rooms.flatMap((room) =>
    room.checks.map((result) => [
      room.room.name.text,
      checkName(result.check, room),
      'reading' in result.check ? result.check.reading.text : '',
      printLength(result.computed, units),
      result.fixes ? 'fixes the shape' : verdictOf(result, units),
    ]),
  )
  if (rows.length === 0) return []
  const head = ['room', 'check', 'read', 'by the walls', 'off by']
  return ['', ...table([head, ...rows], ['left', 'left', 'left', 'left', 'left'])]
}

function verdictOf({ difference, allowed }: CheckResult, units: UnitStyle): string {
  const off = printLength(difference, units)
  const limit = printLength(allowed, units)
  return Math.abs(difference) <= allowed ? `${off} of ${limit}` : `${off}, allowed ${limit}`
}

function checkName(check: Check, { room }: SurveyedRoom): string {
  const wall = (index: number) => wallWords(room, index)
  const corner = (index: number) => cornerWords(room, index)
  switch (check.kind) {
    case 'diagonal':
      return `diagonal, ${corner(check.from)} to ${corner(check.to)}`
    case 'across':
      return `across, ${wall(check.from)} to ${wall(check.to)}`
    case 'corner tie':
      return `tie at ${corner(check.corner)}`
    case 'room tie':
      return `tie, ${wall(check.from)} to ${check.room.text}`
    case 'square':
      return `square, ${corner(check.corner)}`
  }
}

function loopLines(loop: Loop, units: UnitStyle): readonly string[] {
  return wrap(visible(loopText(loop, units)), 96, { first: '  ', hang: '  ' })
}

/** How a loop of rooms comes round, against what its readings allow. */
export function loopText(loop: Loop, units: UnitStyle): string {
  const off = `${printLength(loop.east, units)} east, ${printLength(loop.north, units)} north`
  const allowed = `${printLength(loop.allowedEast, units)}, ${printLength(loop.allowedNorth, units)}`
  const verdict = loop.within ? 'allowed' : 'more than the allowed'
  return `The loop ${loop.rooms.join(', ')} comes round at ${loop.doorway} within ${off} (${verdict} ${allowed}).`
}
