import type { Option } from 'commander'
import type { ExitCode } from './exit.ts'
import type { Shell } from './shell.ts'

/** One command: its name, its help, and what it does. Each stands in a file of its own. */
export interface CommandPage<Options> {
  readonly name: string
  /** One line for the list of commands. */
  readonly summary: string
  /** What follows the options in its own help. */
  readonly help: string
  readonly options: readonly Option[]
  /** Why this combination of files and options makes no sense, or null. */
  readonly misuse?: (files: readonly string[], options: Options) => string | null
  readonly run: (files: readonly string[], options: Options, shell: Shell) => Promise<ExitCode>
}

/** Options that every command that reads files takes. */
export interface FileOptions {
  /** What standard input is called, and the place its includes are looked up from. */
  readonly name?: string
}
