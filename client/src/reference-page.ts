import { Uri } from 'vscode'
import { headingLines } from './heading-lines.ts'
import { ownText } from './own-files.ts'

/** The language on one page, as it comes along with the extension. */
export class ReferencePage {
  readonly uri: Uri
  #lines: Promise<ReadonlyMap<string, number>> | undefined

  constructor(extension: Uri) {
    this.uri = Uri.joinPath(extension, 'server/LANGUAGE.md')
  }

  /** The lines of the codes; none where the page cannot be read. It is read once. */
  lines(): Promise<ReadonlyMap<string, number>> {
    this.#lines ??= this.#read()
    return this.#lines
  }

  async #read(): Promise<ReadonlyMap<string, number>> {
    try {
      return headingLines(await ownText(this.uri))
    } catch {
      return new Map()
    }
  }
}
