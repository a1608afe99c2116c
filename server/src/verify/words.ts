import { inWords } from './breaches/compare.ts'
import type { Fault, Report } from './report.ts'

/** So many faults are told one by one; what follows from the same slip is then only counted. */
const TOLD = 20

/** A report as a person reads it: the verdict, what was looked at, the faults, the breaches. */
export function reportInWords({ sound, faults, breaches, checked }: Report): string {
  const { floors, courses, pieces, joints, planks } = checked
  const lines = [
    sound
      ? 'Sound: the layout was proven again from its figures.'
      : `Not sound: ${count(faults.length, 'fault')}.`,
    `Looked at ${count(floors, 'floor')}, ${count(courses, 'course')}, ${count(pieces, 'piece')}, ${count(joints, 'joint')} and ${count(planks, 'plank')}.`,
    ...faults.slice(0, TOLD).map(faultInWords),
    ...(faults.length > TOLD ? [`And ${count(faults.length - TOLD, 'further fault')}.`] : []),
    ...breaches.map((breach) => `Breach${on(breach.floor)}: ${inWords(breach)}.`),
  ]
  return `${lines.join('\n')}\n`
}

function faultInWords({ code, text, floor }: Fault): string {
  return `Fault${on(floor)}: ${text} [${code}]`
}

function on(floor: string): string {
  return floor === '' ? '' : ` on ${floor}`
}

function count(number: number, what: string): string {
  return number === 1 ? `1 ${what}` : `${number} ${what}s`
}
