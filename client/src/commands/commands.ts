import { commands, type Disposable } from 'vscode'
import type { Command, Tools } from './command.ts'
import { EXPORT_DRAWING } from './export-drawing.ts'
import { GO_TO_PLACE } from './go-to.ts'
import { NEW_JOB } from './new-job.ts'
import { NEW_ROOM } from './new-room.ts'
import { OPEN_EXAMPLE } from './open-example.ts'
import { OPEN_REFERENCE } from './open-reference.ts'
import { PASTE_READINGS } from './paste-readings.ts'
import { RESTART } from './restart.ts'
import { SHOW_NAME_USES } from './show-name-uses.ts'
import { SHOW_PLAN } from './show-plan.ts'

const COMMANDS: readonly Command[] = [
  NEW_JOB,
  NEW_ROOM,
  SHOW_PLAN,
  EXPORT_DRAWING,
  PASTE_READINGS,
  SHOW_NAME_USES,
  GO_TO_PLACE,
  OPEN_REFERENCE,
  OPEN_EXAMPLE,
  RESTART,
]

export function registerCommands(tools: Tools): readonly Disposable[] {
  return COMMANDS.map(({ id, run }) =>
    commands.registerCommand(id, (...given: readonly unknown[]) => run(tools, ...given)),
  )
}
