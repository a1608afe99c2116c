import {
  commands,
  type Disposable,
  type ExtensionContext,
  type TextDocument,
  type TextEditor,
  Uri,
  ViewColumn,
  type WebviewPanel,
  window,
  workspace,
} from 'vscode'
import {
  FOLLOW_PREVIEW,
  type FollowPreview,
  PLACE_OF,
  type Place,
  type PlaceOf,
  PREVIEW,
  type PreviewSent,
  SHAPES_AT,
  type Shapes,
  type ShapesAt,
} from '../../../server/src/lsp/custom.ts'
import { asFromPage, type FromPage, type ToPage } from '../../webview/messages.ts'
import { floorEditor } from '../editors.ts'
import { latestOnly } from '../latest-only.ts'
import { bareName } from '../places.ts'
import type { Health, Lifeline } from '../server/lifeline.ts'
import { ask } from '../server/questions.ts'
import { settings } from '../settings.ts'
import { pageOf, pageOptions } from './page.ts'
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

  constructor(context: ExtensionContext, lifeline: Lifeline) {
    this.#context = context
    this.#lifeline = lifeline
    lifeline.client.onNotification(PREVIEW, (sent: PreviewSent) => this.#show(sent))
    this.#listening = [
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
  show(uri: Uri): void {
    const at = { viewColumn: ViewColumn.Beside, preserveFocus: true }
    if (this.#panel === undefined) {
      const options = pageOptions(this.#context.extensionUri)
      this.#take(window.createWebviewPanel(VIEW_TYPE, 'Plan', at, options))
    } else if (!this.#panel.visible) this.#panel.reveal(undefined, true)
    this.#follow(uri)
  }

  dispose(): void {
    this.#panel?.dispose()
    for (const one of this.#listening) one.dispose()
  }

  #take(panel: WebviewPanel): void {
    this.#panel = panel
    panel.iconPath = Uri.joinPath(this.#context.extensionUri, 'client/media/file.svg')
    panel.webview.options = pageOptions(this.#context.extensionUri)
    panel.webview.onDidReceiveMessage((sent) => this.#answer(asFromPage(sent)))
    panel.onDidChangeViewState(() => {
      if (!panel.visible) this.#stopFollowing()
    })
    panel.onDidDispose(() => {
      this.#panel = undefined
      this.#stopFollowing()
      this.#context.workspaceState.update(REMEMBERED, undefined)
    })
    panel.webview.html = pageOf(panel.webview, this.#context.extensionUri)
  }

  /** After a reload: the file is opened, though not shown, so that the server knows of it. */
  async #restore(panel: WebviewPanel): Promise<void> {
    const remembered = this.#context.workspaceState.get<unknown>(REMEMBERED)
    const uri = typeof remembered === 'string' ? Uri.parse(remembered) : floorEditor()?.document.uri
    if (this.#panel !== undefined || uri === undefined || !(await canOpen(uri))) panel.dispose()
    else {
      this.#take(panel)
      this.#follow(uri)
    }
  }

  #follow(uri: Uri): void {
    this.#followed = uri
    this.#context.workspaceState.update(REMEMBERED, uri.toString())
    if (this.#panel !== undefined) this.#panel.title = `Plan of ${bareName(uri)}`
    this.#askForAll()
  }

  /** The server answers with the whole picture first, then with what changes. */
  #askForAll(): void {
    if (this.#panel?.visible !== true || this.#followed === undefined) return
    this.#tell({ uri: this.#followed.toString() })
    const editor = floorEditor()
    if (editor !== undefined) this.#lightUp(editor)
  }

  #stopFollowing(): void {
    this.#tell({ uri: null })
  }

  #tell(followed: FollowPreview): void {
    ask(this.#lifeline.client, FOLLOW_PREVIEW, followed)
  }

  #show({ uri, change }: PreviewSent): void {
    if (this.#followed === undefined || !isSame(Uri.parse(uri), this.#followed)) return
    this.#post({ type: 'preview', change })
    const editor = floorEditor()
    if (editor !== undefined) this.#lightUp(editor)
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
    const question: PlaceOf = { uri: this.#followed.toString(), id }
    const place = await ask<Place>(this.#lifeline.client, PLACE_OF, question)
    if (place !== null) await reveal(place, this.#panel?.viewColumn)
  }

  async #showCursor({ document, selection }: TextEditor): Promise<void> {
    if (this.#panel?.visible !== true || document.languageId !== 'floor') return
    if (!settings().followCursor) return
    const { line, character } = selection.active
    const question: ShapesAt = { uri: document.uri.toString(), position: { line, character } }
    const shapes = await ask<Shapes>(this.#lifeline.client, SHAPES_AT, question)
    if (shapes !== null) this.#post({ type: 'cursor', ids: shapes.ids })
  }

  /** Turns to another job once a person does. A part of jobs is looked at in the job that is shown. */
  #turnTo(editor: TextEditor | undefined): void {
    if (editor === undefined || this.#panel === undefined || this.#panel.active) return
    const { document } = editor
    if (!isJob(document) || isSame(document.uri, this.#followed)) return
    this.#follow(document.uri)
  }

  #post(message: ToPage): void {
    this.#panel?.webview.postMessage(message)
  }
}

function isJob(document: TextDocument): boolean {
  return document.languageId === 'floor' && /^job[^\S\n]/im.test(document.getText())
}

function isSame(one: Uri, other: Uri | undefined): boolean {
  return one.toString() === other?.toString()
}

async function canOpen(uri: Uri): Promise<boolean> {
  try {
    await workspace.openTextDocument(uri)
    return true
  } catch {
    return false
  }
}
