import { message } from '../facts/message.ts'
import type { Block, Measure } from '../language/tree.ts'
import type { Binding } from './binding.ts'
import type { BaseSaid } from './job.ts'
import { allLines } from './lines.ts'
import { said } from './sentence.ts'
import type { Tape } from './worth.ts'

/** How the readings of a room were taken. */
export interface HowRead {
  readonly block: Block
  /** The room's name as people write it. */
  readonly room: string
  readonly tape: Tape
  readonly base: BaseSaid | null
}

/** Says what is assumed, missing or impossible in how a measured room was read. */
export function sayHowRead(read: HowRead, binding: Binding): void {
  const measures = allLines(read.block.under).flatMap((line) =>
    line.phrases.flatMap((phrase) => phrase.measures),
  )
  for (const measure of measures) {
    if (measure.within !== null && measure.within <= 0) binding.say(worthless(measure, binding))
  }
  sayWorthTaken(read, measures, binding)
  sayPlaneWanted(read, binding)
}

function worthless(measure: Measure, binding: Binding) {
  const text =
    'No reading is exact: what stands after "within" is one standard deviation and more than nothing, such as ' +
    binding.samples('within 1/16".')
  return message('error', 'reading-worth-nothing', measure.span, text)
}

/** Said once for a job, where the first room needs it. */
function sayWorthTaken(read: HowRead, measures: readonly Measure[], binding: Binding): void {
  const { worth, about, says } = read.tape
  const isOpen = measures.some((measure) => measure.figure.kind === 'length')
  if (!says.worth && isOpen) {
    const text = `No tape line says what a reading is worth, so ${binding.length(worth.fixed)} and a ten-thousandth of the length are taken (common practice).`
    const { span } = read.block.line
    binding.sayOnce('tape', span, () => message('note', 'tape-worth-taken', span, text))
  }
  const rough = measures.find((measure) => measure.about && measure.within === null)
  if (!says.about && rough !== undefined) {
    const text = `No tape line says what "about" is worth, so ${binding.length(about.fixed)} is taken (common practice: ${binding.samples('1/8" to 1/4"')}).`
    const { span } = rough
    binding.sayOnce('about', span, () => message('note', 'about-worth-taken', span, text))
  }
}

/** A base that comes off moves its wall by its thickness: a bias that no closure finds. */
function sayPlaneWanted({ block, room, tape, base }: HowRead, binding: Binding): void {
  const comesOff = base?.fate === 'off and back' || base?.fate === 'new'
  if (!comesOff || tape.says.plane) return
  const thick = base.thickness === null ? 'its thickness' : binding.length(base.thickness)
  const text =
    `The base in ${said(room)} comes off, and that moves a wall by ${thick} if the tape touched the base. ` +
    'Say what it touched: "touching base" or "touching wall" on a tape line.'
  binding.say(message('warning', 'touched-not-said', block.line.span, text))
}
