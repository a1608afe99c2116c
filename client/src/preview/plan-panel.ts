import {
  commands,
  type Disposable,
  type ExtensionContext,
  type TextEditor,
  Uri,
  ViewColumn,
  type WebviewPanel,
  window,
} from 'vscode'
import { PREVIEW, type PreviewSent } from '../../../server/src/lsp/custom.ts'
import { asFromPage, type FromPage, type ToPage } from '../../webview/messages.ts'
import { canOpen, floorEditor, isJob, isSame } from '../editors.ts'
import { latestOnly } from '../latest-only.ts'
import { calledName } from '../places.ts'
import type { Health, Lifeline } from '../server/lifeline.ts'
import { settings } from '../settings.ts'
import { pageOf, pageOptions } from './page.ts'
import { followPlan, placeOf, shapesAt } from './plan-questions.ts'
import { reveal } from './reveal.ts'

const VIEW_TYPE = 'floorscribe.plan'
/** Under which the file is remembered that the plan shows, for when the window opens again. */
const REMEMBERED = 'plan.file'

/** The drawing beside the text: one, of the job that is being worked on. */
export class PlanPanel implements Disposable {
  readonly #context: ExtensionContext
  readonly #lifeline: Lifeline
  readonly #listening: readonly Disposable[]
  readonly #lightUp = latestOnly((editor: TextEditor) => this.#showCursor(editor))
  #panel: WebviewPanel | undefined
  #followed: Uri | undefined
  /** The page is loaded and has asked: what is sent before that is lost. */
  #listens = false

  constructor(context: ExtensionContext, lifeline: Lifeline) {
    this.#context = context
    this.#lifeline = lifeline
    this.#listening = [
      lifeline.client.onNotification(PREVIEW, (sent: PreviewSent) => this.#show(sent)),
      lifeline.onHealth((health) => this.#hear(health)),
      window.onDidChangeActiveTextEditor((editor) => this.#turnTo(editor)),
      window.onDidChangeTextEditorSelection(({ textEditor }) => this.#lightUp(textEditor)),
      window.registerWebviewPanelSerializer(VIEW_TYPE, {
        deserializeWebviewPanel: (panel) => this.#restore(panel),
      }),
    ]
  }

  /** What the plan shows, while it is the plan that a person works with. */
  get inFront(): Uri | undefined {
    return this.#panel?.active === true ? this.#followed : undefined
  }

  /** Opens the plan of a file's job beside its text, or turns the open one to it. */
  show(file: Uri): void {
    if (this.#panel === undefined) {
      const beside = { viewColumn: ViewColumn.Beside, preserveFocus: true }
      const options = pageOptions(this.#context.extensionUri)
      this.#take(window.createWebviewPanel(VIEW_TYPE, 'Plan', beside, options))
    } else if (!this.#panel.visible) this.#panel.reveal(undefined, true)
    this.#follow(file)
  }

  dispose(): void {
    for (const one of this.#listening) one.dispose()
  }

  #take(panel: WebviewPanel): void {
    const { extensionUri, workspaceState } = this.#context
    this.#panel = panel
    panel.iconPath = Uri.joinPath(extensionUri, 'client/media/file.svg')
    panel.webview.options = pageOptions(extensionUri)
    panel.webview.onDidReceiveMessage((sent) => this.#answer(asFromPage(sent)))
    // The page is gone while it is hidden, and asks for everything when it comes back.
    panel.onDidChangeViewState(() => {
      if (!panel.visible) this.#pageGone()
    })
    panel.onDidDispose(() => {
      this.#panel = undefined
      this.#followed = undefined
      workspaceState.update(REMEMBERED, undefined)
      this.#pageGone()
    })
    panel.webview.html = pageOf(panel.webview, extensionUri)
  }

  /** After a reload. The file is opened, though not shown, so that the server knows of it. */
  async #restore(panel: WebviewPanel): Promise<void> {
    const remembered = this.#context.workspaceState.get<unknown>(REMEMBERED)
    const file =
      typeof remembered === 'string' ? Uri.parse(remembered) : floorEditor()?.document.uri
    if (this.#panel !== undefined || file === undefined || !(await canOpen(file))) panel.dispose()
    else {
      this.#take(panel)
      this.#follow(file)
    }
  }

  #follow(file: Uri): void {
    this.#followed = file
    this.#context.workspaceState.update(REMEMBERED, file.toString())
    if (this.#panel !== undefined) this.#panel.title = `Plan of ${calledName(file)}`
    this.#askForAll()
  }

  #pageGone(): void {
    this.#listens = false
    followPlan(this.#lifeline.client, null)
  }

  #askForAll(): void {
    if (!this.#listens || this.#followed === undefined) return
    followPlan(this.#lifeline.client, this.#followed)
    this.#lightUpCursor()
  }

  #show({ uri, change }: PreviewSent): void {
    if (!isSame(Uri.parse(uri), this.#followed)) return
    this.#post({ type: 'preview', change })
    this.#lightUpCursor()
  }

  #hear(health: Health): void {
    if (health.kind === 'down')
      this.#post({ type: 'notice', text: 'An older drawing: the counting is being started again.' })
    if (health.kind !== 'running') return
    this.#post({ type: 'notice', text: '' })
    this.#askForAll()
  }

  #answer(message: FromPage | null): void {
    switch (message?.type) {
      case 'ready':
        this.#listens = true
        this.#askForAll()
        return
      case 'go to':
        this.#goTo(message.id)
        return
      case 'export':
        commands.executeCommand('floorscribe.exportDrawing')
        return
    }
  }

  async #goTo(id: string): Promise<void> {
    if (this.#followed === undefined) return
    const place = await placeOf(this.#lifeline.client, this.#followed, id)
    if (place !== null) await reveal(place, this.#panel?.viewColumn)
  }

  #lightUpCursor(): void {
    const editor = floorEditor()
    if (editor !== undefined) this.#lightUp(editor)
  }

  async #showCursor({ document, selection }: TextEditor): Promise<void> {
    if (!this.#listens || document.languageId !== 'floor') return
    if (!settings().followCursor) return
    const ids = await shapesAt(this.#lifeline.client, document.uri, selection.active)
    if (ids !== null) this.#post({ type: 'cursor', ids })
  }

  /** Turns to another job once a person does. A part of jobs is looked at in the job that is shown. */
  #turnTo(editor: TextEditor | undefined): void {
    if (editor === undefined || this.#panel === undefined || this.#panel.active) return
    const { document } = editor
    if (isJob(document) && !isSame(document.uri, this.#followed)) this.#follow(document.uri)
  }

  #post(message: ToPage): void {
    this.#panel?.webview.postMessage(message)
  }
}
