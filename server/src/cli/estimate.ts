import { Option } from 'commander'
import { estimateJson } from '../report/json/estimate.ts'
import { estimateText } from '../report/text/estimate.ts'
import type { CommandPage } from './command.ts'
import { each } from './each.ts'
import type { ExitCode } from './exit.ts'
import { explainJob } from './explain.ts'
import { answerJob, type JobOptions } from './job-answer.ts'
import { drawingOption, filesMisuse, formatOption, oneFileMisuse } from './options.ts'
import type { Shell } from './shell.ts'

interface EstimateOptions extends JobOptions {
  readonly explain?: string
}

export const ESTIMATE: CommandPage<EstimateOptions> = {
  name: 'estimate',
  summary: 'count the planks and boxes of a job, and what is left of them',
  help: `
The estimate goes to standard output, messages to standard error. A total that
is not final says so, and why. --explain answers with the inputs, formula, rule
and source of a quantity, down to the readings.

Examples:
  floorscribe estimate heron-cottage.floor
  floorscribe estimate --drawing heron.svg heron-cottage.floor
  floorscribe estimate --explain boxes heron-cottage.floor`,
  options: [
    formatOption(),
    drawingOption(),
    new Option('--explain <quantity>', 'say why a quantity is what it is').conflicts([
      'format',
      'drawing',
    ]),
  ],
  misuse: (files, options) => filesMisuse(files, options.name) ?? oneFileMisuse(files, options),
  run: (files, options, shell) => each(files, (file) => estimateOne(file, options, shell)),
}

function estimateOne(file: string, options: EstimateOptions, shell: Shell): Promise<ExitCode> {
  return options.explain === undefined
    ? answerJob(file, options, shell, { text: estimateText, json: estimateJson })
    : explainJob(file, { name: options.name, key: options.explain }, shell)
}
