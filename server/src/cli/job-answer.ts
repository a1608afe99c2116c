import type { Compiled } from '../compile.ts'
import { visible } from '../report/visible.ts'
import type { FileOptions } from './command.ts'
import { drawingOf } from './drawing.ts'
import { EXIT, type ExitCode, worst } from './exit.ts'
import { readJob } from './job-file.ts'
import { messageLines } from './message-lines.ts'
import type { Format } from './options.ts'
import type { Shell } from './shell.ts'
import { exitOf } from './verdict.ts'
import { writeFile } from './write-file.ts'

/** Options of a command that answers with what a job comes to. */
export interface JobOptions extends FileOptions {
  readonly format: Format
  /** Where to put the plan as well. */
  readonly drawing?: string
}

/** The answer of a command, in either way of writing it. */
export type Answer = Readonly<Record<Format, (compiled: Compiled) => string>>

/** Reads a job, says what stands in its way, draws it if wished, and gives the answer. */
export async function answerJob(
  file: string,
  options: JobOptions,
  shell: Shell,
  answer: Answer,
): Promise<ExitCode> {
  const job = await readJob(file, options.name, shell)
  if (job === null) return EXIT.errors
  const { compiled } = job
  const pressing = compiled.messages.filter((one) => one.weight !== 'note' && !one.accepted)
  for (const message of pressing) shell.err(messageLines(message, job, shell.errColours))
  const drawn = await draw(compiled, options.drawing, shell)
  shell.out(answer[options.format](compiled))
  return worst([exitOf(compiled), drawn])
}

async function draw(compiled: Compiled, path: string | undefined, shell: Shell): Promise<ExitCode> {
  if (path === undefined) return EXIT.sound
  const written = await writeFile(path, drawingOf(compiled), shell)
  if (written === EXIT.sound) shell.err(`floorscribe: the drawing is in ${visible(path)}\n`)
  return written
}
