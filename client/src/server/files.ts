import { FileType, Uri, workspace } from 'vscode'
import type { BaseLanguageClient } from 'vscode-languageclient'
import {
  FIND_FILES,
  type FileSent,
  type FilesFound,
  type FindFiles,
  READ_FILE,
  type ReadFile,
} from '../../../server/src/lsp/custom.ts'
import { base64 } from './base64.ts'

/** Whatever the server asks for, it gets no more than this. */
const MOST_BYTES = 8_000_000
const MOST_FILES = 10_000

/** Reads for the server what only the editor can: files on another machine, or in a browser. */
export function serveFiles(client: BaseLanguageClient): void {
  client.onRequest<FileSent, void>(READ_FILE, async ({ uri, limit }: ReadFile) =>
    read(Uri.parse(uri), limit),
  )
  client.onRequest<FilesFound, void>(FIND_FILES, async ({ limit }: FindFiles) => find(limit))
}

async function read(uri: Uri, limit: number): Promise<FileSent> {
  const name = uri.path.slice(uri.path.lastIndexOf('/') + 1)
  if (workspace.fs.isWritableFileSystem(uri.scheme) === undefined)
    return { refused: `"${name}" lies where the editor reads no files.` }
  try {
    const { type, size } = await workspace.fs.stat(uri)
    if ((type & FileType.Directory) !== 0) return { refused: `"${name}" is a folder.` }
    if ((type & FileType.File) === 0) return { refused: `"${name}" is no plain file.` }
    const most = Math.min(limit, MOST_BYTES)
    if (size > most) return { refused: `"${name}" is larger than ${most} bytes.` }
    const bytes = await workspace.fs.readFile(uri)
    return bytes.length > most
      ? { refused: `"${name}" is larger than ${most} bytes.` }
      : { text: base64(bytes) }
  } catch {
    return { refused: `There is no file "${name}" that can be read.` }
  }
}

async function find(limit: number): Promise<FilesFound> {
  const most = Math.min(limit, MOST_FILES)
  const uris = await workspace.findFiles('**/*.floor', '**/{node_modules,.git}/**', most)
  return { uris: uris.map(String) }
}
