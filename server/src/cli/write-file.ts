import { visible } from '../report/visible.ts'
import { EXIT, type ExitCode } from './exit.ts'
import type { Shell } from './shell.ts'

/** Writes a file whole or leaves what was there, and says why. */
export async function writeFile(path: string, text: string, shell: Shell): Promise<ExitCode> {
  const outcome = await shell.host.replace(path, new TextEncoder().encode(text))
  if (outcome.kind === 'replaced') return EXIT.sound
  shell.err(
    `floorscribe: "${visible(path)}" was not written: ${outcome.reason}. What was there is as it was.\n`,
  )
  return EXIT.errors
}
