import { commands, type ExtensionContext, type Uri } from 'vscode'

/** The last step of the walkthrough is done by this, in this window and in every later one. */
const DONE = 'floorscribe.ownRoomCounted'

/** Notes the first job that is counted to its end; one that came with the extension is not their own. */
export function ownRoomCounted({ globalState, extensionUri }: ExtensionContext) {
  const tell = () => commands.executeCommand('setContext', DONE, true)
  if (globalState.get(DONE) === true) tell()
  return (uri: Uri) => {
    if (uri.toString().startsWith(extensionUri.toString()) || globalState.get(DONE) === true) return
    globalState.update(DONE, true)
    tell()
  }
}
