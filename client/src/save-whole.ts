import { type Uri, window, workspace } from 'vscode'

/**
 * Puts a file in place whole or leaves what was there: it is written beside and then takes the name.
 * Where that fails, the reason is told and nothing is left lying about. Whether it is in place.
 */
export async function saveWhole(place: Uri, bytes: Uint8Array): Promise<boolean> {
  const beside = place.with({ path: `${place.path}.${crypto.randomUUID()}.part` })
  try {
    await workspace.fs.writeFile(beside, bytes)
    await workspace.fs.rename(beside, place, { overwrite: true })
    return true
  } catch (error) {
    await workspace.fs.delete(beside).then(undefined, () => undefined)
    const reason = error instanceof Error ? error.message : String(error)
    window.showErrorMessage(`The drawing was not saved. ${reason}`)
    return false
  }
}
