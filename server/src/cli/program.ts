import { Command, CommanderError, Option } from 'commander'
import type { Host } from '../host/host.ts'
import { CHECK } from './check.ts'
import { type ColourWish, coloursFor, type Surroundings } from './colours.ts'
import type { CommandPage, FileOptions } from './command.ts'
import { ESTIMATE } from './estimate.ts'
import { EXIT, EXIT_HELP, type ExitCode } from './exit.ts'
import { FORMAT } from './format.ts'
import { LAYOUT } from './layout.ts'
import type { Shell } from './shell.ts'
import { VERIFY } from './verify.ts'
import { VERSION } from './version.ts'

/** The world that a run of the program sees. */
export interface World extends Surroundings {
  readonly host: Host
  readonly out: (text: string) => void
  readonly err: (text: string) => void
  /** Whether a person's terminal shows what is printed. */
  readonly terminal: { readonly out: boolean; readonly err: boolean }
}

/** Runs one command line, without the program's own name, and answers with its exit code. */
export async function run(args: readonly string[], world: World): Promise<ExitCode> {
  let code: ExitCode = EXIT.sound
  const program = programOf(world, (done) => {
    code = done
  })
  try {
    await program.parseAsync(args, { from: 'user' })
    return code
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error
    return error.exitCode === 0 ? EXIT.sound : EXIT.misuse
  }
}

function programOf(world: World, finish: (code: ExitCode) => void): Command {
  const program = new Command('floorscribe')
    .description(
      'Measured rooms in plain text: check the survey, set out the courses, count the boxes.',
    )
    .version(VERSION, '--version', 'print the release')
    .helpOption('--help', 'print this help')
    .helpCommand('help [command]', 'print this help, or that of a command')
    .addHelpText('after', `${EXIT_HELP}\n\n"floorscribe help COMMAND" tells more about a command.`)
    .exitOverride()
    .configureOutput({
      writeOut: world.out,
      writeErr: world.err,
      outputError: (text, write) => write(misuseLine(text)),
    })
  addPage(program, CHECK, world, finish)
  addPage(program, ESTIMATE, world, finish)
  addPage(program, LAYOUT, world, finish)
  addPage(program, FORMAT, world, finish)
  addPage(program, VERIFY, world, finish)
  return program
}

function addPage<Options extends FileOptions>(
  program: Command,
  page: CommandPage<Options>,
  world: World,
  finish: (code: ExitCode) => void,
): void {
  const command = program
    .command(page.name)
    .summary(page.summary)
    .description(`${sentence(page.summary)}.`)
  command.argument('<file...>', 'files to read; - is standard input')
  for (const option of [...page.options, nameOption(), colourOption()]) command.addOption(option)
  command.addHelpText('after', page.help)
  command.action(async (files: string[], options: Options & { colour: ColourWish }) => {
    const misuse = page.misuse?.(files, options) ?? null
    if (misuse !== null) command.error(`error: ${misuse}`)
    finish(await page.run(files, options, shellOf(world, options.colour)))
  })
}

/** One line, whatever the parser of the command line makes of it. */
function misuseLine(text: string): string {
  return `floorscribe: ${text
    .replace(/^error: /, '')
    .trim()
    .replaceAll('\n', ' ')}\n`
}

function shellOf(world: World, wish: ColourWish): Shell {
  const { host, out, err, terminal } = world
  const outColours = coloursFor(wish, terminal.out, world)
  return { host, out, err, outColours, errColours: coloursFor(wish, terminal.err, world) }
}

function nameOption(): Option {
  return new Option('--name <path>', 'what standard input is called; its includes lie beside it')
}

function colourOption(): Option {
  return new Option('--colour <when>', 'colour on a terminal, always or never')
    .choices(['auto', 'always', 'never'])
    .default('auto')
}

function sentence(summary: string): string {
  return summary.slice(0, 1).toUpperCase() + summary.slice(1)
}
