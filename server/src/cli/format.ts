import { Option } from 'commander'
import { format } from '../language/format.ts'
import { parse } from '../language/parse.ts'
import { visible } from '../report/visible.ts'
import type { CommandPage, FileOptions } from './command.ts'
import { each } from './each.ts'
import { EXIT, type ExitCode } from './exit.ts'
import { filesMisuse } from './options.ts'
import type { Shell } from './shell.ts'
import { readTextFile, STANDARD_INPUT } from './text-file.ts'
import { writeFile } from './write-file.ts'

interface FormatOptions extends FileOptions {
  readonly check?: boolean
}

export const FORMAT: CommandPage<FormatOptions> = {
  name: 'format',
  summary: 'bring blanks and marks into their one written form',
  help: `
Files are rewritten in place, and only if something changes; standard input is
printed. Numbers, notation, names and comments stay as they are.

Examples:
  floorscribe format heron-cottage.floor
  floorscribe format --check jobs/*.floor`,
  options: [new Option('--check', 'change nothing; exit 1 if something would change')],
  misuse: (files, { name }) => filesMisuse(files, name),
  run: (files, options, shell) => each(files, (file) => formatOne(file, options, shell)),
}

async function formatOne(
  file: string,
  { name, check }: FormatOptions,
  shell: Shell,
): Promise<ExitCode> {
  const read = await readTextFile(file, { name }, shell)
  if (read === null) return EXIT.errors
  const formatted = format(parse(read.path, read.text))
  if (check === true) return checked(read.path, formatted === read.text, shell)
  const whole = read.mark ? `\uFEFF${formatted}` : formatted
  if (file !== STANDARD_INPUT)
    return formatted === read.text ? EXIT.sound : writeFile(file, whole, shell)
  shell.out(whole)
  return EXIT.sound
}

function checked(path: string, same: boolean, shell: Shell): ExitCode {
  if (same) return EXIT.sound
  shell.out(`${visible(path)}: not in its written form; "floorscribe format" brings it there.\n`)
  return EXIT.errors
}
