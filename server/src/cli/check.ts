import { checkJson } from '../report/json/check.ts'
import { visible } from '../report/visible.ts'
import type { CommandPage, FileOptions } from './command.ts'
import { each } from './each.ts'
import { EXIT, type ExitCode } from './exit.ts'
import { readJob } from './job-file.ts'
import { messageLines } from './message-lines.ts'
import { type Format, filesMisuse, formatOption, oneFileMisuse } from './options.ts'
import type { Shell } from './shell.ts'
import { exitOf, verdict } from './verdict.ts'

interface CheckOptions extends FileOptions {
  readonly format: Format
}

export const CHECK: CommandPage<CheckOptions> = {
  name: 'check',
  summary: 'read a job and say what is wrong, doubtful or still to come',
  help: `
Each message is one line, FILE:LINE:COLUMN: WEIGHT CODE: TEXT, where WEIGHT is
error, warning, incomplete or note. An "accept" line in the job settles a
warning; settled ones are counted, not shown.

Examples:
  floorscribe check heron-cottage.floor
  floorscribe check jobs/*.floor
  git show HEAD:jobs/heron.floor | floorscribe check - --name jobs/heron.floor`,
  options: [formatOption()],
  misuse: (files, options) => filesMisuse(files, options.name) ?? oneFileMisuse(files, options),
  run: (files, options, shell) => each(files, (file) => checkOne(file, options, shell)),
}

async function checkOne(
  file: string,
  { name, format }: CheckOptions,
  shell: Shell,
): Promise<ExitCode> {
  const job = await readJob(file, name, shell)
  if (job === null) return EXIT.errors
  if (format === 'json') shell.out(checkJson(job.compiled))
  else {
    const open = job.compiled.messages.filter((message) => !message.accepted)
    for (const message of open) shell.out(messageLines(message, job, shell.outColours))
    shell.out(`${visible(job.pathOf(job.compiled.root))}: ${verdict(job.compiled)}\n`)
  }
  return exitOf(job.compiled)
}
