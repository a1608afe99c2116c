import * as vscode from 'vscode'
import { check, until } from './wait.ts'

/** A job that is open in the editor, and what the editor shows of it. */
export interface OpenJob {
  readonly document: vscode.TextDocument
  readonly editor: vscode.TextEditor
}

export async function openJob(name: string): Promise<OpenJob> {
  const [folder] = vscode.workspace.workspaceFolders ?? []
  check('a folder is open', folder !== undefined)
  const uri = vscode.Uri.joinPath(folder!.uri, name)
  const document = await vscode.workspace.openTextDocument(uri)
  const editor = await vscode.window.showTextDocument(document)
  return { document, editor }
}

/** The place just before a text that stands in the file once below a line that holds `under`. */
export function placeOf({ document }: OpenJob, text: string, under = ''): vscode.Position {
  const whole = document.getText()
  const from = whole.indexOf(under)
  const at = whole.indexOf(text, from)
  check(`"${text}" stands in the file`, from >= 0 && at >= 0)
  return document.positionAt(at)
}

export function problems({ document }: OpenJob): readonly vscode.Diagnostic[] {
  return vscode.languages.getDiagnostics(document.uri)
}

export function codeOf({ code }: vscode.Diagnostic): string {
  return String(typeof code === 'object' ? code.value : code)
}

export async function problemWith(job: OpenJob, code: string): Promise<vscode.Diagnostic> {
  return until(`the editor says ${code}`, () => problems(job).find((one) => codeOf(one) === code))
}

export async function noProblemWith(job: OpenJob, code: string): Promise<void> {
  await until(`${code} is gone`, () => !problems(job).some((one) => codeOf(one) === code))
}

/** What stands behind the lines: areas, closing errors, boxes. */
export async function hintsOf({ document }: OpenJob): Promise<readonly string[]> {
  const whole = new vscode.Range(0, 0, document.lineCount, 0)
  const hints = await vscode.commands.executeCommand<vscode.InlayHint[] | undefined>(
    'vscode.executeInlayHintProvider',
    document.uri,
    whole,
  )
  return (hints ?? []).map(({ label }) =>
    typeof label === 'string' ? label : label.map(({ value }) => value).join(''),
  )
}

export async function hintThat(job: OpenJob, fits: (hint: string) => boolean): Promise<string> {
  return until('a hint says so', async () => (await hintsOf(job)).find(fits))
}

/** Types as a person does: one character after the other, at the cursor. */
export async function typeText(text: string): Promise<void> {
  for (const character of text) await vscode.commands.executeCommand('type', { text: character })
}

/** Puts a text in place of another, key by key. */
export async function retype(job: OpenJob, was: string, now: string, under = ''): Promise<void> {
  const from = placeOf(job, was, under)
  job.editor.selection = new vscode.Selection(from, from.translate(0, was.length))
  await typeText(now)
}

/** Undoes until the text is as it was. */
export async function undoTo({ document }: OpenJob, text: string): Promise<void> {
  await until('the text is as it was', async () => {
    if (document.getText() === text) return true
    await vscode.commands.executeCommand('undo')
    return document.getText() === text
  })
}
