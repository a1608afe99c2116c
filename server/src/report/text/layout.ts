import type { LaidFloor } from '../../layout/lay.ts'
import type { PublishedBreach, PublishedFloor } from '../../layout/published.ts'
import type { UnitStyle } from '../../units/length.ts'
import { printLength } from '../../units/print.ts'
import { breachText } from '../breach-text.ts'
import type { Compiled } from '../compiled.ts'
import { plankStyle } from '../cut-size.ts'
import { settingOut } from '../setting-out.ts'
import { visible } from '../visible.ts'
import { cutRows, HEAD, SIDES } from './cut-list.ts'
import { table } from './table.ts'

/** The cut list for the crew: every course in laying order, piece by piece. */
export function layoutText(compiled: Compiled): string {
  const { job, floors, takeoff } = compiled
  if (floors.length === 0) return 'No floor can be laid yet.\n'
  const lines = floors.flatMap((floor) => floorLines(floor, job.units))
  const unready = takeoff.complete ? [] : ['', 'Not final: something is still to come or wrong.']
  return `${[visible(job.title), ...lines, ...unready].join('\n')}\n`
}

function floorLines({ floor, product, published }: LaidFloor, units: UnitStyle): readonly string[] {
  const { bound, courses, pieces, planks } = published
  const style = plankStyle(units)
  const lengths = product.lengths.map(({ length }) => printLength(length, style)).join(', ')
  return [
    '',
    visible(
      `Floor ${floor.name.text}, ${product.name.text}, ${printLength(product.width, style)} x ${lengths}`,
    ),
    `  ${planks.length} planks, ${pieces.length} pieces, ${courses.length} courses; no layout needs fewer than ${bound.planks} planks`,
    ...settingOut(published, units).map((line) => `  ${line}`),
    ...breachLines(published, units),
    '',
    ...table([HEAD, ...cutRows(published, units)], SIDES),
    '',
    ...READING,
  ]
}

const READING = [
  '  Left and right are as the planks run. Rest: "for 31" is kept for piece 31, "from 12" is what',
  '  piece 12 left of its plank.',
]

export function breachLines(
  { breaches, pieces }: PublishedFloor,
  units: UnitStyle,
): readonly string[] {
  if (breaches.length === 0) return ["  The product's rules are met everywhere."]
  const courseOf = new Map(pieces.map(({ piece, course }) => [piece, course]))
  const where = ({ pieces: concerned }: PublishedBreach): string => {
    const [first] = concerned
    if (first === undefined) return ''
    const numbers = concerned.length === 1 ? `piece ${first}` : `pieces ${concerned.join(' and ')}`
    return `${numbers}, course ${courseOf.get(first) ?? '?'}: `
  }
  return [
    `  Rules of the product that are not met (${breaches.length}):`,
    ...breaches.map((breach) => `    ${where(breach)}${breachText(breach, units)}`),
  ]
}
