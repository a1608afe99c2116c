import { type Disposable, StatusBarAlignment, Uri, window } from 'vscode'
import { STATUS, type StatusSent } from '../../server/src/lsp/custom.ts'
import type { Health, Lifeline } from './server/lifeline.ts'
import { textTask } from './server/work-watch.ts'
import { statusWords } from './status-words.ts'

/** Counts stand at the left, with what is said of the folder. */
const PRIORITY = 10

/** The one status item: what the job in the editor comes to, or how the server is. */
export function showStatus(lifeline: Lifeline, onCounted: (file: Uri) => void): Disposable {
  const item = window.createStatusBarItem('floorscribe.status', StatusBarAlignment.Left, PRIORITY)
  item.name = 'Floorscribe'
  const said = new Map<string, StatusSent>()
  let health: Health = { kind: 'starting' }

  const show = () => {
    const document = window.activeTextEditor?.document
    // A page or a list in front of the text does not change what the text comes to.
    if (document === undefined) return
    if (document.languageId !== 'floor') return item.hide()
    const file = document.uri.toString()
    const words = statusWords(health, lifeline.onlyRead.includes(file), said.get(file))
    Object.assign(item, words)
    item.accessibilityInformation = { label: `Floorscribe: ${words.text}` }
    item.show()
  }

  const listening = [
    lifeline.client.onNotification(STATUS, (status: StatusSent) => {
      const file = Uri.parse(status.uri)
      said.set(file.toString(), status)
      if (status.state !== 'counting')
        lifeline.note({ kind: 'answered', task: textTask(file.toString()) })
      if (status.state === 'counted') onCounted(file)
      show()
    }),
    lifeline.onHealth((now) => {
      health = now
      if (now.kind !== 'running') said.clear()
      show()
    }),
    window.onDidChangeActiveTextEditor(show),
  ]
  show()
  return {
    dispose: () => {
      for (const one of [item, ...listening]) one.dispose()
    },
  }
}
