import { type Uri, workspace } from 'vscode'

/** The text of a file that comes with the extension, which lies on a disk or, in a browser, on the web. */
export async function ownText(file: Uri): Promise<string> {
  if (/^https?$/.test(file.scheme)) return (await fetch(file.toString(true))).text()
  return new TextDecoder().decode(await workspace.fs.readFile(file))
}
