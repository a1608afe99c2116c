import { type TextDocument, type Uri, WorkspaceEdit, window, workspace } from 'vscode'
import { newJob } from '../../../server/src/features/new-job.ts'
import { snippet } from '../insert.ts'
import { fileName, freePlace } from '../places.ts'
import type { Command } from './command.ts'

const UNITS = [
  { label: 'feet and inches', units: 'feet-inches' },
  { label: 'inches', units: 'inches' },
  { label: 'millimetres', units: 'mm' },
  { label: 'centimetres', units: 'cm' },
  { label: 'metres', units: 'm' },
] as const

/**
 * Starts a job: asks what it is called, how it is measured and where it is kept, opens it, and lets the
 * tab key walk through what is to be read. It needs no folder: until it is saved it lies nowhere.
 */
export const NEW_JOB: Command = {
  id: 'floorscribe.newJob',
  run: async () => {
    const title = await askTitle()
    if (title === undefined) return
    const chosen = await window.showQuickPick(UNITS, { title: 'What is it measured in?' })
    if (chosen === undefined) return
    const place = await askPlace(title)
    if (place === undefined) return
    const editor = await window.showTextDocument(await open(place))
    await editor.insertSnippet(snippet(newJob(title.trim(), chosen.units)))
  },
}

function askTitle(): Thenable<string | undefined> {
  return window.showInputBox({
    title: 'A new job',
    prompt: 'What is the job called?',
    placeHolder: 'Heron Cottage, upper floor',
    validateInput: (title) => (title.trim() === '' ? 'A job needs a name.' : null),
  })
}

type Place = 'unsaved' | Uri

/** Where no folder is open there is nothing to ask. */
async function askPlace(title: string): Promise<Place | undefined> {
  const folders = workspace.workspaceFolders ?? []
  if (folders.length === 0) return 'unsaved'
  const choices = [
    ...folders.map(({ name, uri }) => ({ label: `In ${name}`, description: fileName(title), uri })),
    { label: 'Nowhere yet', description: 'saved later', uri: undefined },
  ]
  const chosen = await window.showQuickPick(choices, { title: 'Where is it kept?' })
  if (chosen === undefined) return undefined
  return chosen.uri === undefined ? 'unsaved' : freePlace(chosen.uri, title)
}

async function open(place: Place): Promise<TextDocument> {
  if (place === 'unsaved') return workspace.openTextDocument({ language: 'floor', content: '' })
  const edit = new WorkspaceEdit()
  edit.createFile(place, { overwrite: false })
  await workspace.applyEdit(edit)
  return workspace.openTextDocument(place)
}
