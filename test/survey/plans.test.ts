import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import type { Point } from '../../server/src/geometry/point.ts'
import { bind } from '../../server/src/job/bind.ts'
import { parse } from '../../server/src/language/parse.ts'
import type { Doorway, Loop, Survey, SurveyedRoom } from '../../server/src/survey/survey.ts'
import { survey } from '../../server/src/survey/survey-job.ts'
import { expectGolden } from '../golden.ts'
import { GALLERY } from './gallery.ts'

const GOLDEN = new URL('plans.golden.txt', import.meta.url).pathname
const SAMPLES = new URL('../language/samples/', import.meta.url)
const NAMES = ['bedroom', 'each-kind', 'kitchen', 'living-room', 'old-parlour', 'upper-hall']

function sampled(name: string): Survey {
  const trees = [name, 'products', 'prices'].map((file) =>
    parse(`${file}.floor`, readFileSync(new URL(`${file}.floor`, SAMPLES), 'utf8')),
  )
  return survey(bind(trees, `${name}.floor`).job)
}

/** Inches to the ten-thousandth, with a blank for what is none. */
const inch = (nm: number): string => `${Math.round(nm / 2540) / 10_000 + 0}`
const at = ({ x, y }: Point): string => `(${inch(x)}, ${inch(y)})`
/** Rings of many corners are told by their count, their first and their middle one. */
const ring = (points: readonly Point[]): string =>
  points.length < 20
    ? points.map(at).join(' ')
    : `${points.length} corners, ${at(points[0]!)} … ${at(points[points.length >> 1]!)} …`

function roomOf({ room, status, network, ...found }: SurveyedRoom): string {
  const { corners, outline, edges, closing, checks, closets, obstacles } = found
  const lines = [`room ${room.name.text}: ${status}, network ${network}`]
  if (corners.length > 0) {
    lines.push(`corners ${ring(corners)}`, `outline ${ring(outline)}`)
    lines.push(
      `edges ${edges.map(({ wall, recess }) => `${wall}${recess === null ? '' : `/${recess}`}`).join(' ')}`,
    )
  }
  if (closing !== null) {
    const { east, north, length, perimeter, ratio, allowedEast, allowedNorth, within, rule } =
      closing
    lines.push(
      `closing ${inch(east)} east, ${inch(north)} north, ${inch(length)} of ${inch(perimeter)}, 1:${ratio}, allowed ${inch(allowedEast)} and ${inch(allowedNorth)}, ${within ? 'within' : 'beyond'}, ${rule}`,
    )
  }
  for (const { check, computed, difference, allowed, fixes } of checks) {
    lines.push(
      `${check.kind} ${inch(computed)}, off ${inch(difference)}, allowed ${inch(allowed)}${fixes ? ', fixes' : ''}`,
    )
  }
  for (const { name, outline: floor, throat } of closets) {
    lines.push(`${name} ${ring(floor)}; throat ${ring(throat)}`)
  }
  for (const { kind, label, ring: points, gap } of obstacles) {
    lines.push(`${kind} ${label} ${ring(points)}, gap ${gap === null ? '–' : inch(gap)}`)
  }
  return lines.join('\n  ')
}

function doorwayOf(doorway: Doorway): string {
  const { kind, label, room, to, width, thickness, near, far, jambs, reaches } = doorway
  return `${kind} ${label}, ${room} to ${to}: ${inch(width)} by ${inch(thickness)}, ${near.map(at).join(' ')} | ${far.map(at).join(' ')}${jambs ? ', jambs' : ''}${reaches ? '' : ', does not reach'}`
}

function loopOf({ doorway, rooms, east, north, allowedEast, allowedNorth, within }: Loop): string {
  return `loop at ${doorway}, ${rooms.join(' – ')}: ${inch(east)} east, ${inch(north)} north, allowed ${inch(allowedEast)} and ${inch(allowedNorth)}, ${within ? 'within' : 'beyond'}`
}

function page({ rooms, doorways, loops }: Survey): string {
  return [...rooms.map(roomOf), ...doorways.map(doorwayOf), ...loops.map(loopOf)].join('\n')
}

test('every plan in figures, in inches', () => {
  const samples = NAMES.map((name) => `## ${name}\n\n${page(sampled(name))}\n`)
  const shown = GALLERY.map(
    ({ title, text, survey }) => `## ${title}\n\n${text}\n${page(survey())}\n`,
  )
  expectGolden(GOLDEN, [...samples, ...shown].join('\n'))
})

test('no figure is −0', () => {
  const shown = (_: string, value: unknown) =>
    Object.is(value, -0) ? 'minus nothing' : typeof value === 'bigint' ? `${value}` : value
  for (const survey of [...NAMES.map(sampled), ...GALLERY.map((one) => one.survey())]) {
    expect(JSON.stringify(survey, shown)).not.toContain('minus nothing')
  }
})
