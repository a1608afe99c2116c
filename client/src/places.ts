import { FileSystemError, Uri, workspace } from 'vscode'

const MOST_LETTERS = 60

/** What a file of a title is called: small letters, digits and hyphens are good on every system. */
export function fileName(title: string, ending = 'floor', number = 1): string {
  const words = title.toLowerCase().match(/[\p{L}\p{Nd}]+/gu) ?? ['job']
  const name = words.join('-').slice(0, MOST_LETTERS)
  return number === 1 ? `${name}.${ending}` : `${name}-${number}.${ending}`
}

/** The first address in a folder that no file has yet. */
export async function freePlace(folder: Uri, title: string): Promise<Uri> {
  for (let number = 1; ; number += 1) {
    const place = Uri.joinPath(folder, fileName(title, 'floor', number))
    if (await isFree(place)) return place
  }
}

async function isFree(place: Uri): Promise<boolean> {
  try {
    await workspace.fs.stat(place)
    return false
  } catch (error) {
    if (error instanceof FileSystemError && error.code === 'FileNotFound') return true
    throw error
  }
}

/** What people call a job's file: its name without the ending; its title while it has no name yet. */
export function calledName(file: Uri): string {
  const title = file.scheme === 'untitled' ? titleOf(file) : ''
  return title === ''
    ? file.path.slice(file.path.lastIndexOf('/') + 1).replace(/\.floor$/i, '')
    : title
}

function titleOf(file: Uri): string {
  const open = workspace.textDocuments.find(({ uri }) => uri.toString() === file.toString())
  const title = /^job[ \t](.*)$/im.exec(open?.getText() ?? '')?.[1] ?? ''
  return title.split(' #', 1).join('').trim()
}
