import type { Host } from '../host/host.ts'
import type { Colours } from './colours.ts'

/** Where a command reads and speaks. It writes a file only through `host.replace`, when asked to. */
export interface Shell {
  readonly host: Host
  /** What was asked for. */
  readonly out: (text: string) => void
  /** What is said about it. */
  readonly err: (text: string) => void
  readonly outColours: Colours
  readonly errColours: Colours
}
