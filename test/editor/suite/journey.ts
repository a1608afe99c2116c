import * as vscode from 'vscode'
import {
  codeOf,
  hintsOf,
  hintThat,
  noProblemWith,
  type OpenJob,
  openJob,
  placeOf,
  problems,
  problemWith,
  retype,
  typeText,
  undoTo,
} from './job.ts'
import { check, until } from './wait.ts'

/** What a person does with a job, step by step; each step throws what it found instead. */
export const JOURNEY: readonly (readonly [string, () => Promise<void>])[] = [
  ['the example opens sound, with its boxes behind the product', opensSound],
  [
    'a wrong wall length is said on that wall, changes the boxes, and undo takes both back',
    wrongWall,
  ],
  ['a number tells where it comes from', tellsWhy],
  ['a room is renamed wherever it is named, also in what it includes', renames],
  ['a name nearly right is put right', takesAFix],
  ['formatting puts marks and blanks in order', formats],
  ['going to a definition leads to another file', goesToDefinition],
  ['an unfinished room is no error', unfinishedIsNoError],
  ['the plan opens beside the text, which stays where it is', showsThePlan],
]

const BOXES = /\bbox(es)?\b/

async function boxHint(job: OpenJob): Promise<string> {
  return hintThat(job, (hint) => BOXES.test(hint))
}

async function opensSound(): Promise<void> {
  const job = await openJob('upper-floor.floor')
  check('the language is known', job.document.languageId === 'floor', job.document.languageId)
  await boxHint(job)
  const errors = problems(job).filter(
    ({ severity }) => severity === vscode.DiagnosticSeverity.Error,
  )
  check('there is no error', errors.length === 0, errors.map(codeOf))
}

async function wrongWall(): Promise<void> {
  const job = await openJob('upper-floor.floor')
  const before = job.document.getText()
  const boxes = await boxHint(job)
  await retype(job, `14' 0"`, `24' 0"`, 'room west room')
  const problem = await problemWith(job, 'closing-error')
  const wall = job.document.lineAt(placeOf(job, `24' 0"`, 'room west room'))
  check('it stands at the wall', problem.range.start.line === wall.lineNumber, wall.text)
  await until(
    'the boxes are no more as they were',
    async () => !(await hintsOf(job)).includes(boxes),
  )
  await undoTo(job, before)
  await noProblemWith(job, 'closing-error')
  await hintThat(job, (hint) => hint === boxes)
}

async function tellsWhy(): Promise<void> {
  const job = await openJob('upper-floor.floor')
  const words = await until('a hover answers', async () => {
    const hovers = await vscode.commands.executeCommand<vscode.Hover[]>(
      'vscode.executeHoverProvider',
      job.document.uri,
      placeOf(job, 'hall', 'room hall').translate(0, 1),
    )
    const text = hovers.flatMap(({ contents }) =>
      contents.map((one) => (typeof one === 'string' ? one : one.value)),
    )
    return text.length > 0 && text.join('\n')
  })
  check('it tells the area', /sq ft/.test(words), words)
}

async function renames(): Promise<void> {
  const job = await openJob('upper-floor.floor')
  const before = job.document.getText()
  const edit = await vscode.commands.executeCommand<vscode.WorkspaceEdit>(
    'vscode.executeDocumentRenameProvider',
    job.document.uri,
    placeOf(job, 'river larch', 'lay ').translate(0, 2),
    'marsh larch',
  )
  const files = edit.entries().map(([uri]) => uri.path.split('/').at(-1))
  check('the include is renamed too', files.includes('products.floor'), files)
  await vscode.workspace.applyEdit(edit)
  check('the job says the new name', job.document.getText().includes('lay         marsh larch'))
  await boxHint(job)
  const products = await openJob('products.floor')
  check('the include says it', products.document.getText().includes('product marsh larch'))
  await vscode.commands.executeCommand('workbench.action.files.revert')
  const again = await openJob('upper-floor.floor')
  await undoTo(again, before)
}

async function takesAFix(): Promise<void> {
  const job = await openJob('upper-floor.floor')
  const before = job.document.getText()
  await retype(job, 'library', 'libary', 'rooms ')
  const problem = await until('the name is not found', () =>
    problems(job).find(({ message }) => message.includes('libary')),
  )
  const actions = await vscode.commands.executeCommand<vscode.CodeAction[]>(
    'vscode.executeCodeActionProvider',
    job.document.uri,
    problem.range,
  )
  const action = actions.find(({ edit }) => edit !== undefined)
  check(
    'a repair is offered',
    action !== undefined,
    actions.map(({ title }) => title),
  )
  await vscode.workspace.applyEdit(action!.edit!)
  check('the text is as it was', job.document.getText() === before)
}

async function formats(): Promise<void> {
  const job = await openJob('carpeted-bedroom.floor')
  const before = job.document.getText()
  await vscode.commands.executeCommand('editor.action.formatDocument')
  const canonical = job.document.getText()
  const first = job.document.lineAt(placeOf(job, 'room '))
  const end = first.range.end
  job.editor.selection = new vscode.Selection(end, end)
  await typeText('   ')
  await vscode.commands.executeCommand('editor.action.formatDocument')
  await until('the blanks are gone', () => job.document.getText() === canonical)
  await undoTo(job, before)
}

async function goesToDefinition(): Promise<void> {
  const job = await openJob('upper-floor.floor')
  const found = await vscode.commands.executeCommand<(vscode.Location | vscode.LocationLink)[]>(
    'vscode.executeDefinitionProvider',
    job.document.uri,
    placeOf(job, 'river larch', 'lay ').translate(0, 2),
  )
  const paths = found.map((one) => ('targetUri' in one ? one.targetUri : one.uri).path)
  check(
    'it leads to the products',
    paths.some((path) => path.endsWith('/products.floor')),
    paths,
  )
}

async function unfinishedIsNoError(): Promise<void> {
  const job = await openJob('carpeted-bedroom.floor')
  const before = job.document.getText()
  const end = job.document.positionAt(before.length)
  job.editor.selection = new vscode.Selection(end, end)
  await typeText(`\nroom box room\n  north 9' 2"\n`)
  const line = job.document.lineAt(placeOf(job, 'room box room')).lineNumber
  await until('something grey is said of it', () =>
    problems(job).find(
      ({ range, severity }) =>
        range.start.line >= line &&
        severity !== undefined &&
        severity >= vscode.DiagnosticSeverity.Information,
    ),
  )
  const errors = problems(job).filter(
    ({ range, severity }) =>
      range.start.line >= line && severity <= vscode.DiagnosticSeverity.Warning,
  )
  check('nothing red or yellow is said of it', errors.length === 0, errors.map(codeOf))
  await undoTo(job, before)
}

async function showsThePlan(): Promise<void> {
  const { document } = await openJob('upper-floor.floor')
  await vscode.commands.executeCommand('floorscribe.showPlan')
  await until('a second column is open', () => vscode.window.tabGroups.all.length === 2)
  check(
    'the text keeps the cursor',
    vscode.window.activeTextEditor?.document.uri.toString() === document.uri.toString(),
  )
}
