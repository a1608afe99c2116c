import { writeJson } from '../report/json/write.ts'
import { visible } from '../report/visible.ts'
import type { Checked, Fault, Report } from '../verify/report.ts'
import { verify } from '../verify/verify.ts'
import type { CommandPage, FileOptions } from './command.ts'
import { counted } from './counted.ts'
import { each } from './each.ts'
import { EXIT, type ExitCode } from './exit.ts'
import { type JsonRead, readJson } from './json-file.ts'
import { type Format, filesMisuse, formatOption, oneFileMisuse } from './options.ts'
import type { Shell } from './shell.ts'

interface VerifyOptions extends FileOptions {
  readonly format: Format
}

export const VERIFY: CommandPage<VerifyOptions> = {
  name: 'verify',
  summary: 'prove a published layout again, from its JSON alone',
  help: `
A file is what "floorscribe layout --format json" wrote. The proof shares no
code with the planner: the pieces tile the floor exactly, no plank gives more
than itself, and every broken rule is told.

Examples:
  floorscribe layout --format json heron-cottage.floor > heron.json
  floorscribe verify heron.json
  floorscribe layout --format json heron.floor | floorscribe verify -`,
  options: [formatOption()],
  misuse: (files, options) => filesMisuse(files, options.name) ?? oneFileMisuse(files, options),
  run: (files, options, shell) => each(files, (file) => verifyOne(file, options, shell)),
}

async function verifyOne(
  file: string,
  { name, format }: VerifyOptions,
  shell: Shell,
): Promise<ExitCode> {
  const read = await readJson(file, name, shell)
  if (read === null) return EXIT.errors
  const report = verify(read.value)
  shell.out(format === 'json' ? proofJson(report) : proofText(report, read, shell))
  return report.sound ? EXIT.sound : EXIT.errors
}

function proofJson(report: Report): string {
  return writeJson({ format: 'floorscribe proof', version: 1, ...report })
}

function proofText(report: Report, { path }: JsonRead, { outColours }: Shell): string {
  const { red, green } = outColours
  const file = visible(path)
  const faults = report.faults.map(
    (fault) => `${file}: ${red(`fault ${fault.code}:`)} ${faultText(fault)}\n`,
  )
  const checked = checkedText(report.checked)
  const result = report.sound
    ? `${green('proved')}: ${checked}; ${rulesText(report.breaches.length)}`
    : `${red('not proved')}: ${counted(report.faults.length, 'fault')} in ${checked}`
  return `${faults.join('')}${file}: ${result}\n`
}

function faultText({ floor, text }: Fault): string {
  return visible(floor === '' ? text : `floor ${floor}: ${text}`)
}

function checkedText({ floors, courses, pieces, joints, planks }: Checked): string {
  const parts = [
    counted(floors, 'floor'),
    counted(courses, 'course'),
    counted(pieces, 'piece'),
    counted(joints, 'joint'),
    counted(planks, 'plank'),
  ]
  return parts.join(', ')
}

function rulesText(breaches: number): string {
  if (breaches === 0) return "the product's rules are kept everywhere"
  return `the product's rules are broken, and said to be, at ${counted(breaches, 'place')}`
}
