import type { StatusSent } from '../../server/src/lsp/custom.ts'
import type { Health } from './server/lifeline.ts'

/** What the status item says, and the command that a click on it runs. */
export interface StatusWords {
  readonly text: string
  readonly tooltip: string
  readonly command: 'floorscribe.showPlan' | 'floorscribe.restart'
}

/** How the server is comes first, for what it last said may be old; then what it said of the file. */
export function statusWords(
  health: Health,
  onlyRead: boolean,
  said: StatusSent | undefined,
): StatusWords {
  if (health.kind === 'down' && health.waitMs > 0) {
    const seconds = Math.round(health.waitMs / 1000)
    return {
      text: 'Floorscribe: stopped',
      tooltip: `The counting stopped by a fault of ours and starts again in ${seconds} s. Click to start it now.`,
      command: 'floorscribe.restart',
    }
  }
  if (onlyRead) {
    return {
      text: 'Floorscribe: only read',
      tooltip:
        'The counting stopped twice while at this file: it is only read now. Click to try again.',
      command: 'floorscribe.restart',
    }
  }
  const { text, tooltip } = said ?? { text: 'Floorscribe', tooltip: 'Reading the job.' }
  return { text: withoutIcons(text), tooltip, command: 'floorscribe.showPlan' }
}

/** A name may hold what the status bar would draw as an icon. */
function withoutIcons(text: string): string {
  return text.replaceAll('$(', '\\$(')
}
