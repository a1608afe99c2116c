import { layoutJson } from '../report/json/layout.ts'
import { layoutText } from '../report/text/layout.ts'
import type { CommandPage } from './command.ts'
import { each } from './each.ts'
import { answerJob, type JobOptions } from './job-answer.ts'
import { drawingOption, filesMisuse, formatOption, oneFileMisuse } from './options.ts'

export const LAYOUT: CommandPage<JobOptions> = {
  name: 'layout',
  summary: 'set out the courses and list the cuts, course by course',
  help: `
The layout goes to standard output, messages to standard error. --format json
writes the published layout, which "floorscribe verify" proves again.

Examples:
  floorscribe layout heron-cottage.floor
  floorscribe layout --drawing heron.svg heron-cottage.floor
  floorscribe layout --format json heron-cottage.floor > heron.json`,
  options: [formatOption(), drawingOption()],
  misuse: (files, options) => filesMisuse(files, options.name) ?? oneFileMisuse(files, options),
  run: (files, options, shell) =>
    each(files, (file) => answerJob(file, options, shell, { text: layoutText, json: layoutJson })),
}
