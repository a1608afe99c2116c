import type { Compiled } from '../compile.ts'
import type { Message } from '../facts/message.ts'
import { counted } from './counted.ts'
import { EXIT, type ExitCode } from './exit.ts'

/** The exit code of a compiled job. */
export function exitOf({ exit }: Compiled): ExitCode {
  return EXIT[exit]
}

/**
 * "sound and complete, 2 notes", "1 error, 3 things still to come". A file that no message calls
 * unfinished may still be none that gives totals, such as a list of products: then why is said.
 */
export function verdict(compiled: Compiled): string {
  const open = compiled.messages.filter((message) => !message.accepted)
  const settled = compiled.messages.length - open.length
  const weighing = (weight: Message['weight']) => open.filter((one) => one.weight === weight).length
  const counts = [
    { n: weighing('error'), words: (n: number) => counted(n, 'error') },
    { n: weighing('warning'), words: (n: number) => counted(n, 'warning') },
    { n: weighing('incomplete'), words: (n: number) => `${counted(n, 'thing')} still to come` },
    { n: weighing('note'), words: (n: number) => counted(n, 'note') },
    { n: settled, words: (n: number) => counted(n, 'accepted warning') },
  ]
  const said = counts.filter(({ n }) => n > 0).map(({ n, words }) => words(n))
  if (compiled.exit === 'sound') return ['sound and complete', ...said].join(', ')
  if (compiled.exit === 'errors' || weighing('incomplete') > 0) return said.join(', ')
  return `${['incomplete', ...said].join(', ')}. ${compiled.takeoff.incompleteBecause.join(' ')}`
}
