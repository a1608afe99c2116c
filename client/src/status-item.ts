import { type Disposable, StatusBarAlignment, type TextDocument, Uri, window } from 'vscode'
import { STATUS, type StatusSent } from '../../server/src/lsp/custom.ts'
import type { Health, Lifeline } from './server/lifeline.ts'
import { textTask } from './server/work-watch.ts'

/** How urgent the item before and behind ours are is no matter to us: counts stand at the left. */
const PRIORITY = 10

/** The one status item: what the job in the editor comes to, or how the server is. */
export function showStatus(lifeline: Lifeline, onCounted: (uri: Uri) => void): Disposable {
  const item = window.createStatusBarItem('floorscribe.status', StatusBarAlignment.Left, PRIORITY)
  item.name = 'Floorscribe'
  const said = new Map<string, StatusSent>()
  let health: Health = { kind: 'starting' }

  const show = () => {
    const document = window.activeTextEditor?.document
    // A page or a list in front of the text does not change what the text comes to.
    if (document === undefined) return
    if (document.languageId !== 'floor') return item.hide()
    const { text, tooltip, command } = shown(document, health, said, lifeline.onlyRead)
    item.text = withoutIcons(text)
    item.tooltip = tooltip
    item.command = command
    item.accessibilityInformation = { label: `Floorscribe: ${text}` }
    item.show()
  }

  lifeline.client.onNotification(STATUS, (status: StatusSent) => {
    const uri = Uri.parse(status.uri)
    if (status.state !== 'counting')
      lifeline.note({ kind: 'answered', task: textTask(uri.toString()) })
    said.set(uri.toString(), status)
    if (status.state === 'counted') onCounted(uri)
    show()
  })
  const heard = lifeline.onHealth((now) => {
    health = now
    if (now.kind !== 'running') said.clear()
    show()
  })
  const turned = window.onDidChangeActiveTextEditor(show)
  show()
  return {
    dispose: () => {
      for (const one of [item, heard, turned]) one.dispose()
    },
  }
}

interface Shown {
  readonly text: string
  readonly tooltip: string
  readonly command: string
}

const PLAN = 'floorscribe.showPlan'
const RESTART = 'floorscribe.restart'

function shown(
  { uri }: TextDocument,
  health: Health,
  said: ReadonlyMap<string, StatusSent>,
  onlyRead: readonly string[],
): Shown {
  if (health.kind === 'down' && health.waitMs > 0) {
    const seconds = Math.round(health.waitMs / 1000)
    const tooltip = `The counting stopped by a fault of ours and starts again in ${seconds} s. Click to start it now.`
    return { text: 'Floorscribe: stopped', tooltip, command: RESTART }
  }
  if (onlyRead.includes(uri.toString())) {
    const tooltip =
      'The counting stopped twice while at this file: it is only read now. Click to try again.'
    return { text: 'Floorscribe: only read', tooltip, command: RESTART }
  }
  const status = said.get(uri.toString())
  if (status !== undefined) return { text: status.text, tooltip: status.tooltip, command: PLAN }
  return { text: 'Floorscribe', tooltip: 'Reading the job.', command: PLAN }
}

/** A name may hold what the status bar would draw as an icon. */
function withoutIcons(text: string): string {
  return text.replaceAll('$(', '\\$(')
}
