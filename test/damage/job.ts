import { compile } from '../../server/src/compile.ts'
import type { Message } from '../../server/src/facts/message.ts'
import type { Compiled } from '../../server/src/report/compiled.ts'

/** The parts of a job that is sound and complete; tables below change one line of it. */
export const HEAD = `floorscribe 1
job Heron Cottage
units feet-inches
tape 1/16" + 1/32" per 10'
walls 4 1/2" thick
base 1/2" thick, kept
`
export const PRODUCT = `product river larch
  plank       6 3/4" x 47 7/8"
  box         10 planks
  joints      8" stagger, 10" shortest end, 2" narrowest rip
  gap         1/4"
`
export const BEDROOM = `room bedroom
  north       12'
  east        9'
  south       12'
  west        9'
`
export const FLOOR = `floor upstairs
  rooms       bedroom
  lay         river larch, running east-west
  start       along north of bedroom
`
export const JOB = HEAD + PRODUCT + BEDROOM + FLOOR

export const ROOT = 'job.floor'

/** The job with one stretch of it written otherwise. */
export function jobWith(stretch: string, by: string): string {
  if (!JOB.includes(stretch)) throw new Error(`the job has no ${stretch}`)
  return JOB.replace(stretch, by)
}

/** The job with other walls; a line that begins with a dash stands under the wall before it. */
export function bedroomWith(walls: readonly string[]): string {
  const lines = walls.map((line) => (line.startsWith('-') ? `    ${line.slice(1)}` : `  ${line}`))
  return HEAD + PRODUCT + ['room bedroom', ...lines, ''].join('\n') + FLOOR
}

/** Compiles a text, and the files that it includes; one that is not among them is not there. */
export function compiled(text: string, files: Readonly<Record<string, string>> = {}): Compiled {
  const texts = new Map([[ROOT, text], ...Object.entries(files)])
  const first = compile(texts, ROOT)
  if (!('missing' in first)) return first
  const absent = new Map(first.missing.map((name) => [name, `There is no file "${name}".`]))
  const second = compile(texts, ROOT, absent)
  if ('missing' in second) throw new Error(`asked again for ${second.missing.join(', ')}`)
  return second
}

/** Everything that presses in a job, as a terminal shows it: no notes, no accepted warnings. */
export function pressing({ messages }: Compiled): readonly Message[] {
  return messages.filter((one) => one.weight !== 'note' && !one.accepted)
}

/** The number of the line that a message stands in. */
export function lineOf(text: string, message: Message): number {
  return text.slice(0, message.span.start).split(/\r\n|\r|\n/).length
}

/** What is said first and hardest of a text: "error inch-mark-missing: The 4 …"; '' for nothing. */
export function said(text: string, files: Readonly<Record<string, string>> = {}): string {
  const result = compiled(text, files)
  const [first] = inWeight(pressing(result))
  return first === undefined ? '' : `${first.weight} ${first.code}: ${first.text}`
}

const WEIGHTS: readonly Message['weight'][] = ['error', 'warning', 'incomplete', 'note']

function inWeight(messages: readonly Message[]): readonly Message[] {
  return WEIGHTS.flatMap((weight) => messages.filter((one) => one.weight === weight))
}

/** A printed quantity of the job: "9 boxes". */
export function quantity({ takeoff }: Compiled, key: string): string | undefined {
  return [...takeoff.floors, ...takeoff.products]
    .flatMap(({ quantities }) => quantities)
    .find((one) => one.key === key)?.printed
}
