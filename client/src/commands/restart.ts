import type { Command } from './command.ts'

/** Starts the server anew, whatever state it is in; files that were only read are counted again. */
export const RESTART: Command = {
  id: 'floorscribe.restart',
  run: ({ lifeline }) => lifeline.restart(),
}
