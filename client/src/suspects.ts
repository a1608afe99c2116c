import { type Disposable, Uri, window } from 'vscode'
import type { Lifeline } from './server/lifeline.ts'

const AGAIN = 'Count it again'

/** Says which file is only read from now on, and why; a click tries it again. */
export function tellSuspects(lifeline: Lifeline): Disposable {
  return lifeline.onSuspects(async (files) => {
    const names = files.map((file) => `"${nameOf(Uri.parse(file))}"`).join(', ')
    const told = `Floorscribe fell twice while at ${names}. It is read, and no longer counted.`
    if ((await window.showWarningMessage(told, AGAIN)) === AGAIN) await lifeline.restart()
  })
}

function nameOf({ path }: Uri): string {
  return path.slice(path.lastIndexOf('/') + 1)
}
